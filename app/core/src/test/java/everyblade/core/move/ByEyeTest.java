package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

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

    private static boolean comesToAll(int step, int count) {
        return BigInteger.valueOf(step).gcd(BigInteger.valueOf(count)).equals(BigInteger.ONE);
    }
}
