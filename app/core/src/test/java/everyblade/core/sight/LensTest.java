package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.angle.Turn;
import everyblade.spi.Station.Heading;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LensTest {

    private static final int SIZE = 200;

    /** At 12 o'clock and r 80, with a cone of 60°. */
    private static Pose pose(double clock, Heading forward, Heading up) {
        return new Pose(0, 80, Turn.ofDegrees(clock), forward, up, Turn.ofDegrees(60), 1, 100, SIZE);
    }

    private static double[] picture(Pose pose, double x, double y, double z) {
        Lens lens = new Lens(pose, SIZE);
        double[] seen = lens.seen(x, y, z);
        return new double[] {lens.across(seen), lens.down(seen)};
    }

    @Test
    void what_lies_on_the_optical_axis_is_in_the_middle() {
        double[] at = picture(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), 30, 0, 80);

        assertThat(at).containsExactly(new double[] {100, 100}, within(1e-9));
    }

    @Test
    void one_who_looks_aft_with_the_radius_upward_has_three_o_clock_on_the_left() {
        double[] at = picture(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), 30, 10, 84);

        assertThat(at[0]).isLessThan(100);
        assertThat(at[1]).isLessThan(100);
    }

    @Test
    void headings_turn_with_the_clock_of_the_scope_tip() {
        // At 3 o'clock, looking at the axis with aft upward: 12 o'clock, which is anticlockwise, lies on the right.
        double[] at = picture(pose(90, new Heading(0, 0, -1), new Heading(1, 0, 0)), 5, 60, 4);

        assertThat(at[0]).isGreaterThan(100);
        assertThat(at[1]).isLessThan(100);
    }

    @Test
    void the_edge_of_the_cone_is_the_rim() {
        double[] at = picture(
                pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), 10, 0, 80 + 10 * Math.tan(Math.toRadians(30)));

        assertThat(at).containsExactly(new double[] {100, 0}, within(1e-9));
        assertThat(new Lens(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), SIZE).holds(100, 0))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 5, 12.5, 20, 29})
    void distance_from_the_middle_goes_with_the_tangent(double angle) {
        double tangent = Math.tan(Math.toRadians(angle));
        double[] at = picture(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), 7, 7 * tangent, 80);

        assertThat(100 - at[0]).isCloseTo(100 * tangent / Math.tan(Math.toRadians(30)), within(1e-9));
    }

    @Test
    void a_top_that_is_not_square_to_the_axis_is_only_turned_towards() {
        Lens straight = new Lens(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), SIZE);
        Lens slanted = new Lens(pose(0, new Heading(1, 0, 0), new Heading(0.7, 0, 1)), SIZE);

        assertThat(slanted.seen(9, 3, 82)).containsExactly(straight.seen(9, 3, 82), within(1e-12));
    }

    @Test
    void the_way_to_a_picture_element_leads_back_to_it() {
        Lens lens = new Lens(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), SIZE);
        double[] to = lens.towards(31, 144);

        assertThat(lens.across(to)).isCloseTo(31.5, within(1e-9));
        assertThat(lens.down(to)).isCloseTo(144.5, within(1e-9));
    }

    /** Wherever it looks, it only turns what it sees: its axis is ahead, its top above, and the right is square to both. */
    @Test
    void a_lens_turns_space_and_keeps_its_lengths() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 200; i++) {
            double[] h = random.doubles(6, -1, 1).toArray();
            double clock = random.nextInt(360);
            Lens lens = new Lens(pose(clock, new Heading(h[0], h[1], h[2]), new Heading(h[3], h[4], h[5])), SIZE);
            double[] eye = Ray.turned(new double[] {0, 0, 80}, Math.toRadians(clock));
            double[] ahead = Ray.turned(new double[] {h[0], h[1], h[2]}, Math.toRadians(clock));
            double[] up = Ray.turned(new double[] {h[3], h[4], h[5]}, Math.toRadians(clock));
            double[] right = Ray.cross(ahead, up);
            double[] axis = seen(lens, eye, ahead);
            double[] top = seen(lens, eye, up);
            double[] side = seen(lens, eye, right);

            assertThat(axis).containsExactly(new double[] {0, 0, length(ahead)}, within(1e-9));
            assertThat(top[0]).isCloseTo(0, within(1e-9));
            assertThat(top[1]).isPositive();
            assertThat(length(top)).isCloseTo(length(up), within(1e-9));
            assertThat(side).containsExactly(new double[] {length(right), 0, 0}, within(1e-9));
        }
    }

    private static double[] seen(Lens lens, double[] eye, double[] off) {
        return lens.seen(eye[0] + off[0], eye[1] + off[1], eye[2] + off[2]);
    }

    private static double length(double[] v) {
        return Math.sqrt(Ray.dot(v, v));
    }

    /** Then the top is the radius of one who looks along the axis, and aft for any other. */
    @Test
    void a_top_along_the_optical_axis_is_replaced() {
        Heading aft = new Heading(1, 0, 0);
        Heading outward = new Heading(0, 0, 1);

        assertThat(new Lens(pose(0, aft, aft), SIZE).seen(0, 0, 81))
                .containsExactly(new double[] {0, 1, 0}, within(1e-9));
        assertThat(new Lens(pose(0, outward, outward), SIZE).seen(1, 0, 80))
                .containsExactly(new double[] {0, 1, 0}, within(1e-9));
    }

    /** A picture element lies in the cone if the way to its middle is at most half the cone off the optical axis. */
    @Test
    void holds_what_lies_in_the_cone_and_nothing_else() {
        Lens lens = new Lens(pose(0, new Heading(1, 0, 0), new Heading(0, 0, 1)), SIZE);
        int held = 0;
        for (int column = 0; column < SIZE; column++) {
            for (int line = 0; line < SIZE; line++) {
                double[] to = lens.towards(column, line);
                double off = Math.toDegrees(Math.atan(Math.hypot(to[0], to[1])));
                assertThat(lens.holds(column, line)).isEqualTo(off <= 30);
                held += lens.holds(column, line) ? 1 : 0;
            }
        }
        assertThat((double) held / (SIZE * SIZE)).isCloseTo(Math.PI / 4, within(0.005));
    }
}
