package everyblade.core.move;

import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Progress;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Plans of jobs that were left off in the middle against what a technician would do by {@link Habit}. */
class HabitTest {

    private static final boolean CAMPAIGN = Boolean.getBoolean("everyblade.campaign");
    /**
     * By number. In the second an option that showed nothing at first shows what was left later; in the third a liner is not surely
     * counted any more when its turn comes; in the last a blade that bears the landmark stands at the seam of every round from it.
     */
    private static final int[] JOBS = CAMPAIGN ? IntStream.range(0, 300).toArray() : new int[] {0, 56, 17, 71};

    private static final List<String> ENGINES = List.of("tansy-a1", "larkspur-4", "corncrake-12");
    private static final Prices PRICES = Prices.of(Settings.USUAL);

    private final ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    private final List<Double> whole = new ArrayList<>();
    private final List<Double> first = new ArrayList<>();

    @Test
    void noPlanTurnsFurtherOrTakesLongerThanAHabit() throws Exception {
        List<Job> fresh = new ArrayList<>();
        for (String id : ENGINES) {
            fresh.add(MidJob.fresh(id));
        }
        SoftAssertions softly = new SoftAssertions();
        for (int seed : JOBS) {
            Job job = MidJob.of(fresh.get(seed % fresh.size()), seed);
            Coverage coverage = job.coverage();
            Plan plan = timed(whole, () -> PlanBuilder.of(job.fold(), coverage, PRICES));
            timed(first, () -> PlanBuilder.next(job.fold(), coverage, PRICES, Progress.NONE));
            Plan habit = Habit.of(job.fold(), coverage, PRICES);
            String which = ENGINES.get(seed % ENGINES.size()) + ", job " + seed;
            if (CAMPAIGN) {
                System.out.printf(
                        Locale.ROOT,
                        "%s: planned %.0f°, %.1f min, at least %.1f, %d left open; by habit %.0f°, %.1f min, %d left open%n",
                        which,
                        degrees(plan),
                        plan.minutes(),
                        plan.bound(),
                        plan.unsure(),
                        degrees(habit),
                        habit.minutes(),
                        habit.unsure());
            }
            softly.assertThat(degrees(plan)).as(which).isLessThanOrEqualTo(degrees(habit) + 1e-6);
            softly.assertThat(plan.minutes()).as(which).isLessThanOrEqualTo(habit.minutes() + 1e-6);
            softly.assertThat(plan.bound()).as(which).isLessThanOrEqualTo(plan.minutes() + 1e-6);
            softly.assertThat(plan.unsure()).as(which).isLessThanOrEqualTo(CAMPAIGN ? habit.unsure() : 0);
        }
        tell("whole plans", whole);
        tell("first moves", first);
        softly.assertAll();
    }

    private static double degrees(Plan plan) {
        return plan.turning().add(plan.drawing()).doubleValue();
    }

    private interface Asked<T> {
        T ask();
    }

    private <T> T timed(List<Double> times, Asked<T> asked) {
        long before = clock.getCurrentThreadCpuTime();
        T answer = asked.ask();
        times.add((clock.getCurrentThreadCpuTime() - before) / 1e6);
        return answer;
    }

    /** Milliseconds of processor time; no test hangs on them. */
    private static void tell(String of, List<Double> times) {
        List<Double> sorted = times.stream().sorted().toList();
        if (CAMPAIGN) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: half within %.0f ms of processor time, 90 %% within %.0f, 99 %% within %.0f, all within %.0f%n",
                    of,
                    share(sorted, 0.5),
                    share(sorted, 0.9),
                    share(sorted, 0.99),
                    share(sorted, 1));
        }
    }

    private static double share(List<Double> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
    }
}
