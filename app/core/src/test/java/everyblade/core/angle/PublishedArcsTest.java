package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values about arcs on a circle that stand elsewhere, or follow from a formula that does. */
class PublishedArcsTest {

    private static final Circle CIRCLE = Circle.STANDARD;

    private static ArcSet degrees(String text) {
        return ArcText.parse(CIRCLE, text);
    }

    private static long degrees(long degrees) {
        return degrees * Circle.TICKS_PER_DEGREE;
    }

    @Nested
    class FixedExamples {

        @Test
        void threeArcsOneOfThemOverTheSeamCover55DegreesAndLeaveTwoGaps() {
            // Computed by hand: 350°+20° and 5°+10° make [350,375), 200°+30° stands alone.
            ArcSet union = ArcSet.of(
                    new Arc(CIRCLE, degrees(350), degrees(20)),
                    new Arc(CIRCLE, degrees(5), degrees(10)),
                    new Arc(CIRCLE, degrees(200), degrees(30)));
            assertThat(union.measure()).isEqualTo(degrees(55));
            assertThat(union.complement().arcs())
                    .containsExactly(
                            new Arc(CIRCLE, degrees(15), degrees(185)), new Arc(CIRCLE, degrees(230), degrees(120)));
        }

        @Test
        void threeArcsOf120DegreesEndToEndMakeTheWholeCircleWithoutAGap() {
            // Computed by hand.
            ArcSet union = degrees("[0,120) [120,240) [240,360)");
            assertThat(union.isFull()).isTrue();
            assertThat(union.complement().arcs()).isEmpty();
        }

        @Test
        void threeArcsOf119DegreesLeaveThreeGapsOfOneDegree() {
            // Computed by hand.
            ArcSet union = degrees("[0,119) [120,239) [240,359)");
            assertThat(union.measure()).isEqualTo(degrees(357));
            assertThat(union.complement()).isEqualTo(degrees("[119,120) [239,240) [359,360)"));
        }
    }

    /**
     * n arcs of the share a of a turn, thrown at random. W. L. Stevens, Solution to a geometrical problem in
     * probability, Annals of Eugenics 9 (1939) 315–320; H. Solomon, Geometric Probability, SIAM 1978.
     */
    @Nested
    class ArcsThrownAtRandom {

        private static final int THROWS = 20_000;

        /** A probability as an exact fraction: everything over {@code share^(n − 1)}. */
        private BigDecimal over(BigInteger above, int n, int whole) {
            return new BigDecimal(above)
                    .divide(new BigDecimal(BigInteger.valueOf(whole).pow(n - 1)), 12, RoundingMode.HALF_EVEN);
        }

        /** Σ (−1)^k C(n,k) (1 − ka)^(n−1) over k ≤ 1/a, with a = part/whole. */
        private BigDecimal chanceOfCover(int n, int part, int whole) {
            BigInteger sum = BigInteger.ZERO;
            BigInteger choose = BigInteger.ONE;
            for (int k = 0; k <= n && k * part <= whole; k++) {
                BigInteger term =
                        choose.multiply(BigInteger.valueOf(whole - k * part).pow(n - 1));
                sum = k % 2 == 0 ? sum.add(term) : sum.subtract(term);
                choose = choose.multiply(BigInteger.valueOf(n - k)).divide(BigInteger.valueOf(k + 1));
            }
            return over(sum, n, whole);
        }

        /** n (1 − a)^(n−1). */
        private BigDecimal meanGaps(int n, int part, int whole) {
            return over(
                    BigInteger.valueOf(n)
                            .multiply(BigInteger.valueOf(whole - part).pow(n - 1)),
                    n,
                    whole);
        }

        /** 1 − (1 − a)^n. */
        private BigDecimal meanShare(int n, int part, int whole) {
            BigInteger all = BigInteger.valueOf(whole).pow(n);
            return over(all.subtract(BigInteger.valueOf(whole - part).pow(n)), n + 1, whole);
        }

        @ParameterizedTest(name = "{0} arcs of {1}/{2} turn")
        @CsvSource({
            "5, 3, 10, 0.054500, 1.200500, 0.831930",
            "10, 2, 10, 0.079969, 1.342177, 0.892626",
            "30, 1, 10, 0.139197, 1.413039, 0.957609"
        })
        void coverLeaveGapsAndShareAsTheFormulasSay(
                int n, int part, int whole, BigDecimal cover, BigDecimal gaps, BigDecimal share) {
            assertThat(chanceOfCover(n, part, whole).setScale(6, RoundingMode.HALF_EVEN))
                    .isEqualTo(cover);
            assertThat(meanGaps(n, part, whole).setScale(6, RoundingMode.HALF_EVEN))
                    .isEqualTo(gaps);
            assertThat(meanShare(n, part, whole).setScale(6, RoundingMode.HALF_EVEN))
                    .isEqualTo(share);
            List<ArcSet> thrown = thrown(n, CIRCLE.ticks() / whole * part);
            agrees(thrown.stream().mapToDouble(set -> set.isFull() ? 1 : 0).toArray(), cover);
            agrees(
                    thrown.stream()
                            .mapToDouble(set -> set.complement().arcs().size())
                            .toArray(),
                    gaps);
            agrees(
                    thrown.stream()
                            .mapToDouble(set -> (double) set.measure() / CIRCLE.ticks())
                            .toArray(),
                    share);
        }

        @Test
        void tenArcsOfATwelfthNeverCoverForTheyAreTooShortTogether() {
            assertThat(chanceOfCover(10, 1, 12)).isEqualByComparingTo(BigDecimal.ZERO);
            assertThat(thrown(10, CIRCLE.ticks() / 12)).noneMatch(ArcSet::isFull);
        }

        private List<ArcSet> thrown(int n, long length) {
            SplittableRandom random = new SplittableRandom(1939);
            List<ArcSet> sets = new ArrayList<>();
            for (int i = 0; i < THROWS; i++) {
                List<Arc> arcs = new ArrayList<>();
                for (int k = 0; k < n; k++) {
                    arcs.add(new Arc(CIRCLE, random.nextLong(CIRCLE.ticks()), length));
                }
                sets.add(ArcSet.of(CIRCLE, arcs));
            }
            return sets;
        }

        /** The mean of the sample within four of its standard deviations. */
        private void agrees(double[] sample, BigDecimal expected) {
            double mean = 0;
            for (double value : sample) {
                mean += value / sample.length;
            }
            double variance = 0;
            for (double value : sample) {
                variance += (value - mean) * (value - mean) / (sample.length - 1);
            }
            double four = 4 * Math.sqrt(variance / sample.length);
            assertThat(four).isPositive();
            assertThat(mean).isCloseTo(expected.doubleValue(), within(four));
        }
    }
}
