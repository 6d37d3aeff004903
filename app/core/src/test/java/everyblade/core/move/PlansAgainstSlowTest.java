package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans of small jobs against the slow way of finding the least time. */
class PlansAgainstSlowTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 60;

    private static Plan plan(Job job) {
        return PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
    }

    @Test
    void oneRowTakesAsLittleTimeAsCanBe() {
        int compared = 0;
        int exact = 0;
        int proved = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            SmallJob small = new SmallJob(seed, 1);
            Job job = small.job();
            int least = small.leastTime(job);
            if (least >= 0) {
                Plan plan = plan(job);
                double minutes = least / SlowPlan.PER_MINUTE;
                assertThat(plan.bound()).as("job %d", seed).isLessThanOrEqualTo(minutes + 1e-6);
                assertThat(plan.minutes())
                        .as("job %d", seed)
                        .isBetween(
                                minutes - 1e-6,
                                minutes + Prices.of(Settings.USUAL).move());
                exact += plan.minutes() <= minutes + 1e-6 ? 1 : 0;
                proved += plan.proved() ? 1 : 0;
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(JOBS / 3);
        assertThat(exact).as("plans that are the least, of %d", compared).isGreaterThan(compared * 98 / 100);
        assertThat(proved).as("plans proved to be, of %d", compared).isGreaterThan(compared / 2);
    }

    @Test
    void theBoundOfTwoRowsIsOne() {
        int compared = 0;
        int least = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            SmallJob small = new SmallJob(seed, 2);
            Job job = small.job();
            int slow = small.leastTime(job);
            if (slow >= 0) {
                Plan plan = plan(job);
                double minutes = slow / SlowPlan.PER_MINUTE;
                assertThat(plan.bound()).as("job %d", seed).isLessThanOrEqualTo(minutes + 1e-6);
                assertThat(plan.minutes()).as("job %d", seed).isGreaterThanOrEqualTo(minutes - 1e-6);
                least += plan.minutes() <= minutes + 1e-6 ? 1 : 0;
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(JOBS / 10);
        assertThat(least).as("plans that are the least, of %d", compared).isGreaterThan(compared / 2);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void whoeverFollowsThemHasClosedAllGaps(int rows) {
        for (int seed = 0; seed < JOBS; seed++) {
            Job job = new SmallJob(seed, rows).job();
            Plan plan = plan(job);
            assertThat(plan.unsure()).as("job %d", seed).isZero();
            plan.moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
            assertThat(Gaps.of(job.coverage()))
                    .as("job %d: %s", seed, job.fold().entries())
                    .allMatch(gap -> gap.why() == Why.NO_ACCESS);
        }
    }
}
