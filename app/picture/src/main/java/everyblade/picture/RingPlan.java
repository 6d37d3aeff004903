package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Situation;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where the rings of rows lie about one axis, each as deep as the others. All in mm.
 *
 * @param polar the axis
 * @param rim radius at which the outermost ring ends and the clock begins
 * @param hub radius at which the first ring begins
 * @param rows in the order in which the air passes them, the first innermost
 */
record RingPlan(Polar polar, double rim, double hub, List<RowCoverage> rows) {

    /** Room round the outermost ring for the clock and what points at it. */
    static final double CLOCK = 4;

    private static final double HUB_SHARE = 0.06;
    private static final double HUB_LEAST = 3;
    private static final double DEPTH_MOST = 14;
    /** Below this, two wheels are looked at where their rings are deeper. */
    private static final double DEPTH_LEAST = 2.6;

    private static final double BETWEEN = 0.12;

    RingPlan {
        rows = List.copyOf(rows);
    }

    /** One wheel of all rows, or where its rings would be too low one of those that turn and one of those that stand. */
    static List<RingPlan> of(double width, double height, boolean mirrored, List<RowCoverage> rows) {
        RingPlan one = within(0, 0, width, height, mirrored, rows);
        boolean over = height > width;
        double wide = over ? width : width / 2;
        double high = over ? height / 2 : height;
        List<RingPlan> two = Stream.of(true, false)
                .map(turns -> rows.stream()
                        .filter(row -> turns == (row.row().kind() == RowKind.ROTOR))
                        .toList())
                .filter(wheel -> !wheel.isEmpty())
                .map(wheel -> within(0, 0, wide, high, mirrored, wheel))
                .toList();
        boolean deeper = two.size() == 2 && two.stream().allMatch(wheel -> wheel.depth() > one.depth());
        if (one.depth() >= DEPTH_LEAST || !deeper) {
            return List.of(one);
        }
        return List.of(
                two.get(0),
                within(
                        over ? 0 : wide,
                        over ? high : 0,
                        wide,
                        high,
                        mirrored,
                        two.get(1).rows()));
    }

    private static RingPlan within(
            double x, double y, double width, double height, boolean mirrored, List<RowCoverage> rows) {
        double rim = Math.min(width, height) / 2 - CLOCK;
        double depth = Math.min(DEPTH_MOST, (rim - Math.max(HUB_LEAST, HUB_SHARE * rim)) / rows.size());
        return new RingPlan(
                new Polar(new Point(x + width / 2, y + height / 2), mirrored), rim, rim - depth * rows.size(), rows);
    }

    /** Of each row, what lies between its ring and the next one included. */
    double depth() {
        return (rim - hub) / rows.size();
    }

    /** The rings of its rows, each airfoil where it stands now. */
    List<MapRing> rings(Situation now) {
        return IntStream.range(0, rows.size())
                .mapToObj(i -> {
                    RowCoverage row = rows.get(i);
                    double low = hub + i * depth();
                    return new MapRing(
                            row,
                            Standing.of(now, row.row()),
                            polar,
                            low,
                            low + (1 - BETWEEN) * depth(),
                            BETWEEN * depth());
                })
                .toList();
    }
}
