package everyblade.record.limits;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RandomLimitsTest {

    private static final int FILES = 1000;
    private static final int LEAST_OF_EACH = 50;

    @Test
    void aThousandFilesJudgeAsTheNaiveJudgeDoes() throws Exception {
        SplittableRandom random = new SplittableRandom(20260514);
        Map<everyblade.core.finding.Verdict, Integer> met = new EnumMap<>(everyblade.core.finding.Verdict.class);
        for (int i = 0; i < FILES; i++) {
            RandomLimits made = new RandomLimits(random.split());
            ObjectNode file = made.file();
            List<String> entries = made.entries();
            Limits limits = LimitsFiles.limits(file.toString());

            List<Judgement> judged = LimitsFiles.judge(limits, entries);

            assertThat(judged.stream().map(each -> each.verdict().name()).toList())
                    .as("file %d: %s%n%s", i, file, entries)
                    .isEqualTo(new NaiveJudge(file, entries).verdicts());
            judged.forEach(each -> met.merge(each.verdict(), 1, Integer::sum));
        }
        assertThat(met)
                .hasSize(6)
                .allSatisfy((verdict, count) -> assertThat(count).isGreaterThan(LEAST_OF_EACH));
    }
}
