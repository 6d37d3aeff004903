package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Circle;
import everyblade.core.sight.Reach;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Vanes before a scope tip that cannot be drawn round: those that stand there are within its reach, and no others. */
class FixedViewTest {

    private static final int VANES = 20;

    private static Station station(double mm, double deg) {
        return ShapedEngine.station("s", -15, 135, new Heading(1, 0.3, -0.3), mm, deg);
    }

    private static ShapedEngine vanes() {
        return new ShapedEngine().row("s", RowKind.STATOR, VANES, 10, 0);
    }

    private static RowCoverage row(ShapedEngine engine, String... lines) {
        return new Job(engine.built()).enter(lines).coverage().row("s");
    }

    private static double reach(RowCoverage row, int n) {
        return row.reach().isEmpty()
                ? 0
                : row.areas(n, 0).reach()
                        + row.areas(n, 3).reach()
                        + row.areas(n, 6).reach();
    }

    @Test
    void untilOneIsIdentifiedAnyOfThemMayStandThere() {
        RowCoverage row = row(vanes().fixedView("f", "s", station(0, 0)), "view f");
        assertThat(reach(row, 1)).isPositive();
        for (int n = 2; n <= VANES; n++) {
            assertThat(reach(row, n)).isEqualTo(reach(row, 1));
        }
    }

