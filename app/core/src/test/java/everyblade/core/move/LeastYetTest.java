package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * What planning random jobs has come to: no plan takes longer than it once did, leaves more open or says what brings more warnings,
 * and of none less is proved. A better figure is written into {@code least-yet.csv}; a worse one is a step back.
 */
class LeastYetTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final int DECLARED = 60;
    private static final int MANY_VIEWS = 3;
    private static final int COMPUTED = 6;
    /** Figures are kept in so many parts of a minute. */
    private static final double KEPT = 10_000;

    /**
     * Of one job.
     *
     * @param minutes of its plan
     * @param bound minutes that no plan takes less than
     * @param turns whole ones, at least
     * @param left cells that a view shows and that are open when the plan was done
     * @param warnings on the way
     */
    private record Figures(String job, double minutes, double bound, double turns, int left, int warnings) {

        static Figures of(String name, Job job) {
            Coverage coverage = job.coverage();
            Plan plan = PlanBuilder.of(job.fold(), coverage, PRICES);
            int before = job.warnings().size();
            plan.moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
            int left = Gaps.of(coverage.after(job.fold().situation())).stream()
                    .filter(gap -> gap.why() != Why.NO_ACCESS && gap.why() != Why.COARSE)
                    .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                    .sum();
            return new Figures(
                    name,
                    plan.minutes(),
                    plan.bound(),
                    plan.least().shaft() + plan.least().scopeTip(),
                    left,
                    job.warnings().size() - before);
        }

        static Figures read(String line) {
            String[] parts = line.split(",");
            return new Figures(
                    parts[0],
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3]),
                    Integer.parseInt(parts[4]),
                    Integer.parseInt(parts[5]));
        }

        String written() {
            return String.format(
                    Locale.ROOT,
                    "%s,%.4f,%.4f,%.4f,%d,%d",
                    job,
                    Math.ceil(minutes * KEPT) / KEPT,
                    Math.floor(bound * KEPT) / KEPT,
                    Math.floor(turns * KEPT) / KEPT,
                    left,
                    warnings);
        }
    }

    private static List<Figures> found() throws IOException {
        List<Figures> found = new ArrayList<>();
        for (int seed = 0; seed < DECLARED; seed++) {
            found.add(Figures.of("declared " + seed, AnyJob.declared(seed)));
        }
        for (int seed = 0; seed < MANY_VIEWS; seed++) {
            found.add(Figures.of("many views " + seed, AnyJob.manyViews(seed)));
        }
        for (int play = 0; play <= 1; play++) {
            Job fresh = AnyJob.computed(play);
            found.add(Figures.of("computed with play " + play, fresh.another()));
            for (int seed = 0; seed < COMPUTED / 2; seed++) {
                found.add(Figures.of("computed with play " + play + " " + seed, AnyJob.computed(fresh, seed)));
            }
        }
        return found;
    }

    private static List<Figures> kept() throws IOException {
        try (InputStream in = LeastYetTest.class.getResourceAsStream("least-yet.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(Figures::read)
                    .toList();
        }
    }

    @Test
    void noPlanHasGoneBack() throws IOException {
        List<Figures> found = found();
        List<Figures> kept = kept();
        assertThat(found)
                .extracting(Figures::job)
                .isEqualTo(kept.stream().map(Figures::job).toList());
        for (int i = 0; i < found.size(); i++) {
            Figures now = found.get(i);
            Figures then = kept.get(i);
            assertThat(now.minutes()).as(now.job()).isLessThanOrEqualTo(then.minutes());
            assertThat(now.bound())
                    .as(now.job())
                    .isGreaterThanOrEqualTo(then.bound())
                    .isLessThanOrEqualTo(now.minutes());
            assertThat(now.turns()).as(now.job()).isGreaterThanOrEqualTo(then.turns());
            assertThat(now.left()).as(now.job()).isLessThanOrEqualTo(then.left());
            assertThat(now.warnings()).as(now.job()).isLessThanOrEqualTo(then.warnings());
        }
    }
}
