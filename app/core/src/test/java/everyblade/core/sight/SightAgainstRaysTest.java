package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Views;
import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Exact arcs against rays cast at fine steps of the angle, facet by facet. */
class SightAgainstRaysTest {

    private static final double STEP = 0.5;
    private static final double ARC_END = 1e-5;
    private static final double NARROWEST = 0.01;

    private int seen;
    private int unseen;

    @Test
    void aRowAloneIsSeenAsRaysSeeIt() {
        for (int seed = 0; seed < 60; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int count = rings.count();
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            agree(
                    seed,
                    SightScene.of(mesh, count, SmallRings.ZONING),
                    new NaiveSight(mesh, count, SmallRings.ZONING, pose, criteria),
                    pose,
                    criteria);
        }
        assertThat(seen).as("angles in sight").isGreaterThan(2_500);
        assertThat(unseen).as("angles out of sight").isGreaterThan(2_500);
    }

    @Test
    void matesThatTurnWithTheRowHide() {
        for (int seed = 100; seed < 130; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int count = rings.count();
            Ring mate = new Ring(rings.airfoil(), rings.count(), rings.clock());
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            agree(
                    seed,
                    SightScene.of(mesh, count, SmallRings.ZONING).withMate(mate),
                    new NaiveSight(mesh, count, SmallRings.ZONING, pose, criteria).withMate(mate),
                    pose,
                    criteria);
        }
        assertThat(seen).as("angles in sight").isGreaterThan(2_500);
    }

    @Test
    void rowsThatStandStillHide() {
        for (int seed = 200; seed < 230; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int count = rings.count();
            Ring still = new Ring(rings.airfoil(), rings.count(), rings.clock());
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            agree(
                    seed,
                    SightScene.of(mesh, count, SmallRings.ZONING).withFixed(still),
                    new NaiveSight(mesh, count, SmallRings.ZONING, pose, criteria).withFixed(still),
                    pose,
                    criteria);
        }
        assertThat(seen).as("angles in sight").isGreaterThan(2_500);
    }

    @Test
    void wallsHide() {
        for (int seed = 300; seed < 315; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            Wall hub = rings.wall("hub", rings.between(6, 16));
            Wall casing = rings.wall("casing", rings.between(25, 40));
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            agree(
                    seed,
                    SightScene.of(mesh, 2, SmallRings.ZONING).withWall(hub).withWall(casing),
                    new NaiveSight(mesh, 2, SmallRings.ZONING, pose, criteria)
                            .withWall(hub)
                            .withWall(casing),
                    pose,
                    criteria);
        }
        assertThat(seen).as("angles in sight").isGreaterThan(200);
    }

    @Test
    void fullRowsBetweenTheirWallsAreSeenAsRaysSeeThemRoundEveryArcEnd() throws UnusableShape {
        assertThat(differences(Views.axial(new Fineness(8, 4)), 40, null)).isEmpty();
        assertThat(differences(Views.impeller(new Fineness(8, 4)), 11, Views.splitters(new Fineness(8, 4))))
                .isEmpty();
        assertThat(seen).as("angles in sight").isGreaterThan(100);
    }

    /** Just within and just without each end, in the middle of each arc and each gap, and a few angles more. */
    private List<String> differences(Views views, int count, Ring mate) {
        NaiveSight rays = new NaiveSight(views.airfoil(), count, views.scene().zoning(), views.pose(), Criteria.USUAL);
        views.walls().forEach(rays::withWall);
        if (mate != null) {
            rays.withMate(mate);
        }
        SightArcs exact = SightArcs.compute(views.scene(), views.pose(), Criteria.USUAL, Progress.NONE);
        SplittableRandom random = new SplittableRandom(7);
        List<String> differences = new ArrayList<>();
        for (int facet = 0; facet < exact.facetCount(); facet++) {
            List<Double> clocks = new ArrayList<>(List.of(360 * random.nextDouble(), 360 * random.nextDouble()));
            double last = 0;
            for (Arc arc : exact.arcs(facet).arcs()) {
                double from = (double) arc.start() / Circle.TICKS_PER_DEGREE;
                double length = (double) arc.length() / Circle.TICKS_PER_DEGREE;
                clocks.addAll(List.of(
                        from - ARC_END,
                        from + ARC_END,
                        from + length / 2,
                        from + length - ARC_END,
                        from + length + ARC_END));
                clocks.add((last + from) / 2);
                last = from + length;
            }
            for (double clock : clocks) {
                boolean cast = rays.sees(facet, clock);
                seen += cast ? 1 : 0;
                if (cast != exact.arcs(facet).contains(Turn.ofDegrees(clock).floorTicks())
                        && !(cast && isSliver(rays, facet, clock))) {
                    differences.add("facet " + facet + " at " + clock + ": rays say " + cast);
                }
            }
        }
        return differences;
    }

    private void agree(int seed, SightScene scene, NaiveSight rays, Pose pose, Criteria criteria) {
        SightArcs exact = SightArcs.compute(scene, pose, criteria, Progress.NONE);
        List<String> differences = new ArrayList<>();
        for (int facet = 0; facet < exact.facetCount(); facet++) {
            ArcSet arcs = exact.arcs(facet);
            for (double clock = 0; clock < 360; clock += STEP) {
                boolean cast = rays.sees(facet, clock);
                if (cast) {
                    seen++;
                } else {
                    unseen++;
                }
                if (cast != arcs.contains(Turn.ofDegrees(clock).floorTicks())
                        && !isAtAnEnd(arcs, clock)
                        && !(cast && isSliver(rays, facet, clock))) {
                    differences.add("seed " + seed + " facet " + facet + " at " + clock + ": rays say " + cast
                            + ", arcs are " + arcs);
                }
            }
        }
        assertThat(differences).isEmpty();
    }

    private static boolean isAtAnEnd(ArcSet arcs, double clock) {
        return arcs.arcs().stream()
                .flatMap(arc -> List.of(arc.start(), arc.start() + arc.length()).stream())
                .anyMatch(end -> away(end, clock) < ARC_END);
    }

    private static double away(long end, double clock) {
        double apart = Math.abs((double) end / Circle.TICKS_PER_DEGREE - clock) % 360;
        return Math.min(apart, 360 - apart);
    }

    /** Whether rays see it only between two angles less than what an arc must have. */
    private static boolean isSliver(NaiveSight rays, int facet, double clock) {
        for (int k = 1; k <= 20; k++) {
            double before = clock - NARROWEST * k / 20;
            if (!rays.sees(facet, before) && !rays.sees(facet, before + NARROWEST)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyArcIsWideEnoughToBeListed() {
        for (int seed = 0; seed < 60; seed++) {
            SmallRings rings = new SmallRings(seed);
            SightScene scene = SightScene.of(rings.airfoil(), rings.count(), SmallRings.ZONING);
            SightArcs sight = SightArcs.compute(scene, rings.pose(), rings.criteria(), Progress.NONE);
            for (int facet = 0; facet < sight.facetCount(); facet++) {
                assertThat(sight.arcs(facet).arcs())
                        .extracting(Arc::length)
                        .allMatch(length -> length >= Circle.TICKS_PER_DEGREE / 100);
            }
        }
    }
}
