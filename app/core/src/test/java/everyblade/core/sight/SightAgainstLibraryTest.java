package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.BoundaryList3D;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.line.Lines3D;
import org.apache.commons.numbers.core.Precision;
import org.apache.commons.numbers.core.Precision.DoubleEquivalence;
import org.junit.jupiter.api.Test;

/** What hides, against the lines and triangles of a general geometry library (Apache Commons Geometry). */
class SightAgainstLibraryTest {

    private static final DoubleEquivalence PRECISION = Precision.doubleEquivalenceOfEpsilon(1e-9);
    private static final double STEP = 3;
    private static final long NEAR_AN_END = Circle.TICKS_PER_DEGREE / 100;

    private int seen;

    @Test
    void aRowAloneIsSeenAsTheLibrarySeesIt() {
        for (int seed = 0; seed < 25; seed++) {
            SmallRings rings = new SmallRings(seed);
            Mesh mesh = rings.airfoil();
            int count = rings.count();
            Pose pose = rings.pose();
            Criteria criteria = rings.criteria();
            SightArcs exact =
                    SightArcs.compute(SightScene.of(mesh, count, SmallRings.ZONING), pose, criteria, Progress.NONE);
            NaiveSight naive = new NaiveSight(mesh, count, SmallRings.ZONING, pose, criteria);
            for (int facet = 0; facet < exact.facetCount(); facet++) {
                for (double clock = 0; clock < 360; clock += STEP) {
                    boolean sees = naive.meetsCriteria(facet, clock) && !hidden(naive, mesh, count, facet, clock);
                    seen += sees ? 1 : 0;
                    if (!isNearAnEnd(exact.arcs(facet), clock)) {
                        assertThat(exact.arcs(facet)
                                        .contains(Turn.ofDegrees(clock).floorTicks()))
                                .as("seed %d, facet %d at %s°", seed, facet, clock)
                                .isEqualTo(sees);
                    }
                }
            }
        }
        assertThat(seen).as("angles in sight").isGreaterThan(500);
    }

    private static boolean hidden(NaiveSight naive, Mesh mesh, int count, int facet, double clock) {
        List<PlaneConvexSubset> triangles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double at = clock + 360.0 * i / count;
            for (int face = 0; face < mesh.faceCount(); face++) {
                for (int k = 2; k < mesh.cornerCount(face) && !(i == 0 && face == facet); k++) {
                    triangles.add(Planes.triangleFromVertices(
                            corner(mesh, face, 0, at),
                            corner(mesh, face, k - 1, at),
                            corner(mesh, face, k, at),
                            PRECISION));
                }
            }
        }
        Vector3D place = Vector3D.of(naive.place(facet, clock));
        Vector3D eye = Vector3D.of(naive.eye());
        return new BoundaryList3D(triangles).linecastFirst(Lines3D.segmentFromPoints(place, eye, PRECISION)) != null;
    }

    private static Vector3D corner(Mesh mesh, int face, int k, double clock) {
        return Vector3D.of(NaiveSight.corner(mesh, face, k, clock));
    }

    /** Arcs under 0.01° are left out, so that an angle next to an end, or within such an arc, says nothing. */
    private static boolean isNearAnEnd(ArcSet arcs, double clock) {
        ArcSet grown = arcs.grow(NEAR_AN_END);
        long tick = Turn.ofDegrees(clock).floorTicks();
        return grown.contains(tick) && !arcs.shrink(NEAR_AN_END).contains(tick);
    }
}
