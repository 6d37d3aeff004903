package everyblade.core.turning;

import everyblade.core.angle.Turn;

/**
 * Where a track stood after a move: its counted angle, and running totals of what it may be off, counted from the
 * track's first stop. Totals of two stops can be compared only within one part.
 *
 * @param entry the entry that led here, 0 for the start
 * @param counted sum of all moves as they were said, not reduced to a turn
 * @param way how it came here
 * @param doubtful whether the count may have been lost on the way here
 * @param part stops of one part are connected by moves that nothing speaks against; a slip or a doubt begins a new one
 * @param stretch stops of one stretch are connected by counted moves; a new part or a reading begins a new one
 * @param total what the counted angle may be off
 * @param weight sum over the moves of the squares of their errors (degrees²), by which a count error is shared; a
 *     one-sided error enters with its half-width
 */
record Stop(
        int entry, Turn counted, Way way, boolean doubtful, int part, int stretch, Uncertainty total, double weight) {

    /** How a stop was reached from the one before. */
    enum Way {
        /** By a counted move. */
        COUNTED,
        /** By a move to a reading, which stands whatever went before. */
        READ,
        /** By an unknown amount. */
        SLIPPED
    }

    /**
     * Weight of a degree of turning without any stated error: so little that it matters only where nothing else does.
     * There a count error is shared in proportion to the turning, as in the compass rule for a traverse.
     */
    private static final double WEIGHT_PER_DEGREE = 1e-14;

    static final Stop FIRST = new Stop(0, Turn.ZERO, Way.COUNTED, false, 0, 0, Uncertainty.EXACT, 0);

    /** The next stop after a counted move. */
    Stop moved(int number, Turn amount, Uncertainty error) {
        double halfWidth = error.halfWidth();
        return new Stop(
                number,
                counted.plus(amount),
                Way.COUNTED,
                false,
                part,
                stretch,
                total.and(error),
                weight + error.variance() + halfWidth * halfWidth + WEIGHT_PER_DEGREE * Math.abs(amount.degrees()));
    }

    /** The next stop after a move to a reading that is good to ± so many degrees. */
    Stop read(int number, Turn amount, double plusMinus) {
        return new Stop(
                number,
                counted.plus(amount),
                Way.READ,
                false,
                part,
                stretch + 1,
                total.and(Uncertainty.of(plusMinus)),
                weight);
    }

    /** The next stop after a move by an unknown amount. */
    Stop slipped(int number) {
        return new Stop(number, counted, Way.SLIPPED, false, part + 1, stretch + 1, total, weight);
    }

    /** The same, reached from this one with or without a doubt. */
    Stop after(Stop before, boolean isDoubtful) {
        boolean parts = isDoubtful || way == Way.SLIPPED;
        return new Stop(
                entry,
                counted,
                way,
                isDoubtful,
                before.part + (parts ? 1 : 0),
                before.stretch + (parts || way == Way.READ ? 1 : 0),
                total,
                weight);
    }
}
