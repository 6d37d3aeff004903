package everyblade.core.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.English;
import everyblade.core.entry.Entry.LengthUnit;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformanceTest {

    private static Length mm(String mm) {
        return new Length(new BigDecimal(mm));
    }

    private static Measured size(String value, String plusMinus) {
        return new Measured(mm(value), Optional.of(mm(plusMinus)));
    }

    private static Bounds between(String least, String most) {
        return new Bounds(Optional.of(mm(least)), Optional.of(mm(most)));
    }

    /** ISO 14253-1:2017; limit 1.00 mm, u = 0.03 mm, so that g = 1.644854 u = 0.049346 mm; computed. */
    @ParameterizedTest
    @CsvSource({
        "0.950654, WITHIN",
        "0.950655, CLOSE",
        "1.000000, CLOSE",
        "1.049345, CLOSE",
        "1.049346, BEYOND",
        "0, WITHIN"
    })
    void againstOneLimitTheGuardIsTheOneSidedOneOf95PerCent(String value, Verdict verdict) {
        assertThat(Conformance.judge(size(value, "0.06"), Bounds.upTo(mm("1.00")), Guard.CONFORMANCE))
                .isEqualTo(verdict);
    }

    /** The same with U = 2u as the guard. */
    @ParameterizedTest
    @CsvSource({"0.94, WITHIN", "0.940001, CLOSE", "1.059999, CLOSE", "1.06, BEYOND"})
    void theGuardMayBeTheExpandedUncertainty(String value, Verdict verdict) {
        assertThat(Conformance.judge(size(value, "0.06"), Bounds.upTo(mm("1.00")), Guard.EXPANDED))
                .isEqualTo(verdict);
    }

    /** JCGM 106:2012, from memory: limit −5.40, measured −5.47, u = 0.05. */
    @Test
    void theChanceOfConformingIsThatOfTheNormalDistribution() {
        assertThat(Conformance.chance(size("-5.47", "0.10"), Bounds.upTo(mm("-5.40"))))
                .isEqualTo(0.9192, within(5e-5));
    }

    /** Tables of the normal distribution; the last two computed to 17 digits. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "1.959963984540054, 0.975",
        "1.6448536269514722, 0.95",
        "-1.6448536269514722, 0.05",
        "3, 0.9986501019683699",
        "-4, 3.167124183311992e-5"
    })
    void theNormalDistributionIsTheTabulatedOne(double x, double chance) {
        assertThat(Conformance.normal(x)).isEqualTo(chance, within(2e-15));
    }

    @Nested
    class BetweenTwoLimits {

        @ParameterizedTest
        @CsvSource({
            "5.0, WITHIN",
            "4.17, WITHIN",
            "4.16, CLOSE",
            "4.0, CLOSE",
            "3.83, BEYOND",
            "6.16, CLOSE",
            "6.17, BEYOND"
        })
        void bothCount(String value, Verdict verdict) {
            assertThat(Conformance.judge(size(value, "0.2"), between("4", "6"), Guard.CONFORMANCE))
                    .isEqualTo(verdict);
        }

        /** Both tails together are 5.7 %, each alone 2.9 %. */
        @Test
        void bothTailsAddUpWhereTheyAreNear() {
            assertThat(Conformance.chance(size("5", "2"), between("3.1", "6.9")))
                    .isEqualTo(0.942567, within(1e-6));
            assertThat(Conformance.judge(size("5", "2"), between("3.1", "6.9"), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.CLOSE);
        }

        @Test
        void nothingIsSurelyWithinWhatIsNarrowerThanTheUncertainty() {
            assertThat(Conformance.judge(size("5", "1"), between("4.9", "5.1"), Guard.EXPANDED))
                    .isEqualTo(Verdict.CLOSE);
        }
    }

    @Nested
    class WithoutUncertainty {

        @Test
        void theLimitItselfIsWithin() {
            assertThat(Conformance.judge(size("1.0", "0"), Bounds.upTo(mm("1")), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.WITHIN);
            assertThat(Conformance.judge(size("1.0000001", "0"), Bounds.upTo(mm("1")), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.BEYOND);
        }

        @Test
        void anInchIsExactlyAsManyMillimetres() {
            Length inch = Length.of(new BigDecimal("0.040"), LengthUnit.IN);

            assertThat(inch).isEqualTo(mm("1.016"));
            assertThat(Conformance.judge(size("1.016", "0"), Bounds.upTo(inch), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.WITHIN);
            assertThat(English.say(inch.shown(LengthUnit.IN, 4))).isEqualTo("0.04 in");
        }

        @Test
        void aSizeOfUnknownUncertaintyIsNotJudged() {
            Measured unknown = new Measured(mm("0.1"), Optional.empty());

            assertThat(Conformance.judge(unknown, Bounds.upTo(mm("1")), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.NOT_MEASURED);
            assertThat(Conformance.judge(
                            unknown.orElse(Optional.of(mm("0.2"))), Bounds.upTo(mm("1")), Guard.CONFORMANCE))
                    .isEqualTo(Verdict.WITHIN);
        }
    }
}
