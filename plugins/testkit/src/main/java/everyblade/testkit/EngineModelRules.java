package everyblade.testkit;

import everyblade.core.sight.Progress;
import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every rule as a JUnit test of its own: a required one that is broken fails, an optional one that is broken and one that
 * a person must look at are left out, visibly, with the reason. A subclass names the source of models:
 *
 * <pre>{@code
 * class TeaselRulesTest extends EngineModelRules {
 *     @Override
 *     protected EngineModelSource source() {
 *         return new TeaselFan();
 *     }
 * }
 * }</pre>
 */
public abstract class EngineModelRules {

    /** The models to judge. */
    protected abstract EngineModelSource source();

    /** A container for each model, in it a test for each rule. */
    @TestFactory
    public Stream<DynamicNode> rules() throws IOException {
        return tests(source());
    }

    static Stream<DynamicNode> tests(EngineModelSource source) throws IOException {
        List<Evidence> models = Evidence.of(source);
        Assertions.assertFalse(models.isEmpty(), "the source hands over no model");
        return models.stream()
                .map(evidence -> DynamicContainer.dynamicContainer(
                        evidence.model().map(model -> model.id()).orElse("a model that is refused"),
                        RuleBook.judge(evidence, Progress.NONE).stream().map(EngineModelRules::test)));
    }

    private static DynamicTest test(JudgedRule judged) {
        String name = judged.rule().number() + " " + judged.rule().force().word() + ": "
                + judged.rule().sentence();
        String reason = judged.verdict().word() + ": "
                + String.join(System.lineSeparator(), judged.verdict().lines());
        return DynamicTest.dynamicTest(name, () -> {
            Assertions.assertFalse(judged.refuses(), reason);
            Assumptions.assumeTrue(judged.verdict() instanceof RuleVerdict.Kept, reason);
        });
    }
}
