package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import everyblade.spi.Station.Heading;
import org.junit.jupiter.api.Test;

/** What must hold whatever the shape: turning, mirroring, and counting round a ring. */
class SightSymmetryTest {

    private static final long TURN = Circle.STANDARD.ticks();
    /** Ends are rounded to ticks, and rounding of lengths may reach this far at a line that just touches. */
    private static final long ROUNDING = 40;

    static Mesh moved(Mesh mesh, double clock, boolean mirrored) {
        double cosine = Math.cos(Math.toRadians(clock));
        double sine = Math.sin(Math.toRadians(clock));
        double[] points = mesh.points();
        for (int i = 0; i < points.length; i += 3) {
            double y = mirrored ? -points[i + 1] : points[i + 1];
            double z = points[i + 2];
            points[i + 1] = y * cosine + z * sine;
            points[i + 2] = z * cosine - y * sine;
        }
        int[] corners = new int[4 * mesh.faceCount()];
        int[] start = new int[mesh.faceCount() + 1];
        int[] zone = new int[mesh.faceCount()];
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < 4; k++) {
                corners[4 * face + k] = mesh.corner(face, mirrored ? (4 - k) % 4 : k);
            }
            start[face + 1] = 4 * (face + 1);
            zone[face] = mesh.zone(face);
        }
        return new Mesh(points, corners, start, zone);
    }

    /** Two airfoils as one mesh. */
    private static Mesh both(Mesh one, Mesh other) {
        double[] points = new double[one.points().length + other.points().length];
        System.arraycopy(one.points(), 0, points, 0, one.points().length);
        System.arraycopy(other.points(), 0, points, one.points().length, other.points().length);
        int faces = one.faceCount() + other.faceCount();
        int[] corners = new int[4 * faces];
        int[] start = new int[faces + 1];
        int[] zone = new int[faces];
        for (int face = 0; face < faces; face++) {
            boolean first = face < one.faceCount();
            Mesh mesh = first ? one : other;
            int own = first ? face : face - one.faceCount();
            for (int k = 0; k < 4; k++) {
                corners[4 * face + k] = mesh.corner(own, k) + (first ? 0 : one.pointCount());
            }
            start[face + 1] = 4 * (face + 1);
            zone[face] = mesh.zone(own);
        }
        return new Mesh(points, corners, start, zone);
    }

    private static Pose at(Pose pose, Turn clock, double sign) {
        Heading f = pose.forward();
        return new Pose(
                pose.x(),
                pose.r(),
                clock,
                new Heading(f.axial(), sign * f.tangential(), f.radial()),
                pose.up(),
                pose.cone(),
                pose.near(),
                pose.far(),
                pose.pixels());
    }

    private static ArcSet mirrored(ArcSet arcs) {
        return ArcSet.of(
                arcs.circle(),
                arcs.arcs().stream()
                        .map(arc -> new Arc(arc.circle(), -arc.start() - arc.length(), arc.length()))
                        .toList());
    }

    private static void same(ArcSet one, ArcSet other, String what) {
        long apart = one.difference(other).measure() + other.difference(one).measure();
        assertThat(apart).as("%s: %s and %s", what, one, other).isLessThanOrEqualTo(ROUNDING);
    }

    @Test
    void aScopeTipTurnedRoundTheAxisSeesTheSameTurned() {
        for (int seed = 0; seed < 40; seed++) {
            SmallRings rings = new SmallRings(seed);
            SightScene scene = SightScene.of(rings.airfoil(), rings.count(), SmallRings.ZONING);
            Pose pose = rings.pose();
            long further = 123_456_789L * (seed + 1) % TURN;
            Pose turned = at(pose, pose.clock().plus(Turn.ofTicks(further)), 1);
            SightArcs one = Plates.sight(scene, pose, Criteria.USUAL);
            SightArcs other = Plates.sight(scene, turned, Criteria.USUAL);
            for (int facet = 0; facet < one.facetCount(); facet++) {
                assertThat(other.arcs(facet)).isEqualTo(one.arcs(facet).shift(further));
            }
        }
    }

    @Test
    void aMirroredPoseMirrorsTheMap() {
        int seen = 0;
        for (int seed = 0; seed < 40; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int count = rings.count();
            Pose pose = rings.pose();
            SightArcs one = Plates.sight(SightScene.of(mesh, count, SmallRings.ZONING), pose, Criteria.USUAL);
            SightArcs other = Plates.sight(
                    SightScene.of(moved(mesh, 0, true), count, SmallRings.ZONING),
                    at(pose, pose.clock().negated(), -1),
                    Criteria.USUAL);
            for (int facet = 0; facet < one.facetCount(); facet++) {
                same(mirrored(one.arcs(facet)), other.arcs(facet), "seed " + seed + " facet " + facet);
                seen += one.arcs(facet).isEmpty() ? 0 : 1;
            }
        }
        assertThat(seen).isGreaterThan(50);
    }

    @Test
    void turningByOnePitchMovesTheMapByOneBlade() {
        int seen = 0;
        for (int seed = 0; seed < 40; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int pairs = rings.count();
            double pitch = 360.0 / (2 * pairs);
            Pose pose = rings.pose();
            SightArcs single = Plates.sight(SightScene.of(mesh, 2 * pairs, SmallRings.ZONING), pose, Criteria.USUAL);
            SightArcs paired = Plates.sight(
                    SightScene.of(both(mesh, moved(mesh, pitch, false)), pairs, SmallRings.ZONING),
                    pose,
                    Criteria.USUAL);
            long ticks = Turn.ofFraction(1, 2L * pairs).floorTicks();
            for (int facet = 0; facet < single.facetCount(); facet++) {
                same(single.arcs(facet), paired.arcs(facet), "first, seed " + seed);
                same(
                        single.arcs(facet).shift(-ticks),
                        paired.arcs(facet + single.facetCount()),
                        "second, seed " + seed + " facet " + facet);
                seen += single.arcs(facet).isEmpty() ? 0 : 1;
            }
        }
        assertThat(seen).isGreaterThan(50);
    }

    /** Rotor and vanes meet again every 360° / lcm(N, M); so a scope tip may as well stand where the vanes are alike. */
    @Test
    void standingVanesAreTheSameEveryPitchOfTheirs() {
        for (int seed = 0; seed < 20; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh blade = rings.airfoil();
            int vanes = rings.count();
            SightScene scene = SightScene.of(blade, rings.count(), SmallRings.ZONING)
                    .withFixed(new Ring(rings.airfoil(), vanes, rings.clock()));
            Pose pose = rings.pose();
            Turn pitch = Turn.ofFraction(1, vanes);
            SightArcs one = Plates.sight(scene, pose, Criteria.USUAL);
            SightArcs other = Plates.sight(scene, at(pose, pose.clock().plus(pitch), 1), Criteria.USUAL);
            for (int facet = 0; facet < one.facetCount(); facet++) {
                same(one.arcs(facet).shift(pitch.floorTicks()), other.arcs(facet), "seed " + seed);
            }
        }
    }

    @Test
    void whatIsAddedToASceneNeverShowsMore() {
        for (int seed = 0; seed < 20; seed++) {
            SmallRings rings = new SmallRings(seed);
            SightScene alone = SightScene.of(rings.airfoil(), rings.count(), SmallRings.ZONING);
            Mesh other = rings.airfoil();
            Pose pose = rings.pose();
            SightArcs all = Plates.sight(alone, pose, Criteria.USUAL);
            SightArcs behindSwept = Plates.sight(alone.withSwept(other), pose, Criteria.USUAL);
            for (int clock = 0; clock < 360; clock += 15) {
                SightArcs behindOne =
                        Plates.sight(alone.withFixed(new Ring(other, 1, Turn.ofDegrees(clock))), pose, Criteria.USUAL);
                for (int facet = 0; facet < all.facetCount(); facet++) {
                    assertThat(behindOne.arcs(facet).difference(all.arcs(facet)).measure())
                            .isLessThanOrEqualTo(ROUNDING);
                    assertThat(behindSwept
                                    .arcs(facet)
                                    .difference(behindOne.arcs(facet))
                                    .measure())
                            .as("seed %s facet %s, behind one at %s°", seed, facet, clock)
                            .isLessThanOrEqualTo(ROUNDING);
                }
            }
        }
    }
}
