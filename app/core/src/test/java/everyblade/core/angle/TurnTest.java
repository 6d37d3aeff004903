package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts of turning, against fractions of BigIntegers. */
class TurnTest {

    private static final int ROUNDS = 20_000;

    private final SplittableRandom random = new SplittableRandom(2977);

    private static Turn degrees(String degrees) {
        return Turn.ofDegrees(new BigDecimal(degrees));
    }

    @Nested
    class Degrees {

        @Test
        void toFiveDecimalsAreWholeTicks() {
            for (int i = 0; i < ROUNDS; i++) {
                long units = random.nextLong(-200_000_000, 200_000_000);
                Turn turn = Turn.ofDegrees(BigDecimal.valueOf(units, 5));
                assertThat(turn).isEqualTo(Turn.ofTicks(units * 36));
                assertThat(turn.floorTicks()).isEqualTo(turn.ceilTicks());
            }
        }

        @Test
        void withMoreDecimalsStayExact() {
            Turn thousandth = degrees("0.000001");
            assertThat(thousandth.floorTicks()).isEqualTo(3);
            assertThat(thousandth.ceilTicks()).isEqualTo(4);
            assertThat(thousandth.times(10, 1)).isEqualTo(degrees("0.00001"));
        }

        @Test
        void areTheSameHoweverTheNumberIsWritten() {
            assertThat(degrees("3.6E+2")).isEqualTo(degrees("360.000")).isEqualTo(Turn.FULL);
        }

        @Test
        void twelveTimes30IsAFullTurn() {
            Turn sum = Turn.ZERO;
            for (int i = 0; i < 12; i++) {
                sum = sum.plus(degrees("30"));
            }
            assertThat(sum).isEqualTo(Turn.FULL);
            assertThat(degrees("30").times(12, 1)).isEqualTo(Turn.FULL);
            assertThat(sum.wrapped()).isEqualTo(Turn.ZERO);
        }

        @Test
        void asADoubleComeBackAsTheNearestTick() {
            for (int i = 0; i < ROUNDS; i++) {
                Turn turn = Turn.ofTicks(random.nextLong(-10 * Turn.FULL.floorTicks(), 10 * Turn.FULL.floorTicks()));
                assertThat(Turn.ofDegrees(turn.degrees())).isEqualTo(turn);
            }
            assertThat(Turn.ofFraction(1, 7).degrees()).isCloseTo(360.0 / 7, within(1e-13));
            assertThat(Turn.ofFraction(-1, 7).degrees()).isCloseTo(-360.0 / 7, within(1e-13));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, -3e12})
        void thatAreNoAmountAreRefused(double degrees) {
            assertThatIllegalArgumentException().isThrownBy(() -> Turn.ofDegrees(degrees));
        }

