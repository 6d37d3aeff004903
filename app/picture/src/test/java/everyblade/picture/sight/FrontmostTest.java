package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Lens;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Mesh;
import everyblade.picture.sight.Body.Role;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FrontmostTest {

    private static final int SIZE = 64;

    /** On the axis, looking aft, so that right, up and ahead are −y, z and x. */
    private static final Pose POSE =
            new Pose(0, 0, Turn.ZERO, new Heading(1, 0, 0), new Heading(0, 0, 1), Turn.ofDegrees(90), 1, 100, SIZE);

    private final Lens lens = new Lens(POSE, SIZE);

    private static Body body(Turn clock, double... corners) {
        int triangles = corners.length / 9;
        Mesh mesh = new Mesh(
                corners,
                IntStream.range(0, 3 * triangles).toArray(),
                IntStream.rangeClosed(0, triangles).map(i -> 3 * i).toArray(),
                new int[triangles]);
        return new Body("", Role.WALL, mesh, List.of(clock));
    }

    private Frontmost drawn(Body... bodies) {
        Frontmost front = new Frontmost(lens, SIZE);
        Arrays.stream(bodies).forEach(front::draw);
        return front;
    }

    @Test
    void the_nearer_one_shows_whichever_is_drawn_first() {
        Body near = body(Turn.ZERO, 10, -5, -5, 10, 5, -5, 10, 0, 8);
        Body far = body(Turn.ZERO, 20, -30, -30, 20, 30, -30, 20, 0, 40);

        for (Frontmost front : List.of(drawn(near, far), drawn(far, near))) {
            assertThat(front.place(front.at(32, 32)).body()).isEqualTo(near);
            assertThat(front.depth(32, 32)).isCloseTo(10, within(1e-12));
            assertThat(front.place(front.at(32, 60)).body()).isEqualTo(far);
        }
    }

    @Test
    void where_nothing_is_there_is_nothing() {
        assertThat(drawn(body(Turn.ZERO, -10, -5, -5, -10, 5, -5, -10, 0, 8)).at(32, 32))
                .isEqualTo(Frontmost.NOTHING);
    }

    @Test
    void a_surface_stands_at_its_clock() {
        // A spot above the axis, turned to 3 o'clock, is on the left of one who looks aft.
        Frontmost front = drawn(body(Turn.ofDegrees(90), 10, -2, 4, 10, 2, 4, 10, 0, 8));

        assertThat(front.at(14, 32)).isNotEqualTo(Frontmost.NOTHING);
        assertThat(front.at(32, 14)).isEqualTo(Frontmost.NOTHING);
    }

    @Test
    void it_faces_the_scope_tip_on_its_outer_side_only() {
        Frontmost outer = drawn(body(Turn.ZERO, 10, -9, -9, 10, 0, 9, 10, 9, -9));
        Frontmost inner = drawn(body(Turn.ZERO, 10, -9, -9, 10, 9, -9, 10, 0, 9));

        // Corners run anticlockwise seen from where a face looks; three o'clock is on the left.
        assertThat(outer.facing(32, 32)).isCloseTo(-inner.facing(32, 32), within(1e-6));
        assertThat(outer.facing(32, 32)).isCloseTo(1, within(1e-3));
    }

    @Test
    void a_surface_that_passes_the_scope_tip_is_cut_and_its_rest_shown() {
        Frontmost front = drawn(body(Turn.ZERO, -5, -3, -1, 30, 0, -1, -5, 3, -1));

        assertThat(front.at(32, 50)).isNotEqualTo(Frontmost.NOTHING);
        assertThat(front.depth(32, 50)).isCloseTo(1 / ((50.5 - 32) / 32), within(1e-9));
        assertThat(front.at(32, 10)).isEqualTo(Frontmost.NOTHING);
    }

    /** The naive model: a ray through every picture element against every triangle. */
    @Test
    void it_shows_what_rays_meet_first() {
        SplittableRandom random = new SplittableRandom(11);
        int differing = 0;
        int met = 0;
        for (int round = 0; round < 12; round++) {
            double[] corners = new double[9 * 30];
            for (int i = 0; i < corners.length; i++) {
                corners[i] = i % 3 == 0 ? random.nextDouble(-4, 40) : random.nextDouble(-25, 25);
            }
            Frontmost front = drawn(body(Turn.ZERO, corners));
            for (int at = 0; at < SIZE * SIZE; at++) {
                int first = firstMet(corners, lens.towards(at % SIZE, at / SIZE));
                met += first >= 0 ? 1 : 0;
                differing += first == front.at(at % SIZE, at / SIZE) ? 0 : 1;
            }
        }
        assertThat(met).isGreaterThan(20_000);
        // Rays within rounding of an edge may fall to either side of it.
        assertThat(differing).isLessThanOrEqualTo(2);
    }

    private static int firstMet(double[] corners, double[] to) {
        double nearest = Double.POSITIVE_INFINITY;
        int first = Frontmost.NOTHING;
        for (int t = 0; t < corners.length / 9; t++) {
            double depth = depth(Arrays.copyOfRange(corners, 9 * t, 9 * t + 9), to);
            if (depth > 1e-3 && depth < nearest) {
                nearest = depth;
                first = t;
            }
        }
        return first;
    }

    /** How far ahead a ray meets a triangle; not a number if it does not. By Cramer's rule, in the frame of the picture. */
    private static double depth(double[] c, double[] to) {
        List<double[]> p = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            p.add(new double[] {-c[3 * k + 1], c[3 * k + 2], c[3 * k]});
        }
        double[] u = minus(p.get(1), p.get(0));
        double[] v = minus(p.get(2), p.get(0));
        double[] w = {-p.get(0)[0], -p.get(0)[1], -p.get(0)[2]};
        double[] back = {-to[0], -to[1], -to[2]};
        double whole = det(u, v, back);
        double a = det(w, v, back) / whole;
        double b = det(u, w, back) / whole;
        return a >= 0 && b >= 0 && a + b <= 1 ? det(u, v, w) / whole : Double.NaN;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double det(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                - a[1] * (b[0] * c[2] - b[2] * c[0])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
}