    @Test
    void whatLookingOnceShowsIsWithinReachAndTheOthersAreNot() {
        RowCoverage row = row(vanes().fixedView("f", "s", station(0, 0)), "view f", "datum s 1 ± 0", "look");
        int seen = 0;
        int unreached = 0;
        for (int n = 1; n <= VANES; n++) {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                Areas areas = row.areas(n, zone);
                assertThat(areas.reach()).as("vane %d, zone %d", n, zone).isGreaterThanOrEqualTo(areas.seen());
                if (areas.reach() == 0) {
                    assertThat(row.why(n, zone)).contains(Why.NO_ACCESS);
                    unreached++;
                }
                seen += areas.seen() > 0 ? 1 : 0;
            }
        }
        assertThat(seen).isPositive();
        assertThat(unreached).isGreaterThan(VANES / 2 * row.zoning().size());
    }

    @Test
    void whichOnesTheyAreFollowsFromTheOneThatWasIdentified() {
        ShapedEngine engine = vanes().fixedView("f", "s", station(0, 0));
        RowCoverage first = row(engine, "view f", "datum s 1 ± 0");
        RowCoverage fourth = row(engine, "view f", "datum s 4 ± 0");
        for (int n = 1; n <= VANES; n++) {
            assertThat(reach(fourth, (n + 2) % VANES + 1)).as("vane %d", n).isEqualTo(reach(first, n));
        }
        assertThat(IntStream.rangeClosed(1, VANES).filter(n -> reach(first, n) > 0))
                .hasSizeBetween(1, VANES / 2);
    }

    @Test
    void drawingThroughAnotherViewMovesNone() {
        ShapedEngine engine = vanes().fixedView("f", "s", station(0, 0))
                .view("t", "s", ShapedEngine.station("t", -80, 135, new Heading(-1, 0, 0), 0, 0));
        RowCoverage before = row(engine, "view t", "datum s 1 ± 0");
        RowCoverage after = row(engine, "view t", "datum s 1 ± 0", "feed 50");
        for (int n = 1; n <= VANES; n++) {
            assertThat(reach(after, n)).as("vane %d", n).isEqualTo(reach(before, n));
        }
        assertThat(reach(before, 1)).isPositive();
        assertThat(reach(before, 11)).isZero();
    }

    @Test
    void whatAViewThatTravelsShowsIsWithinReachOfAll() {
        RowCoverage row =
                row(vanes().fixedView("f", "s", station(0, 0)).view("t", "s", station(0, 0)), "view t", "datum s 1");
        RowCoverage travelling = row(vanes().view("t", "s", station(0, 0)), "view t", "datum s 1");
        for (int n = 1; n <= VANES; n++) {
            assertThat(reach(row, n))
                    .as("vane %d", n)
                    .isEqualTo(reach(travelling, 1))
                    .isPositive();
        }
    }

    private interface Shown {
        boolean shows(StationSight sight, int kind, int facet, int patch, long clock);
    }

    /** What is within reach of each cell is the surface of the patches of which this is so. */
    private static void assertWithinReach(ShapedEngine engine, Shown shown) {
        Coverage coverage =
                new Job(engine.built()).enter("view f", "datum s 1 ± 0").coverage();
        RowCoverage row = coverage.row("s");
        StationSight sight = row.reach().orElseThrow().stations().get(0).sight();
        Patches patches = coverage.sights().grain(row.row()).patches();
        int vanes = row.row().count();
        double[][] reached = new double[vanes][row.zoning().size()];
        for (int n = 1; n <= vanes; n++) {
            long clock = (n - 1) * 360L * Circle.TICKS_PER_DEGREE / vanes;
            double[] own = new double[row.zoning().size()];
            for (int patch = 0; patch < patches.count(); patch++) {
                int facet = patches.facet(patch);
                int zone = patches.zone(patch);
                own[zone] += patches.facets().area(patch);
                if (shown.shows(sight, sight.kind(row.row(), n), facet, patch - patches.first(facet), clock)) {
                    reached[n - 1][zone] += patches.facets().area(patch);
                }
            }
            for (int zone = 0; zone < own.length; zone++) {
                assertThat(row.areas(n, zone).reach())
                        .as("vane %d, zone %d", n, zone)
                        .isCloseTo(reached[n - 1][zone] / own[zone], within(1e-9));
            }
        }
        assertThat(Arrays.stream(reached)
                        .mapToDouble(zones -> Arrays.stream(zones).sum())
                        .distinct())
                .as("not all alike")
                .hasSizeGreaterThan(1);
    }

    private static boolean everyPoseShowsAt(StationSight sight, int kind, int facet, int patch, long clock) {
        return IntStream.range(0, sight.poses())
                .allMatch(pose -> sight.arcs(kind, pose, facet, patch).contains(clock));
    }

    @Test
    void onlyWhatEveryPoseShowsFromWhereTheVaneStandsIsWithinReach() {
        assertWithinReach(vanes().fixedView("f", "s", station(0.2, 0.5)), FixedViewTest::everyPoseShowsAt);
    }

    /** A narrow view between seventy vanes, before the last of which it stands as well as before the first. */
    @Test
    void soItIsOfMoreVanesThanAWordHasBits() {
        assertWithinReach(
                new ShapedEngine().row("s", RowKind.STATOR, 70, 10, 0).fixedView("f", "s", station(0, 0)),
                FixedViewTest::everyPoseShowsAt);
    }

    private static final Station FAR = ShapedEngine.station("far", -50, 130, new Heading(1, 0, -0.1), 0, 0);

    private static ShapedEngine pastVanesOfAnotherCount() {
        return new ShapedEngine()
                .row("s", RowKind.STATOR, VANES, -40, 0)
                .row("g", RowKind.STATOR, 12, 0, -40, OptionalDouble.of(5));
    }

    @Test
    void pastVanesOfAnotherCountWhatHidesAVaneIsItsOwn() {
        assertWithinReach(pastVanesOfAnotherCount().fixedView("f", "s", FAR), FixedViewTest::everyPoseShowsAt);
    }

    @Test
    void pastVanesOfAnotherCountAViewThatTravelsReachesOfEachKindWhatItShowsOfIt() {
        assertWithinReach(
                pastVanesOfAnotherCount().view("f", "s", FAR),
                (sight, kind, facet, patch, clock) -> sight.reaches(kind, facet, patch));
    }

    /** Of the vanes before the scope tip some are near enough for its pixels and some are not. */
    @Test
    void whatIsBeforeTheTipButTooFarForItsPixelsIsTooCoarseAndTheRestIsNotReached() {
        Coverage coverage = new Job(vanes().fixedView("f", "s", station(0, 0)).built())
                .set("detail", "0.9")
                .enter("view f", "datum s 1 ± 0")
                .coverage();
        RowCoverage row = coverage.row("s");
        Reach.FromStation from = row.reach().orElseThrow().stations().get(0);
        Patches patches = coverage.sights().grain(row.row()).patches();
        Set<Why> told = EnumSet.noneOf(Why.class);
        for (int n = 1; n <= VANES; n++) {
            long clock = (n - 1) * 360L / VANES * Circle.TICKS_PER_DEGREE;
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                Why why = reached(from.sight(), patches, zone, clock)
                        ? Why.SKIPPED
                        : reached(from.anyDetail(), patches, zone, clock) ? Why.COARSE : Why.NO_ACCESS;
                assertThat(row.why(n, zone)).as("vane %d, zone %d", n, zone).contains(why);
                told.add(why);
            }
        }
        assertThat(told).hasSize(3);
    }

    /** Whether a twentieth of a zone is in sight where a vane stands. */
    private static boolean reached(StationSight sight, Patches patches, int zone, long clock) {
        double own = 0;
        double shown = 0;
        for (int patch : patches.ofZone(zone)) {
            int facet = patches.facet(patch);
            double area = patches.facets().area(patch);
            own += area;
            shown += everyPoseShowsAt(sight, 0, facet, patch - patches.first(facet), clock) ? area : 0;
        }
        return shown >= 0.05 * own;
    }
}