        @Test
        void arePrintedWithUpToFiveDecimals() {
            assertThat(degrees("38")).hasToString("38°");
            assertThat(degrees("-214.50001")).hasToString("-214.50001°");
            assertThat(Turn.ofFraction(1, 19)).hasToString("18.94737°");
            assertThat(Turn.ZERO).hasToString("0°");
        }
    }

    @Nested
    class GearRatios {

        @Test
        void seventySevenToolTurnsOf29To77Are29TurnsExactly() {
            Turn step = Turn.FULL.times(29, 77);
            Turn sum = Turn.ZERO;
            for (int i = 0; i < 77; i++) {
                sum = sum.plus(step);
            }
            assertThat(sum).isEqualTo(Turn.FULL.times(29, 1)).isEqualTo(Turn.ofTicks(29 * 1_296_000_000L));
        }

        @Test
        void mayBeNegativeEitherWayItIsWritten() {
            assertThat(Turn.FULL.times(-29, 77)).isEqualTo(Turn.FULL.times(29, -77));
            assertThat(Turn.FULL.times(-29, -77)).isEqualTo(Turn.FULL.times(29, 77));
            assertThat(Turn.FULL.times(-29, 77).plus(Turn.FULL.times(29, 77))).isEqualTo(Turn.ZERO);
        }

        @Test
        void withADenominatorOfZeroAreRefused() {
            assertThatThrownBy(() -> Turn.FULL.times(1, 0)).isInstanceOf(ArithmeticException.class);
            assertThatThrownBy(() -> Turn.ZERO.times(0, 0)).isInstanceOf(ArithmeticException.class);
        }

        @Test
        void timesADecimalNumberOfToolTurnsStayExact() {
            assertThat(Turn.FULL.times(29, 77).times(new BigDecimal("2.5"))).isEqualTo(Turn.FULL.times(145, 154));
            assertThat(Turn.FULL.times(29, 77).times(new BigDecimal("1E+1"))).isEqualTo(Turn.FULL.times(290, 77));
        }
    }

    @Nested
    class AgainstExactFractions {

        @Test
        void sumsAndDifferencesAreExact() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                ExactTicks b = ExactTicks.any(random);
                assertThat(a.turn().plus(b.turn())).isEqualTo(a.plus(b).turn());
                assertThat(a.turn().minus(b.turn())).isEqualTo(a.minus(b).turn());
            }
        }

        @Test
        void longSumsOfMovesAreExact() {
            for (int round = 0; round < 100; round++) {
                ExactTicks exact = ExactTicks.whole(0);
                Turn sum = Turn.ZERO;
                for (int i = 0; i < 60; i++) {
                    ExactTicks move = ExactTicks.ofTurns(random.nextInt(-40, 41), new int[] {77, 19, 94, 1}[i % 4]);
                    exact = exact.plus(move);
                    sum = sum.plus(move.turn());
                }
                assertThat(sum).isEqualTo(exact.turn());
            }
        }

        @Test
        void productsAreExact() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                int above = random.nextInt(-200, 201);
                int below = random.nextBoolean() ? 1 + random.nextInt(200) : -1 - random.nextInt(200);
                assertThat(a.turn().times(above, below))
                        .isEqualTo(a.times(above, below).turn());
            }
        }

        @Test
        void signNegationAndMagnitudeAreExact() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                assertThat(a.turn().signum()).isEqualTo(a.above().signum());
                assertThat(a.turn().negated()).isEqualTo(a.times(-1, 1).turn());
                assertThat(a.turn().negated().negated()).isEqualTo(a.turn());
                assertThat(a.turn().abs())
                        .isEqualTo(a.times(a.above().signum(), 1).turn());
            }
        }

        @Test
        void orderIsThatOfTheFractionsAndAgreesWithEquality() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                ExactTicks b = random.nextInt(4) == 0 ? a.times(3, 3) : ExactTicks.any(random);
                assertThat(Integer.signum(a.turn().compareTo(b.turn()))).isEqualTo(a.compareTo(b));
                assertThat(a.turn().equals(b.turn())).isEqualTo(a.compareTo(b) == 0);
            }
        }

        @Test
        void orderTellsFractionsOfOneTickApart() {
            Turn third = Turn.ofTicks(1).times(1, 3);
            Turn half = Turn.ofTicks(1).times(1, 2);
            assertThat(third).isLessThan(half);
            assertThat(third.negated()).isGreaterThan(half.negated());
        }

        @Test
        void floorAndCeilingBracketTheAmount() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                assertThat(a.turn().floorTicks()).isEqualTo(a.floor().longValueExact());
                assertThat(a.turn().ceilTicks()).isEqualTo(a.ceil().longValueExact());
            }
        }

        @Test
        void thePositionOnTheCircleIsTheAmountWithoutWholeTurns() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                Turn wrapped = a.turn().wrapped();
                assertThat(wrapped).isEqualTo(a.wrapped().turn());
                assertThat(wrapped).isBetween(Turn.ZERO, Turn.FULL).isNotEqualTo(Turn.FULL);
            }
        }

        @Test
        void degreesAreThoseOfTheFraction() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                double degrees = new BigDecimal(a.above())
                                .divide(new BigDecimal(a.below()), MathContext.DECIMAL128)
                                .doubleValue()
                        / Circle.TICKS_PER_DEGREE;
                double tolerance = 1e-15 * Math.max(Math.abs(degrees), 1.0 / Circle.TICKS_PER_DEGREE);
                assertThat(a.turn().degrees()).isCloseTo(degrees, within(tolerance));
            }
        }
    }

    @Nested
    class EqualAmounts {

        @Test
        void areEqualObjectsHoweverTheyCameAbout() {
            for (int i = 0; i < ROUNDS; i++) {
                ExactTicks a = ExactTicks.any(random);
                ExactTicks b = ExactTicks.any(random);
                Turn there = a.turn().plus(b.turn()).minus(b.turn());
                assertThat(there).isEqualTo(a.turn()).hasSameHashCodeAs(a.turn());
                assertThat(there).isEqualByComparingTo(a.turn());
            }
        }

        @Test
        void twoHalvesOfATickAreATick() {
            Turn half = Turn.ofTicks(1).times(1, 2);
            assertThat(half.plus(half)).isEqualTo(Turn.ofTicks(1)).hasSameHashCodeAs(Turn.ofTicks(1));
        }
    }

    @Nested
    class OutOfRange {

        @Test
        void aDenominatorThatLeavesALongIsAnErrorAndNeverARoundedValue() {
            long large = (1L << 62) - 57;
            Turn small = Turn.ofTicks(1).times(1, large);
            assertThatThrownBy(() -> small.plus(Turn.ofTicks(1).times(1, large - 2)))
                    .isInstanceOf(ArithmeticException.class);
            assertThatThrownBy(() -> small.times(1, 1000)).isInstanceOf(ArithmeticException.class);
        }

        @Test
        void aSumOfFractionsJustInRangeIsExact() {
            long large = Long.MAX_VALUE;
            Turn almostOne = Turn.ofTicks(1).times(large - 1, large);
            ExactTicks twiceLessOne = new ExactTicks(BigInteger.valueOf(large - 2), BigInteger.valueOf(large));
            assertThat(almostOne.plus(almostOne)).isEqualTo(twiceLessOne.turn().plus(Turn.ofTicks(1)));
        }

        @Test
        void anAmountThatLeavesALongIsAnError() {
            Turn most = Turn.ofTicks(Long.MAX_VALUE);
            Turn least = Turn.ofTicks(Long.MIN_VALUE);
            assertThatThrownBy(() -> most.plus(Turn.ofTicks(1))).isInstanceOf(ArithmeticException.class);
            assertThatThrownBy(least::negated).isInstanceOf(ArithmeticException.class);
            assertThatThrownBy(() -> most.times(2, 1)).isInstanceOf(ArithmeticException.class);
        }
    }
}
