package everyblade.core.turning;

import everyblade.core.angle.Turn;

/**
 * Where a track stood after a move: its counted angle, and running totals of what it may be off, counted from the
 * track's first stop. Totals of two stops can be compared only within one stretch.
 *
 * @param entry the entry that led here, 0 for the start
 * @param counted sum of all moves as they were said, not reduced to a turn
 * @param stretch stops of one stretch are connected by counted moves; a slip or an absolute reading begins a new one
 * @param total what the counted angle may be off
 * @param weight sum over the moves of the squares of their errors (degrees²), by which a count error is shared; a
 *     one-sided error enters with its half-width
 */
record Stop(int entry, Turn counted, int stretch, Uncertainty total, double weight) {

    /**
     * Weight of a degree of turning without any stated error: so little that it matters only where nothing else does.
     * There a count error is shared in proportion to the turning, as in the compass rule for a traverse.
     */
    private static final double WEIGHT_PER_DEGREE = 1e-14;

    static final Stop FIRST = new Stop(0, Turn.ZERO, 0, Uncertainty.EXACT, 0);

    /** The next stop after a counted move. */
    Stop moved(int entry, Turn amount, Uncertainty error) {
        double halfWidth = error.halfWidth();
        return new Stop(
                entry,
                counted.plus(amount),
                stretch,
                total.and(error),
                weight + error.variance() + halfWidth * halfWidth + WEIGHT_PER_DEGREE * Math.abs(amount.degrees()));
    }

    /** The next stop after a move that says nothing about the stop before: a slip, or the way to a reading. */
    Stop cutOff(int entry, Turn amount) {
        return new Stop(entry, counted.plus(amount), stretch + 1, total, weight);
    }
}
