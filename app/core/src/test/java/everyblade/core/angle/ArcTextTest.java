package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets as one line of text, exact both ways. */
class ArcTextTest {

    private static final Circle CIRCLE = Circle.STANDARD;

    private static void readsBack(long start, long length) {
        ArcSet set = ArcSet.of(new Arc(CIRCLE, start, length));
        assertThat(ArcText.parse(CIRCLE, ArcText.of(set))).isEqualTo(set);
    }

    @Test
    void degreesOnTheStandardCircleAndTicksOnAnyOther() {
        assertThat(ArcSet.of(new Arc(CIRCLE, 0, 45 * Circle.TICKS_PER_DEGREE))).hasToString("[0,45)");
        assertThat(ArcSet.of(new Arc(CIRCLE, 36, 36))).hasToString("[0.00001,0.00002)");
        assertThat(ArcSet.of(new Arc(new Circle(10), 8, 4))).hasToString("[8,12)");
    }

    @Test
    void theEmptySetIsADashAndTheFullSetAWholeTurn() {
        assertThat(ArcSet.empty(CIRCLE)).hasToString("-");
        assertThat(ArcSet.full(CIRCLE)).hasToString("[0,360)");
        assertThat(ArcText.parse(CIRCLE, "-")).isEqualTo(ArcSet.empty(CIRCLE));
        assertThat(ArcText.parse(CIRCLE, "[90,450)")).isEqualTo(ArcSet.full(CIRCLE));
    }

    @Test
    void arcsInAnyOrderOverlappingOrBelowZeroAreUnited() {
        assertThat(ArcText.parse(CIRCLE, " [200,230)  [5,15) [-10,10)")).hasToString("[200,230) [350,375)");
    }

    @Test
    void everyRemainderOfTicksThatHasNoFiniteDecimalReadsBack() {
        // Five decimals of a degree are 36 ticks: the 36 remainders, at both ends, decide how a number is rounded.
        for (long base : new long[] {0, 36 * 7_777_777L, CIRCLE.ticks() / 2, CIRCLE.ticks() - 72}) {
            for (int start = 0; start < 36; start++) {
                for (int length = 1; length <= 36; length++) {
                    readsBack(base + start, length);
                }
            }
        }
    }

    @Test
    void randomTicksReadBack() {
        SplittableRandom random = new SplittableRandom(36);
        for (int i = 0; i < 50_000; i++) {
            readsBack(random.nextLong(CIRCLE.ticks()), random.nextLong(CIRCLE.ticks() + 1));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0,45",
                "[0,45]",
                "[0,45)[50,60)",
                "[1..2,3)",
                "[.,3)",
                "[a,b)",
                "[0.0000001,1)",
                "[10,5)",
                "[0,361)",
                "[0,99999999999999999999)",
                "[-99999999999999999999,0)",
                "- [0,1)"
            })
    void whatIsNoSuchTextIsRefused(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> ArcText.parse(CIRCLE, text));
    }
}
