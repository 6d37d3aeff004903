package everyblade.record;

/**
 * What is to go wrong on a simulated disk.
 *
 * @param step the number of the step, from 0
 * @param bytes how many bytes of a write are done before
 * @param kind in which way
 */
record Fault(int step, int bytes, Kind kind) {

    static final Fault NONE = new Fault(Integer.MAX_VALUE, 0, Kind.REFUSED_ONCE);

    enum Kind {
        POWER_CUT,
        REFUSED_ONCE,
        /** This step and the next. */
        REFUSED_TWICE,
        REFUSED_FOR_GOOD
    }

    boolean hits(int number) {
        return switch (kind) {
            case POWER_CUT, REFUSED_ONCE -> number == step;
            case REFUSED_TWICE -> number == step || number == step + 1;
            case REFUSED_FOR_GOOD -> number >= step;
        };
    }
}
