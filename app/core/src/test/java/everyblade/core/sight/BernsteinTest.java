package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BernsteinTest {

    private final Bernstein bernstein = new Bernstein();
    private final IntervalSet open = new IntervalSet();

    private static double value(double[] c, double s) {
        double t = 1 - s;
        return c[0] * t * t * t * t
                + 4 * c[1] * t * t * t * s
                + 6 * c[2] * t * t * s * s
                + 4 * c[3] * t * s * s * s
                + c[4] * s * s * s * s;
    }

    private static boolean contains(IntervalSet open, double s) {
        for (int i = 0; i < open.count(); i++) {
            if (open.from(i) <= s && s <= open.to(i)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void aRandomPolynomialIsKeptExactlyWhereItIsNotNegative() {
        SplittableRandom random = new SplittableRandom(3);
        int kept = 0;
        for (int i = 0; i < 5_000; i++) {
            double[] c = random.doubles(5, -1, 1).toArray();
            open.set(0, 1);
            bernstein.keepQuartic(c[0], c[1], c[2], c[3], c[4], open);
            for (double s = 0; s <= 1; s += 1.0 / 64) {
                double value = value(c, s);
                if (Math.abs(value) > 1e-9) {
                    assertThat(contains(open, s)).as("at %s", s).isEqualTo(value > 0);
                    kept += value > 0 ? 1 : 0;
                }
            }
        }
        assertThat(kept).isBetween(100_000, 250_000);
    }

    @Test
    void fourRootsAreTheEndsOfWhatIsKept() {
        // (s − 0.1)(s − 0.2)(s − 0.7)(s − 0.9) in Bernstein form.
        double[] power = {0.0126, -0.221, 1.13, -1.9, 1};
        double[] c = {
            power[0],
            power[0] + power[1] / 4,
            power[0] + power[1] / 2 + power[2] / 6,
            power[0] + 3 * power[1] / 4 + power[2] / 2 + power[3] / 4,
            power[0] + power[1] + power[2] + power[3] + power[4]
        };
        open.set(0, 1);
        bernstein.keepQuartic(c[0], c[1], c[2], c[3], c[4], open);

        assertThat(new double[] {open.from(0), open.to(0), open.from(1), open.to(1), open.from(2), open.to(2)})
                .containsExactly(new double[] {0, 0.1, 0.2, 0.7, 0.9, 1}, within(1e-10));
    }

    @Test
    void aQuadraticThatDipsBelowZeroLosesItsMiddle() {
        // (s − 0.25)(s − 0.75)
        open.set(0, 1);
        Bernstein.keepQuadratic(0.1875, -0.3125, 0.1875, open);

        assertThat(open.count()).isEqualTo(2);
        assertThat(open.to(0)).isCloseTo(0.25, within(1e-12));
        assertThat(open.from(1)).isCloseTo(0.75, within(1e-12));
    }

    private static double quadratic(double[] c, double s) {
        double t = 1 - s;
        return c[0] * t * t + 2 * c[1] * s * t + c[2] * s * s;
    }

    @Test
    void aRandomQuadraticIsKeptExactlyWhereItIsNotNegative() {
        SplittableRandom random = new SplittableRandom(6);
        int ends = 0;
        for (int i = 0; i < 4_000; i++) {
            double[] c = random.doubles(3, -1, 1).toArray();
            open.set(0, 1);
            Bernstein.keepQuadratic(c[0], c[1], c[2], open);
            for (double s = 0; s <= 1; s += 1.0 / 32) {
                double value = quadratic(c, s);
                if (Math.abs(value) > 1e-9) {
                    assertThat(contains(open, s)).as("%d at %s", i, s).isEqualTo(value > 0);
                }
            }
            ends += assertEndsAreRoots(s -> quadratic(c, s));
        }
        assertThat(ends).isGreaterThan(2_000);
    }

    @Test
    void theEndsOfWhatIsKeptOfARandomPolynomialAreItsRoots() {
        SplittableRandom random = new SplittableRandom(7);
        int ends = 0;
        for (int i = 0; i < 4_000; i++) {
            double[] c = random.doubles(5, -1, 1).toArray();
            open.set(0, 1);
            bernstein.keepQuartic(c[0], c[1], c[2], c[3], c[4], open);
            ends += assertEndsAreRoots(s -> value(c, s));
        }
        assertThat(ends).isGreaterThan(2_000);
    }

    private int assertEndsAreRoots(DoubleUnaryOperator polynomial) {
        int ends = 0;
        for (int k = 0; k < open.count(); k++) {
            for (double end : new double[] {open.from(k), open.to(k)}) {
                if (end > 0 && end < 1) {
                    assertThat(polynomial.applyAsDouble(end)).isCloseTo(0, within(1e-9));
                    ends++;
                }
            }
        }
        return ends;
    }

    @Test
    void aPolynomialThatIsNowhereNegativeTakesNothingAway() {
        open.set(0.2, 0.3);
        open.append(0.6, 0.7);

        Bernstein.keepQuadratic(0, 0, 0, open);
        Bernstein.keepQuadratic(1, -0.5, 1, open);
        bernstein.keepQuartic(0, 0, 0, 0, 0, open);
        bernstein.keepQuartic(1, -0.5, 0.5, -0.5, 1, open);

        assertThat(open.count()).isEqualTo(2);
        assertThat(open.length()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void aPolynomialThatIsNegativeThroughoutTakesAllAway() {
        for (double[] c : new double[][] {{-1, -1, -1}, {-1, 0.5, -1}}) {
            open.set(0, 1);
            Bernstein.keepQuadratic(c[0], c[1], c[2], open);
            assertThat(open.isEmpty()).isTrue();
        }
        for (double[] c : new double[][] {{-1, -1, -1, -1, -1}, {-1, 0.5, -1, 0.5, -1}}) {
            open.set(0, 1);
            bernstein.keepQuartic(c[0], c[1], c[2], c[3], c[4], open);
            assertThat(open.isEmpty()).isTrue();
        }
    }

    /** 1 − s, s, and (2 s − 1)², which is 0 in the middle and negative nowhere. */
    @Test
    void whereItIsNothingItIsNotNegative() {
        open.set(0, 1);
        Bernstein.keepQuadratic(1, 0.5, 0, open);
        Bernstein.keepQuadratic(0, 0.5, 1, open);
        Bernstein.keepQuadratic(1, -1, 1, open);
        bernstein.keepQuartic(1, 0.75, 0.5, 0.25, 0, open);
        bernstein.keepQuartic(0, 0.25, 0.5, 0.75, 1, open);

        assertThat(open.length()).isEqualTo(1);
    }

    /** −(2 s − 1)⁴ + 10⁻¹²: not negative within 5 · 10⁻⁴ of the middle. */
    @Test
    void anIslandThatIsNarrowIsFound() {
        double e = 1e-12;
        open.set(0, 1);
        bernstein.keepQuartic(e - 1, e + 1, e - 1, e + 1, e - 1, open);

        assertThat(open.count()).isEqualTo(1);
        assertThat(open.from(0)).isCloseTo(0.5 - 5e-4, within(1e-6));
        assertThat(open.to(0)).isCloseTo(0.5 + 5e-4, within(1e-6));
    }

    /** s (3 s − 2), (1 − s) (1 − 3 s), and the negatives of both. */
    @ParameterizedTest
    @CsvSource({"0, -1, 1, 0.666667, 1", "1, -1, 0, 0, 0.333333", "0, 1, -1, 0, 0.666667", "-1, 1, 0, 0.333333, 1"})
    void aRootAtAnEndIsNoOther(double c0, double c1, double c2, double from, double to) {
        open.set(0, 1);
        Bernstein.keepQuadratic(c0, c1, c2, open);

        assertThat(open.count()).isEqualTo(1);
        assertThat(open.from(0)).isCloseTo(from, within(1e-6));
        assertThat(open.to(0)).isCloseTo(to, within(1e-6));
    }

    /** The same times (1 − s)² + s², which has no root. */
    @ParameterizedTest
    @CsvSource({
        "0, -0.5, 0.166666666666667, -0.5, 1, 0.666667, 1",
        "1, -0.5, 0.166666666666667, -0.5, 0, 0, 0.333333",
        "0, 0.5, -0.166666666666667, 0.5, -1, 0, 0.666667",
        "-1, 0.5, -0.166666666666667, 0.5, 0, 0.333333, 1"
    })
    void aRootOfDegreeFourAtAnEndIsNoOther(
            double c0, double c1, double c2, double c3, double c4, double from, double to) {
        open.set(0, 1);
        bernstein.keepQuartic(c0, c1, c2, c3, c4, open);

        assertThat(open.length()).isCloseTo(to - from, within(1e-6));
        assertThat(open.from(0)).isCloseTo(from, within(1e-6));
        assertThat(open.to(0)).isCloseTo(to, within(1e-6));
    }

    /** (3 s − 1)² times (1 − s)² + s²: no piece is missing where it is nothing. */
    @Test
    void aPolynomialThatOnlyTouchesNothingLeavesNoGap() {
        open.set(0, 1);
        bernstein.keepQuartic(1, -1, 5.0 / 6, -1, 4, open);

        assertThat(open.count()).isEqualTo(1);
        assertThat(open.length()).isEqualTo(1);
    }

    /** 1 − 2 s and 2 s − 1. */
    @Test
    void aStraightLineIsKeptOnItsSideOfNothing() {
        for (double sign : new double[] {1, -1}) {
            open.set(0, 1);
            Bernstein.keepQuadratic(sign, 0, -sign, open);

            assertThat(open.count()).isEqualTo(1);
            assertThat(open.from(0)).isEqualTo(sign > 0 ? 0 : 0.5);
            assertThat(open.to(0)).isEqualTo(sign > 0 ? 0.5 : 1);
        }
    }

    /** −s² and −(1 − s)². */
    @Test
    void whatIsNegativeButAtOneEndIsTakenAwayThereToo() {
        for (double[] c : new double[][] {{0, 0, -1}, {-1, 0, 0}}) {
            open.set(0, 1);
            Bernstein.keepQuadratic(c[0], c[1], c[2], open);

            assertThat(open.length()).isZero();
        }
    }

    /** (s − a) (s − 2 a) times (1 − s)² + s², from either end. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aPairOfRootsIsMissedOnlyIfTheyAreAsGoodAsOne(boolean fromTheEnd) {
        keepBetweenOrBesides(1, 1e-9, fromTheEnd);
        assertThat(open.count()).isEqualTo(2);
        assertThat(open.length()).isCloseTo(1 - 1e-9, within(1e-11));

        keepBetweenOrBesides(1, 1e-11, fromTheEnd);
        assertThat(open.count()).isEqualTo(1);
        assertThat(open.length()).isEqualTo(1);

        keepBetweenOrBesides(-1, 1e-9, fromTheEnd);
        assertThat(open.count()).isEqualTo(1);
        assertThat(open.length()).isCloseTo(1e-9, within(1e-11));

        keepBetweenOrBesides(-1, 1e-11, fromTheEnd);
        assertThat(open.isEmpty()).isTrue();
    }

    private void keepBetweenOrBesides(double sign, double a, boolean fromTheEnd) {
        double near = sign * 2 * a * a;
        double middle = sign * (2 * a * a - 1.5 * a);
        double far = sign * (1 - a) * (1 - 2 * a);
        open.set(0, 1);
        bernstein.keepQuartic(
                fromTheEnd ? far : near, middle / 2, (near + far) / 6, middle / 2, fromTheEnd ? near : far, open);
    }
}
