package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** All places of an airfoil that is turned by a small angle. */
class SmearTest {

    private static final double ANGLE = Math.toRadians(3);

    private final Mesh airfoil = new SmallRings(5).airfoil();

    private static double[] point(Mesh mesh, int point) {
        return new double[] {mesh.x(point), mesh.y(point), mesh.z(point)};
    }

    private static boolean hides(Mesh mesh, double[] from, double[] to) {
        int[] points = mesh.triangles();
        for (int i = 0; i < points.length; i += 3) {
            if (!Double.isNaN(Ray.meets(
                    from, to, point(mesh, points[i]), point(mesh, points[i + 1]), point(mesh, points[i + 2])))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void noAngleLeavesItAsItIs() {
        assertThat(Smear.of(airfoil, 0)).isSameAs(airfoil);
    }

    @Test
    void itsPointsAreThoseOfBothEndsClockwise() {
        Mesh smear = Smear.of(airfoil, ANGLE);
        int count = airfoil.pointCount();

        assertThat(smear.pointCount()).isEqualTo(2 * count);
        for (int i = 0; i < count; i++) {
            assertThat(point(smear, i)).containsExactly(point(airfoil, i));
            assertThat(point(smear, count + i)).containsExactly(Ray.turned(point(airfoil, i), ANGLE), within(1e-12));
        }
    }

    /** Two triangles for each face of four corners at both ends, and two for each edge. */
    @Test
    void eachEdgeIsPassedOverOnce() {
        Set<Set<Integer>> edges = new HashSet<>();
        for (int face = 0; face < airfoil.faceCount(); face++) {
            for (int k = 0; k < 4; k++) {
                edges.add(Set.of(airfoil.corner(face, k), airfoil.corner(face, (k + 1) % 4)));
            }
        }

        Mesh smear = Smear.of(airfoil, ANGLE);

        assertThat(smear.faceCount()).isEqualTo(4 * airfoil.faceCount() + 2 * edges.size());
        assertThat(smear.triangleCount()).isEqualTo(smear.faceCount());
        assertThat(Facets.of(smear).area()).isGreaterThan(2 * Facets.of(airfoil).area());
    }

    /** A face lies at one of the ends, or is passed over by one edge between both. */
    @Test
    void eachFaceIsOneOfAnEndOrOfAnEdgeThatPasses() {
        Mesh smear = Smear.of(airfoil, ANGLE);
        int count = airfoil.pointCount();
        int[] ends = new int[2];
        Map<Set<Integer>, Integer> passing = new HashMap<>();
        for (int face = 0; face < smear.faceCount(); face++) {
            int at = face;
            List<Integer> corners =
                    IntStream.range(0, 3).mapToObj(k -> smear.corner(at, k)).toList();
            long late = corners.stream().filter(corner -> corner >= count).count();
            Set<Integer> points = corners.stream().map(corner -> corner % count).collect(Collectors.toSet());
            if (late % 3 == 0) {
                assertThat(points).hasSize(3);
                ends[(int) late / 3]++;
            } else {
                assertThat(points).as("an edge").hasSize(2);
                passing.merge(points, 1, Integer::sum);
            }
        }
        assertThat(ends).containsOnly(airfoil.triangleCount());
        assertThat(passing.values()).containsOnly(2);
    }

    /** A line that the airfoil hides wherever it stands between is hidden by what bounds all its places. */
    @Test
    void whatHidesSomewhereBetweenIsHiddenByIt() {
        SplittableRandom random = new SplittableRandom(3);
        Mesh smear = Smear.of(airfoil, ANGLE);
        int hidden = 0;
        int left = 0;
        for (int i = 0; i < 4_000; i++) {
            double[] from = {-40, random.nextDouble() * 20 - 10, 15 + random.nextDouble() * 15};
            double[] to = {40, random.nextDouble() * 20 - 10, 10 + random.nextDouble() * 20};
            boolean between = hides(airfoil, from, to)
                    || hides(airfoil, Ray.turned(from, -ANGLE / 3), Ray.turned(to, -ANGLE / 3))
                    || hides(airfoil, Ray.turned(from, -ANGLE), Ray.turned(to, -ANGLE));
            boolean bound = hides(smear, from, to);
            assertThat(between && !bound).as("line %d", i).isFalse();
            hidden += between ? 1 : 0;
            left += bound ? 0 : 1;
        }
        assertThat(hidden).isGreaterThan(200);
        assertThat(left).isGreaterThan(300);
    }
}
