package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.sight.Reach;
import everyblade.core.sight.StationSight;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Whoever does again and again what a gap says has seen in the end all that stations can show. */
class SightReachTest {

    private static final int MOST_STEPS = 40;

    private final Station ahead = ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3);
    private final Station low = ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0.5, 2);
    private final Station behind = ShapedEngine.station("behind", 45, 130, new Heading(-1, -0.4, -0.1), 0, 0);

    private final ShapedEngine engine = new ShapedEngine()
            .row("r", RowKind.ROTOR, 20, 35, 0)
            .view("front", "r", ahead, low)
            .view("rear", "r", behind);

    @Test
    void gapsThatCanBeReachedAreClosedByWhatTheySay() {
        Job job = new Job(engine.built()).enter("view front", "datum r 1", "turn 100", "skip 77", "turn 30");
        Coverage coverage = job.coverage();
        int steps = 0;
        for (Optional<Gap> largest = largest(coverage); largest.isPresent(); largest = largest(coverage)) {
            double before = seen(coverage);
            follow(job, largest.get().reach().get());
            coverage = coverage.after(job.fold().situation());
            assertThat(seen(coverage)).as("step %d shows more", steps).isGreaterThan(before);
            assertThat(++steps).isLessThan(MOST_STEPS);
        }
        assertThat(Gaps.of(coverage)).allMatch(gap -> gap.why() == Why.NO_ACCESS);
    }

    /** Whatever a facet's first patch needs, each other one that can be shown passes before every pose as well. */
    @Test
    void howFarToTurnIsEnoughForEveryPoseOfTheTolerance() {
        assertPassesEveryPose(new Job(engine.built()).enter("view front", "datum r 1"), "r", 1);
    }

    /** 20 vanes behind 30 that stand still: what is in sight of every other one is in sight from elsewhere. */
    @Test
    void howFarToDrawIsEnoughForEveryVanePastARowOfAnotherCount() {
        Job job = new Job(new ShapedEngine()
                        .row("s", RowKind.STATOR, 20, 35, 0, OptionalDouble.of(3))
                        .row("between", RowKind.STATOR, 30, 0, -40, OptionalDouble.of(2))
                        .view("v", "s", ShapedEngine.station("far", -50, 130, new Heading(1, 0, -0.1), 0.5, 0.5))
                        .built())
                .enter("view v", "datum s 1");
        assertPassesEveryPose(job, "s", 2);
    }

    private static void assertPassesEveryPose(Job job, String row, int kinds) {
        for (Reach.FromStation from :
                job.coverage().row(row).reach().orElseThrow().stations()) {
            StationSight sight = from.sight();
            assertThat(sight.kinds()).isEqualTo(kinds);
            int shown = 0;
            for (int facet = 0; facet < sight.facets(); facet++) {
                shown += passingEveryPose(sight, facet);
            }
            assertThat(shown).isPositive();
        }
    }

    private static int passingEveryPose(StationSight sight, int facet) {
        BitSet alone = new BitSet();
        alone.set(facet);
        Showing showing = Showing.of(sight, alone);
        Arc passed = new Arc(
                Circle.STANDARD,
                showing.from().wrapped().floorTicks(),
                showing.width().ceilTicks());
        int shown = 0;
        for (int kind = 0; kind < sight.kinds(); kind++) {
            for (int patch = 0; patch < sight.patches(facet); patch++) {
                for (int pose = 0; pose < sight.poses() && sight.reaches(kind, facet, patch); pose++) {
                    assertThat(sight.arcs(kind, pose, facet, patch).arcs())
                            .as("kind %d, facet %d, patch %d, pose %d", kind, facet, patch, pose)
                            .anyMatch(arc -> meet(arc, passed));
                    shown++;
                }
            }
        }
        return shown;
    }

    private static boolean meet(Arc one, Arc other) {
        return Circle.STANDARD.wrap(one.start() - other.start()) < other.length()
                || Circle.STANDARD.wrap(other.start() - one.start()) < one.length();
    }

    @Test
    void ofTwoStationsThatShowAsMuchTheOneInUseIsTaken() {
        Station twin = ShapedEngine.station("twin", 45, 130, new Heading(-1, -0.4, -0.1), 0, 0);
        ShapedEngine twins =
                new ShapedEngine().row("r", RowKind.ROTOR, 20, 35, 0).view("rear", "r", behind, twin);
        for (String inUse : List.of("behind", "twin")) {
            Job job = new Job(twins.built()).enter("view rear", "at " + inUse, "datum r 1");

            assertThat(Gaps.of(job.coverage()).stream().flatMap(gap -> gap.reach().stream()))
                    .isNotEmpty()
                    .allSatisfy(reach -> assertThat(reach.station()).contains(inUse));
        }
    }

    private static Optional<Gap> largest(Coverage coverage) {
        return Gaps.of(coverage).stream()
                .filter(gap -> gap.reach().isPresent())
                .max(Comparator.comparingInt(
                        gap -> gap.airfoils().size() * gap.zones().size()));
    }

    private static void follow(Job job, Gap.Reach reach) {
        job.enter(
                "view " + reach.view(),
                "at " + reach.station().orElseThrow(),
                "skip to " + Math.rint(10 * reach.from()) / 10 % 360,
                "turn " + (reach.sweep() >= 0 ? "on " : "back ") + Math.ceil(10 * Math.abs(reach.sweep())) / 10);
    }

    private static double seen(Coverage coverage) {
        RowCoverage row = coverage.row("r");
        return row.areas(row.zoning().all()).seen();
    }
}
