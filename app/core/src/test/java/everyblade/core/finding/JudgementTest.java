package everyblade.core.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Entry.LengthUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which of several rulings decides, what was measured, and which rules hang on themselves. */
class JudgementTest {

    @Test
    void theFirstOfTheWorstRulingsDecides() {
        LimitsUnderTest limits = new LimitsUnderTest();
        limits.rule("loose", "a", "nick", "", limits.step("length 9"))
                .rule("tight", "a", "nick", "", limits.step("length 1"))
                .rule("tightest", "a", "nick", "", limits.step("length 0.5"));
        Judgement judgement = limits.judge("a nick 3 tpl 2 ± 0.1").get(0);
        assertThat(judgement.verdict()).isEqualTo(Verdict.BEYOND);
        assertThat(judgement.decisive().orElseThrow().rule().id()).isEqualTo("tight");
        assertThat(limits.judge("a crack 3 tpl 2 ± 0.1").get(0).decisive()).isEmpty();
    }

    @Test
    void everySizeThatWasMeasuredIsKeptInMillimetresWithItsUncertainty() {
        Entry.Size size = new Entry.Size(
                Optional.of(new BigDecimal("1")),
                Optional.of(new BigDecimal("0.2")),
                Optional.of(new BigDecimal("0.5")),
                Optional.of(new BigDecimal("0.1")),
                LengthUnit.IN);
        assertThat(Findings.sizes(size))
                .containsOnly(
                        entry(Dimension.LENGTH, inches("25.4")),
                        entry(Dimension.DEPTH, inches("5.08")),
                        entry(Dimension.WIDTH, inches("12.7")));
    }

    private static Measured inches(String mm) {
        return new Measured(new Length(new BigDecimal(mm)), Optional.of(new Length(new BigDecimal("2.54"))));
    }

    private static Rule hanging(String id, String row, String... on) {
        return new Rule(id, List.of(row), java.util.Set.of(), List.of(), false, List.of(on), List.of(), "beyond");
    }

    /** What hangs on two rows is free only when both are. */
    @Test
    void rowsMayHangOnEachOtherAsLongAsNoneHangsOnItself() {
        assertThat(RuleDependencies.circle(
                        List.of(hanging("d", "d", "b", "c"), hanging("b", "b", "a"), hanging("c", "c", "a"))))
                .isEmpty();
        assertThat(RuleDependencies.circle(
                        List.of(hanging("d", "d", "b", "c"), hanging("b", "b", "a"), hanging("c", "c", "d"))))
                .contains("d");
    }
}
