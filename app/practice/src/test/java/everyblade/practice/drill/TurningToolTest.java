package everyblade.practice.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.practice.drill.TurningTool.Turned;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Ratio;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class TurningToolTest {

    private static Pad pad(double play, double backlash, double drift) {
        return new Pad("p", "a pad", Ratio.ONE, Set.of(Direction.CW, Direction.CCW), play, backlash, drift);
    }

    /** Turns in steps of a degree, as hands do; what the shaft did in all. */
    private static Turned turned(TurningTool from, Pad pad, int degrees) {
        TurningTool tool = from;
        double shaft = 0;
        for (int i = 0; i < Math.abs(degrees); i++) {
            Turned step = tool.turn(pad, Math.signum(degrees));
            tool = step.tool();
            shaft += step.shaft();
        }
        return new Turned(tool, shaft);
    }

    @Test
    void without_play_backlash_and_drift_the_shaft_does_what_the_tool_reads() {
        Turned turned = turned(TurningTool.at(7), pad(0, 0, 0), 90);

        assertThat(turned.shaft()).isCloseTo(90, within(1e-9));
        assertThat(turned.tool().reads()).isEqualTo(90);
        assertThat(turned.tool().rest(pad(0, 0, 0)).shaft()).isZero();
    }

    @Test
    void nineteen_moves_of_twenty_are_off_by_no_more_than_the_play_of_the_pad() {
        double[] off = LongStream.range(0, 2000)
                .mapToDouble(
                        seed -> turned(TurningTool.at(seed), pad(2, 0, 0), 90).shaft() - 90)
                .map(Math::abs)
                .toArray();

        assertThat(LongStream.range(0, 2000).filter(i -> off[(int) i] <= 2).count())
                .isBetween(1860L, 1940L);
    }

    @Test
    void the_first_move_after_a_reversal_falls_short_by_some_of_the_backlash_and_the_next_does_not() {
        Pad pad = pad(0, 4, 0);
        TurningTool there = turned(TurningTool.at(3), pad, 30).tool();

        Turned back = turned(there, pad, -30);
        Turned on = turned(back.tool().rest(pad).tool(), pad, -30);

        assertThat(back.shaft()).isBetween(-30.0, -26.0).isNotEqualTo(-30);
        assertThat(on.shaft()).isEqualTo(-30);
    }

    @Test
    void after_a_push_the_rotor_rolls_back_but_never_further_than_it_was_turned() {
        Pad pad = pad(0, 0, 3);
        for (long seed = 0; seed < 100; seed++) {
            assertThat(turned(TurningTool.at(seed), pad, 30).tool().rest(pad).shaft())
                    .isBetween(-3.0, 0.0);
            assertThat(turned(TurningTool.at(seed), pad, -1).tool().rest(pad).shaft())
                    .isBetween(0.0, 1.0);
        }
    }

    @Test
    void the_same_number_makes_the_same_errors() {
        assertThat(turned(TurningTool.at(5), pad(2, 1, 1), 50))
                .isEqualTo(turned(TurningTool.at(5), pad(2, 1, 1), 50))
                .isNotEqualTo(turned(TurningTool.at(6), pad(2, 1, 1), 50));
    }
}
