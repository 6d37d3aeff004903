package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Situation;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.stream.IntStream;

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
    static final double CLOCK = 3.2;

    private static final double HUB_SHARE = 0.05;
    private static final double HUB_LEAST = 2.9;
    private static final double DEPTH_MOST = 14;
    /** More rows than these are two wheels, as on paper: in one, nobody would tell the inner ones apart. */
    private static final int ONE_WHEEL = 20;

    private static final double BETWEEN = 0.12;
    /** A ring needs no more room than this to be told from the next. */
    private static final double BETWEEN_MOST = 0.24;

    RingPlan {
        rows = List.copyOf(rows);
    }

    /** Whether rows are so many that those that turn and those that stand are a wheel each. */
    static boolean isDivided(List<Row> rows) {
        return rows.size() > ONE_WHEEL
                && rows.stream().map(RingPlan::turns).distinct().count() == 2;
    }

    private static boolean turns(Row row) {
        return row.kind() == RowKind.ROTOR;
    }

    /** One wheel of all rows, or where they are many one of those that turn and one of those that stand. */
    static List<RingPlan> of(double width, double height, boolean mirrored, List<RowCoverage> rows) {
        if (!isDivided(rows.stream().map(RowCoverage::row).toList())) {
            return List.of(within(0, 0, width, height, mirrored, rows));
        }
        boolean over = height > width;
        double wide = over ? width : width / 2;
        double high = over ? height / 2 : height;
        return List.of(
                within(0, 0, wide, high, mirrored, some(rows, true)),
                within(over ? 0 : wide, over ? high : 0, wide, high, mirrored, some(rows, false)));
    }

    private static List<RowCoverage> some(List<RowCoverage> rows, boolean turning) {
        return rows.stream().filter(row -> turns(row.row()) == turning).toList();
    }

    private static RingPlan within(
            double x, double y, double width, double height, boolean mirrored, List<RowCoverage> rows) {
        double rim = Math.min(width, height) / 2 - CLOCK;
        double depth = Math.min(DEPTH_MOST, (rim - Math.max(HUB_LEAST, HUB_SHARE * rim)) / rows.size());
        return new RingPlan(
                new Polar(new Point(x + width / 2, y + height / 2), mirrored), rim, rim - depth * rows.size(), rows);
    }

    /** Whether any of its rows turns. */
    boolean turns() {
        return rows.stream().anyMatch(row -> turns(row.row()));
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
                    double lane = Math.min(BETWEEN_MOST, BETWEEN * depth());
                    return new MapRing(row, Standing.of(now, row.row()), polar, low, low + depth() - lane, lane);
                })
                .toList();
    }
}
