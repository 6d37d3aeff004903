package everyblade.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RulesReportTest {

    private static final Instant DAY = Instant.parse("2026-05-14T06:00:00.123Z");

    private static RulesReport of(EngineModel model) {
        Evidence evidence = Evidence.of(new Reading.Read(model, List.of()), List.of(model, model), Map.of());
        return new RulesReport(DAY, "models/ring", Optional.of(model), RuleBook.judge(evidence, Progress.NONE));
    }

    @Test
    void has_the_day_the_model_a_line_for_each_rule_and_the_sum() {
        RulesReport report = of(Examples.ring());

        assertThat(report.refuses()).isFalse();
        assertThat(report.lines())
                .startsWith(
                        "Rules for engine models, judged 2026-05-14T06:00:00Z",
                        "models/ring: Ring (ring), SHA-256 of its engine.json "
                                + report.hash().orElseThrow())
                .contains("1.1  required  kept       The model is read without an error.")
                .contains("5.1  untested  by hand    The counts are those of the engine.")
                .contains("       count each row, or find it in the manual in force")
                .endsWith("required: 8 of 8 kept; optional: 19 of 19 kept; 7 are for a person to look at");
    }

    @Test
    void is_of_another_hash_if_anything_in_the_model_is_different() {
        assertThat(of(Examples.ring()).hash())
                .isNotEqualTo(of(Examples.ring("13", "12")).hash());
        assertThat(of(Examples.ring()).hash()).isEqualTo(of(Examples.ring()).hash());
    }

    @Test
    void refuses_a_model_that_breaks_a_required_rule_and_says_how() {
        RulesReport report = of(Examples.ring("\"hottest\": 10", "\"hottest\": 75"));

        assertThat(report.refuses()).isTrue();
        assertThat(report.lines()).anyMatch(line -> line.startsWith("4.1  required  broken "));
    }
}
