package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.gap.Gaps;
import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random jobs without errors: plans turn exactly as little as can be, and whoever follows them has closed all gaps. */
class PlansAgainstSlowTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 300;

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void turnExactlyAsLittleAsCanBe(int rows) {
        int compared = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            SmallJob small = new SmallJob(seed, rows);
            Job job = small.job();
            int least = small.leastTurning(job);
            if (least >= 0) {
                Plan plan = Plans.of(job.fold(), job.coverage());
                assertThat(plan.turning())
                        .as("job %d: %s", seed, job.fold().entries())
                        .isEqualByComparingTo(BigDecimal.valueOf((long) least * SmallJob.MARK));
                assertThat(plan.proved()).as("job %d", seed).isTrue();
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(JOBS / 2);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void whoeverFollowsThemHasClosedAllGaps(int rows) {
        for (int seed = 0; seed < JOBS; seed++) {
            Job job = new SmallJob(seed, rows).job();
            Plan plan = Plans.of(job.fold(), job.coverage());
            assertThat(plan.unsure()).as("job %d", seed).isZero();
            plan.entries().forEach(move -> move.forEach(entry -> job.enter(EntryText.of(entry))));
            assertThat(Gaps.of(job.coverage()))
                    .as("job %d: %s", seed, job.fold().entries())
                    .allMatch(gap -> gap.why() == Why.NO_ACCESS);
        }
    }
}
