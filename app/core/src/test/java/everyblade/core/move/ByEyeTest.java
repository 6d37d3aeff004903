package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ByEyeTest {

    private static final double LITTLE = 1e-2;

    @Test
    void beginsNoLaterEndsNoEarlierAndStepsByWhatComesToAllAirfoils() {
        int counted = 0;
        for (int count = 1; count < 80; count++) {
            for (double way = -25; way < 25; way += 0.37) {
                for (double sweep = 0; sweep < 25; sweep += 1.7) {
                    ByEye eye = ByEye.of(way, sweep, count).orElse(new ByEye(0, 0));
                    if (eye.watched() > 0) {
                        counted++;
                        assertThat((double) eye.skipped()).isLessThanOrEqualTo(Math.max(0, way) + LITTLE);
                        assertThat((double) eye.skipped() + eye.watched()).isGreaterThanOrEqualTo(way + sweep - LITTLE);
                        assertThat(comesToAll(eye.watched(), count)).isTrue();
                        assertThat(eye.skipped() == 0 || comesToAll(eye.skipped(), count))
                                .isTrue();
                    }
                }
            }
        }
        assertThat(counted).isGreaterThan(10_000);
    }

    /** In a row of 41, a prime, every step comes to all. */
    @ParameterizedTest
    @CsvSource({
        "0, 20, 41, 0, 20",
        "20, 20, 41, 20, 20",
        "-20, 20, 41, -20, 20",
        "3, 4, 41, 3, 4",
        "0, 4, 5, 0, 4",
    })
    void countsUpToTwentyAndNotOnceRound(int way, int sweep, int count, int skipped, int watched) {
        assertThat(ByEye.of(way, sweep, count)).hasValue(new ByEye(skipped, watched));
    }

    @ParameterizedTest
    @CsvSource({"0, 21, 41", "21, 5, 41", "-21, 5, 41", "0, 5, 5", "0, 6, 5"})
    void nobodyCountsMore(int way, int sweep, int count) {
        assertThat(ByEye.of(way, sweep, count)).isEmpty();
    }

    private static boolean comesToAll(int step, int count) {
        return BigInteger.valueOf(step).gcd(BigInteger.valueOf(count)).equals(BigInteger.ONE);
    }
}
