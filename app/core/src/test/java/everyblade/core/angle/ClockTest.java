package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Positions on the standard circle. */
class ClockTest {

    @Test
    void tenOClockIs300Degrees() {
        // Common practice, no source: clockwise from 12 o'clock as seen from aft looking forward.
        assertThat(Clock.of(Turn.ofFraction(10, 12))).isEqualTo(Clock.ofDegrees(300));
        assertThat(Clock.ofDegrees(300).degrees()).isEqualTo(300);
    }

    @Test
    void aPositionIsTheSameAnyNumberOfTurnsAwayEitherWay() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 10_000; i++) {
            ExactTicks angle = ExactTicks.any(random);
            Clock clock = Clock.of(angle.turn());
            assertThat(clock.tick()).isEqualTo(angle.wrapped().floor().longValueExact());
            assertThat(Clock.of(angle.turn().plus(Turn.FULL.times(random.nextInt(-5, 6), 1))))
                    .isEqualTo(clock);
        }
    }

    @Test
    void justBeforeTwelveIsNotTwelve() {
        assertThat(Clock.ofDegrees(new BigDecimal("-0.00001"))).isEqualTo(Clock.ofDegrees(new BigDecimal("359.99999")));
        assertThat(new Clock(-1).degrees()).isLessThan(360);
        assertThat(Clock.ofDegrees(360)).isEqualTo(Clock.ofDegrees(0));
    }

    @Test
    void aDoubleGoesToTheNearestTickAndAnExactAngleToTheTickBelow() {
        assertThat(Clock.ofDegrees(0.0000005).tick()).isEqualTo(2);
        assertThat(Clock.ofDegrees(new BigDecimal("0.0000005")).tick()).isEqualTo(1);
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Clock.ofDegrees(Double.NaN));
    }
}
