package everyblade.core.move;

import everyblade.core.angle.Turn;

/**
 * Where an airfoil must pass to be seen from somewhere: watching it without a break must reach down to {@code high} and up
 * to {@code low}, clock angles in degrees, unrolled.
 *
 * <p>Where any place between will do, as in a declared window, {@code low} is the lower one; where all between must be
 * passed, it is the upper one.
 */
record VisibilityWindow(double high, double low) {

    static VisibilityWindow anywhereIn(Turn from, Turn to) {
        return new VisibilityWindow(to.degrees(), from.degrees());
    }

    static VisibilityWindow allOf(Turn from, Turn width) {
        return new VisibilityWindow(from.degrees(), from.plus(width).degrees());
    }

    /** The same for whoever may be off by so many degrees where watching begins and where it ends. */
    VisibilityWindow safe(Slack slack) {
        return new VisibilityWindow(high - slack.above(), low + slack.below());
    }

    /** What {@link #safe} makes this one of. */
    VisibilityWindow before(Slack slack) {
        return new VisibilityWindow(high + slack.above(), low - slack.below());
    }

    VisibilityWindow moved(double degrees) {
        return new VisibilityWindow(high + degrees, low + degrees);
    }

    /**
     * By how much a row may be off from where it is thought to be, degrees.
     *
     * @param below towards smaller angles
     * @param above towards larger angles
     */
    record Slack(double below, double above) {

        static final Slack NONE = new Slack(0, 0);

        Slack or(Slack other) {
            return new Slack(Math.max(below, other.below), Math.max(above, other.above));
        }

        boolean none() {
            return below == 0 && above == 0;
        }
    }
}
