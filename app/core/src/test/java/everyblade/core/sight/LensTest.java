package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.spi.Station.Heading;
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
}
