package everyblade.practice.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.sight.Pose;
import everyblade.core.sight.ViewScene;
import everyblade.practice.Engines;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Hands.Moved;
import everyblade.practice.drill.Hands.Outcome;
import everyblade.practice.drill.Hands.Stopped;
import everyblade.practice.drill.Hands.Struck;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HandsTest {

    private final ViewScene engine = Engines.scene("larkspur-4");
    private final Mockup mockup;
    private final Hands hands;

    HandsTest() throws Exception {
        mockup = new Mockup(engine, List.of(), Map.of(), 0);
        hands = new Hands(engine, mockup);
    }

    private static double[] place(Pose pose) {
        double clock = Math.toRadians(pose.clock().degrees());
        return new double[] {pose.x(), pose.r() * Math.sin(clock), pose.r() * Math.cos(clock)};
    }

    private static double apart(Pose a, Pose b) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += Math.pow(place(a)[i] - place(b)[i], 2);
        }
        return Math.sqrt(sum);
    }

    @Test
    void a_tip_that_nobody_has_moved_stands_at_its_station() {
        for (View view : engine.model().views()) {
            for (Station station : view.stations()) {
                ScopeTip tip =
                        engine.model().scopeTip(view.scopeTip().orElseThrow()).orElseThrow();
                Pose nominal = Pose.of(station, tip);

                Pose held = hands.pose(Tip.at(view.id(), station.id()));

                assertThat(apart(held, nominal)).isLessThan(1e-5);
                assertThat(held.forward().axial()).isCloseTo(nominal.forward().axial(), within(1e-9));
                assertThat(held.forward().radial()).isCloseTo(nominal.forward().radial(), within(1e-9));
            }
        }
    }

    @Test
    void pushing_moves_a_forward_looking_tip_along_its_axis_and_leaves_the_picture_upright() {
        Pose before = hands.pose(Tip.at("in-c1-edge", "mid"));
        Pose after = hands.pose(Tip.at("in-c1-edge", "mid").pushed(5));

        assertThat(apart(before, after)).isCloseTo(5, within(1e-6));
        assertThat(after.x() - before.x()).isCloseTo(5 * before.forward().axial(), within(1e-6));
    }

    @Test
    void bending_by_a_right_angle_looks_where_the_top_of_the_picture_was() {
        Tip seated = Tip.at("in-c1-edge", "mid");
        Pose before = hands.pose(seated);
        Pose after = hands.pose(seated.bent(90, 0));

        // An arc of 18 mm over a right angle leads 18 · 2/π mm ahead and as much aside.
        assertThat(apart(before, after)).isCloseTo(Math.hypot(18 * 2 / Math.PI - 18, 18 * 2 / Math.PI), within(1e-6));
        double upright = before.forward().axial() * after.forward().axial()
                + before.forward().tangential() * after.forward().tangential()
                + before.forward().radial() * after.forward().radial();
        assertThat(upright).isCloseTo(0, within(0.15)); // parts are told at two clock angles some degrees apart
    }

    @Test
    void rolling_turns_the_picture_and_nothing_else() {
        Tip seated = Tip.at("in-c1-edge", "mid");
        Pose before = hands.pose(seated);
        Pose after = hands.pose(seated.rolled(180));

        assertThat(apart(before, after)).isLessThan(1e-9);
        double along = before.up().axial() * before.forward().axial()
                + before.up().tangential() * before.forward().tangential()
                + before.up().radial() * before.forward().radial();
        double top = before.up().radial() - along * before.forward().radial();
        assertThat(after.up().radial()).isCloseTo(-top / Math.sqrt(1 - along * along), within(1e-6));
        assertThat(after.forward().axial()).isCloseTo(before.forward().axial(), within(1e-9));
    }

    @Test
    void metal_stops_the_tip() {
        Moment moment = hands.seated("in-c1-edge", "mid", Map.of());
        int steps = 0;
        Outcome outcome = hands.move(moment, moment.tip().pushed(1));
        while (outcome instanceof Moved moved && steps < 60) {
            moment = moved.moment();
            outcome = hands.move(moment, moment.tip().pushed(1));
            steps++;
        }

        assertThat(outcome).isInstanceOf(Stopped.class);
        assertThat(steps).isBetween(1, 59);
    }

    @Test
    void turning_with_the_tip_among_the_blades_takes_it_off_and_turning_clear_of_them_does_not() {
        Moment clear = hands.seated("in-c1-edge", "mid", Map.of());

        assertThat(hands.turn(clear, "gas", 12)).isEqualTo(new Moved(new Moment(clear.tip(), Map.of("gas", 12.0))));

        boolean among = false;
        for (int clock = 0; clock < 40 && !among; clock++) {
            Moment moment = hands.seated("in-c1-edge", "mid", Map.of("gas", clock * 0.5));
            Outcome outcome = new Moved(moment);
            while (outcome instanceof Moved moved
                    && hands.among(moved.moment(), "gas").isEmpty()) {
                moment = moved.moment();
                outcome = hands.move(moment, moment.tip().pushed(1));
            }
            if (outcome instanceof Moved moved) {
                among = true;
                assertThat(hands.turn(moved.moment(), "gas", 0.1)).isEqualTo(new Struck("c1"));
                assertThat(hands.turn(moved.moment(), "power", 0.1)).isInstanceOf(Moved.class);
            }
        }
        assertThat(among).isTrue();
    }
}
