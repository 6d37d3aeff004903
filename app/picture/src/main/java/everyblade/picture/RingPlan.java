package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;

/**
 * Where the rings of a map on a screen lie: from the axis outwards the hub and all rows; where one is enlarged, then a
 * lane for what points at it, its cells, its numbers and its signs; outermost the clock. All in mm.
 *
 * @param polar the axis
 * @param rim radius at which the clock begins
 * @param hub radius at which the first row begins
 * @param depth of each row
 * @param lane of each row's depth, what is left free for words
 */
record RingPlan(Polar polar, double rim, double hub, double depth, double lane) {

    static final double SIGNS = 7;
    static final double NUMBERS = 3.6;
    static final double POINTERS = 9;

    private static final double LARGE_SHARE = 0.24;
    private static final double HUB_SHARE = 0.06;
    private static final double DEPTH_MOST = 14;
    private static final double DEPTH_FOR_WORDS = 4.8;
    private static final double LANE_SHARE = 0.46;
    private static final double LANE_MOST = 3.2;
    private static final double BETWEEN = 0.12;

    /** For so many rows within a radius. */
    static RingPlan of(ScreenView view, double radius, int rows) {
        Polar polar = new Polar(
                new Point(view.width() / 2, view.height() / 2),
                view.style().facing().mirrors());
        double rim = radius - Wheel.MARGIN;
        boolean one = view.enlarged().isPresent();
        double outer = one ? rim - SIGNS - NUMBERS - LARGE_SHARE * rim - POINTERS : rim - 0.5;
        double depth = Math.min(DEPTH_MOST, (outer - HUB_SHARE * rim) / rows);
        double lane = depth < DEPTH_FOR_WORDS ? BETWEEN * depth : Math.min(LANE_MOST, LANE_SHARE * depth);
        return new RingPlan(polar, rim, outer - rows * depth, depth, lane);
    }

    /** Whether there is room for words on the rings. */
    boolean hasLanes() {
        return depth >= DEPTH_FOR_WORDS;
    }

    /** The ring of the row that is so many rows from the axis. */
    Ring ring(RowCoverage row, Standing standing, int index) {
        double low = hub + index * depth;
        return new Ring(row, standing, polar, low, low + depth - lane, lane);
    }

    /** The ring of the enlarged row. */
    Ring large(RowCoverage row, Standing standing) {
        double high = rim - SIGNS - NUMBERS;
        return new Ring(row, standing, polar, high - LARGE_SHARE * rim, high, NUMBERS);
    }
}
