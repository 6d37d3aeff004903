package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a quick way with longs must give way to the exact one, and fractions of a tick that must not get lost. */
class LargeTurnsTest {

    private static final BigInteger FULL = BigInteger.valueOf(Circle.STANDARD.ticks());

    /** ⌈turn · count / full turn⌉, by fractions of BigIntegers. */
    private static BigInteger pitches(Turn turn, int count) {
        BigInteger below = BigInteger.valueOf(turn.denominator());
        BigInteger above = BigInteger.valueOf(turn.floorTicks())
                .multiply(below)
                .add(BigInteger.valueOf(turn.numerator()))
                .multiply(BigInteger.valueOf(count));
        BigInteger[] parts = above.negate().divideAndRemainder(below.multiply(FULL));
        BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
        return floor.negate();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7, 36, 61})
    void pitchesOfTurnsAtTheEndOfAProductOfLongs(int count) {
        long fits = Long.MAX_VALUE / count;
        for (long far : new long[] {fits - 1, fits, fits + 1, fits + FULL.longValue(), 2 * fits}) {
            for (long ticks : new long[] {far, -far}) {
                Turn turn = Turn.ofTicks(ticks);
                assertThat(turn.ceilPitches(count))
                        .isEqualTo(pitches(turn, count).longValueExact());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7, 36, 61})
    void pitchesBetweenTurnsAtTheEndOfAProductOfLongs(int count) {
        long fits = Long.MAX_VALUE / count / 4;
        long[] ends = {-4 * fits + 9, -fits - 1, -fits, -fits + 1, -7, 0, 7, fits - 1, fits, fits + 1, 4 * fits - 9};
        for (long to : ends) {
            for (long from : ends) {
                if (Math.abs((double) to - from) < Long.MAX_VALUE) {
                    Turn end = Turn.ofTicks(to);
                    assertThat(end.ceilPitchesFrom(Turn.ofTicks(from), count))
                            .isEqualTo(pitches(Turn.ofTicks(to - from), count).longValueExact());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 7, 1_000_003, 152_000_000_000_000_001L})
    void pitchesFromAFractionOfATickHoweverFine(long below) {
        for (long above : new long[] {1, below / 2, below - 1}) {
            Turn from = Turn.of(5, above, below);
            for (long to : new long[] {5, 6, FULL.longValue() + 5, FULL.longValue() + 6}) {
                Turn end = Turn.ofTicks(to);
                assertThat(end.ceilPitchesFrom(from, 60))
                        .isEqualTo(pitches(end.minus(from), 60).longValueExact());
                assertThat(end.plus(Turn.of(0, 1, 3)).ceilPitchesFrom(Turn.ofTicks(5), 60))
                        .isEqualTo(pitches(end.plus(Turn.of(-5, 1, 3)), 60).longValueExact());
            }
        }
    }

    @Test
    void aFractionOfATickIsKeptAsGiven() {
        Turn turn = Turn.of(4, 2, 7);
        assertThat(turn.floorTicks()).isEqualTo(4);
        assertThat(turn.numerator()).isEqualTo(2);
        assertThat(turn.denominator()).isEqualTo(7);
        assertThat(turn.times(7, 1)).isEqualTo(Turn.ofTicks(30));
        assertThat(Turn.of(4, 0, 1)).isEqualTo(Turn.ofTicks(4));
    }

    @ParameterizedTest
    @CsvSource({"-1, 2", "1, 1", "2, 2", "3, 2", "2, 4", "0, 2"})
    void whatIsNoProperFractionInLowestTermsIsRefused(long above, long below) {
        assertThatIllegalArgumentException().isThrownBy(() -> Turn.of(0, above, below));
    }

    @Test
    void degreesThatReachTheEndOfALongAreRefused() {
        double below = 0x1p63 / Circle.TICKS_PER_DEGREE;
        double end = Math.nextUp(below);
        assertThat(below * Circle.TICKS_PER_DEGREE).isLessThan(0x1p63);
        assertThat(end * Circle.TICKS_PER_DEGREE).isGreaterThanOrEqualTo(0x1p63);

        assertThat(Turn.ofDegrees(below).floorTicks()).isPositive();
        assertThatIllegalArgumentException().isThrownBy(() -> Turn.ofDegrees(end));
    }

    @Test
    void fractionsOfOneTickAreInOrder() {
        assertThat(Turn.of(9, 2, 3)).isGreaterThan(Turn.of(9, 1, 3)).isLessThan(Turn.of(9, 3, 4));
    }

    @Test
    void turnsScatterInATableOfHashes() {
        Set<Integer> hashes = new HashSet<>();
        for (int ticks = 0; ticks < 40; ticks++) {
            for (int above = 1; above < 23; above++) {
                hashes.add(Turn.of(ticks, above, 23).hashCode());
            }
        }
        assertThat(hashes).hasSizeGreaterThan(800);
        assertThat(Turn.of(3, 1, 2)).hasSameHashCodeAs(Turn.of(3, 1, 4).plus(Turn.of(0, 1, 4)));
    }
}
