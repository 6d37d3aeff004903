package everyblade.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths, their bounds and what is said of them, value by value. */
class SizesTest {

    private static Length mm(String mm) {
        return new Length(new BigDecimal(mm));
    }

    private static Optional<Length> end(String mm) {
        return Optional.ofNullable(mm).map(SizesTest::mm);
    }

    @ParameterizedTest
    @CsvSource({
        "2, 5, 3, 1",
        "2, 5, 4.5, 0.5",
        "2, 5, 3.5, 1.5",
        "2, 5, 1, -1",
        "2, 5, 6, -1",
        "2, 5, 2, 0",
        "2, 2, 2, 0",
        ", 5, 4, 1",
        ", 5, 7, -2",
        "2, , 9, 7",
        "2, , 1.5, -0.5"
    })
    void theMarginIsToTheNearerEnd(String least, String most, String value, String margin) {
        assertThat(new Bounds(end(least), end(most)).margin(mm(value))).isEqualTo(mm(margin));
    }

    @ParameterizedTest
    @CsvSource({"1, WITHIN", "1.000001, BEYOND", "0.999999, WITHIN"})
    void aSizeThatIsExactlyKnownIsWithinUpToItsLimit(String value, Verdict verdict) {
        Measured exact = new Measured(mm(value), Optional.of(Length.ZERO));
        assertThat(Conformance.judge(exact, Bounds.upTo(mm("1")), Guard.CONFORMANCE))
                .isEqualTo(verdict);
        assertThat(Conformance.judge(exact, Bounds.upTo(mm("1")), Guard.EXPANDED))
                .isEqualTo(verdict);
        assertThat(Conformance.chance(exact, Bounds.upTo(mm("1")))).isEqualTo(verdict == Verdict.WITHIN ? 1 : 0);
    }

    @Test
    void farOutTheDistributionHasReachedItsEnds() {
        assertThat(Conformance.normal(50)).isEqualTo(1);
        assertThat(Conformance.normal(-50)).isZero();
        assertThat(Conformance.normal(0)).isEqualTo(0.5);
    }

    @Test
    void lengthsDifferExactlyAndAreShownInTheirUnit() {
        assertThat(mm("1.2").minus(mm("3"))).isEqualTo(mm("-1.8"));
        assertThat(Length.of(new BigDecimal("0.5"), LengthUnit.IN)).isEqualTo(mm("12.7"));
        assertThat(Length.of(new BigDecimal("0.5"), LengthUnit.MM)).isEqualTo(mm("0.5"));
        assertThat(mm("12.7").shown(LengthUnit.IN, 4)).isEqualTo(new ShownLength(new BigDecimal("0.5"), LengthUnit.IN));
        assertThat(mm("1.23456").shown(LengthUnit.MM, 3))
                .isEqualTo(new ShownLength(new BigDecimal("1.235"), LengthUnit.MM));
        assertThat(mm("120").shown(LengthUnit.MM, 3).number()).isEqualByComparingTo("120");
        assertThat(mm("-0.0001").shown(LengthUnit.MM, 3).number()).isEqualTo(BigDecimal.ZERO);
    }

    @Test
    void theWorseOfTwoVerdictsIsTheLater() {
        for (Verdict one : Verdict.values()) {
            for (Verdict other : Verdict.values()) {
                assertThat(one.and(other)).isEqualTo(one.ordinal() > other.ordinal() ? one : other);
            }
        }
    }

    @Test
    void aRepeatIsMetByOneAsShortInTheSameInterval() {
        Repeat repeat = new Repeat(new BigDecimal("25.0"), Interval.CYCLES);
        assertThat(repeat.text()).isEqualTo("25 cycles");
        assertThat(repeat.metBy(new BigDecimal("25"), Interval.CYCLES)).isTrue();
        assertThat(repeat.metBy(new BigDecimal("24"), Interval.CYCLES)).isTrue();
        assertThat(repeat.metBy(new BigDecimal("25.1"), Interval.CYCLES)).isFalse();
        assertThat(repeat.metBy(new BigDecimal("5"), Interval.HOURS)).isFalse();
    }

    @Test
    void wordsInFilesAreInLowerCase() {
        assertThat(Dimension.DEPTH.word()).isEqualTo("depth");
        assertThat(Guard.EXPANDED.word()).isEqualTo("expanded");
    }
}
