package everyblade.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

/** The JUnit test is run as JUnit would run it, with sound and with wrong models. */
class EngineModelRulesTest {

    private static EngineModelSource given(EngineModel... models) {
        return new EngineModelSource() {
            @Override
            public String id() {
                return "given";
            }

            @Override
            public List<EngineModel> models() {
                return List.of(models);
            }
        };
    }

    /** What came of each test, by the number of its rule. */
    private static Map<String, String> run(EngineModelSource source) throws IOException {
        Map<String, String> outcomes = new LinkedHashMap<>();
        DynamicContainer model =
                (DynamicContainer) EngineModelRules.tests(source).findFirst().orElseThrow();
        model.getChildren().map(DynamicTest.class::cast).forEach(test -> {
            String number = test.getDisplayName().split(" ")[0];
            try {
                test.getExecutable().execute();
                outcomes.put(number, "passed");
            } catch (TestAbortedException left) {
                outcomes.put(number, "left out: " + left.getMessage());
            } catch (Throwable failed) {
                outcomes.put(number, "failed: " + failed.getMessage());
            }
        });
        return outcomes;
    }

    @Test
    void passes_what_is_kept_and_leaves_out_what_a_person_must_look_at() throws IOException {
        Map<String, String> outcomes = run(given(Examples.ring()));

        assertThat(outcomes).hasSameSizeAs(RuleBook.rules()).containsEntry("1.1", "passed");
        assertThat(outcomes.get("5.1")).startsWith("left out: ").contains("count each row");
        assertThat(outcomes.values()).noneMatch(outcome -> outcome.startsWith("failed"));
    }

    @Test
    void fails_where_a_required_rule_is_broken_and_says_how() throws IOException {
        Map<String, String> outcomes = run(given(Examples.ring("\"hottest\": 10", "\"hottest\": 75")));

        assertThat(outcomes.get("4.1")).startsWith("failed: ").contains("view v: heat 20 C");
        assertThat(outcomes.values())
                .filteredOn(outcome -> outcome.startsWith("failed"))
                .hasSize(1);
    }

    @Test
    void leaves_out_where_an_optional_rule_is_broken_and_says_how() throws IOException {
        Map<String, String> outcomes = run(given(Examples.ring("[\"root\"]", "[\"root\", \"tip\"]")));

        assertThat(outcomes.get("3.5")).startsWith("left out: ").contains("no view shows tip");
    }

    @Test
    void has_a_container_for_each_model_and_fails_if_there_is_none() throws IOException {
        assertThat(EngineModelRules.tests(given(Examples.ring(), Examples.ring("\"other\"", "\"ring\""))))
                .extracting(node -> node.getDisplayName())
                .containsExactly("ring", "other");
        assertThatThrownBy(() -> EngineModelRules.tests(given())).hasMessageContaining("hands over no model");
    }
}
