package everyblade.record;

/** A line that cannot be understood. */
final class Unreadable extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient LineFlaw flaw;

    Unreadable(LineFlaw flaw) {
        super(flaw.toString(), null, false, false);
        this.flaw = flaw;
    }

    /** Why. */
    LineFlaw flaw() {
        return flaw;
    }
}
