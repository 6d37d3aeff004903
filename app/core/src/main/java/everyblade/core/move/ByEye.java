package everyblade.core.move;

import java.util.Optional;

/**
 * A way and a sweep counted by eye in airfoils: that has no error, and so never makes a count doubtful. The way is no longer
 * than was planned and the sweep reaches no less far; neither goes by a number of airfoils that would always come to the same
 * ones.
 *
 * @param skipped how many pass unwatched; negative if they pass the other way than those that are watched
 * @param watched how many pass watched
 */
record ByEye(int skipped, int watched) {

    /** Not more airfoils than these are counted as they pass. */
    private static final int MOST = 20;

    /**
     * The same as so many airfoils, which need not be whole; empty if they are too many to be counted.
     *
     * @param way how many would pass unwatched, in the sense of the sweep
     * @param sweep how many would pass watched, not negative
     * @param count how many the row has
     */
    static Optional<ByEye> of(double way, double sweep, int count) {
        int skipped = (int) TypedDegrees.below(way, 1);
        while (skipped != 0 && !comesToAll(skipped, count)) {
            skipped--;
        }
        int watched = (int) TypedDegrees.above(way + sweep - skipped, 1);
        while (!comesToAll(watched, count)) {
            watched++;
        }
        return Math.abs(skipped) > MOST || watched > MOST || watched >= count
                ? Optional.empty()
                : Optional.of(new ByEye(skipped, watched));
    }

    /** How many airfoils a way is, if it is so many within a share of one and they can be counted; else 0. */
    static int whole(double way, double within) {
        long airfoils = Math.round(way);
        return Math.abs(airfoils) <= MOST && Math.abs(way - airfoils) <= within ? (int) airfoils : 0;
    }

    private static boolean comesToAll(int step, int count) {
        int a = Math.abs(step);
        int b = count;
        while (b != 0) {
            int rest = a % b;
            a = b;
            b = rest;
        }
        return a == 1;
    }
}
