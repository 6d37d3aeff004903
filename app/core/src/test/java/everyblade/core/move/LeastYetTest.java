package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.spi.Row;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What planning random jobs has come to: what plans take, what is proved of them, what they leave open and how often they are
 * warned. Nothing of it changes unseen: a better figure is written into {@code least-yet.csv}, a worse one is a step back, and
 * a bound that rises has to be understood.
 */
class LeastYetTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final int DECLARED = 120;
    /**
     * Of engines that come with the program, of which nothing was seen. Plans of the first two take as little as can be; in the last
     * a blade may be taken for the next one but one, so that turns go further for their seams.
     */
    private static final List<String> ROWS = List.of("tansy-a1 t", "larkspur-4 c1", "corncrake-12 t2");

    private static final int MANY_VIEWS = 3;
    private static final int COMPUTED = 6;
    private static final Offset<Double> KEPT = within(1e-4);

    /**
     * Of one job.
     *
     * @param minutes of its plan
     * @param bound minutes that no plan takes less than
     * @param turns whole ones, at least
     * @param rows minutes of the quickest way through each set of ports that will do, of all rows
     * @param rowsAtLeast their bounds
     * @param left cells that a view shows and that are open when the plan was done
     * @param warnings on the way
     */
    private record Figures(
            String job,
            double minutes,
            double bound,
            double turns,
            double rows,
            double rowsAtLeast,
            int left,
            int warnings) {

        static Figures of(String name, Job job) {
            Coverage coverage = job.coverage();
            Plan plan = PlanBuilder.of(job.fold(), coverage, PRICES);
            List<CoverSearch.RowPlan> rows = rowPlans(job, coverage);
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
                    rows.stream().mapToDouble(CoverSearch.RowPlan::minutes).sum(),
                    rows.stream().mapToDouble(CoverSearch.RowPlan::bound).sum(),
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
                    Double.parseDouble(parts[4]),
                    Double.parseDouble(parts[5]),
                    Integer.parseInt(parts[6]),
                    Integer.parseInt(parts[7]));
        }

        String written() {
            return String.format(
                    Locale.ROOT,
                    "%s,%.4f,%.4f,%.4f,%.4f,%.4f,%d,%d",
                    job,
                    minutes,
                    bound,
                    turns,
                    rows,
                    rowsAtLeast,
                    left,
                    warnings);
        }
    }

    private static List<CoverSearch.RowPlan> rowPlans(Job job, Coverage coverage) {
        RemainingState state = new RemainingState(trial(job), coverage);
        List<CoverSearch.RowPlan> plans = new ArrayList<>();
        for (Row row : state.now().engine().rows().values()) {
            List<ViewOption> options = ViewOption.of(coverage, coverage.row(row.id()));
            RowNeeds needs = RowNeeds.of(coverage, row, state.setBackOrClock(row), options);
            if (!needs.none()) {
                RotationProblem problem = RotationProblem.of(
                        state, row, options, state.slack(row, options.get(0)), false, option -> 0, PRICES);
                plans.addAll(CoverSearch.of(needs, problem));
            }
        }
        assertThat(plans).allMatch(plan -> plan.bound() <= plan.minutes() + 1e-6);
        return plans;
    }

    private static Trial trial(Job job) {
        try {
            return Trial.of(job.fold());
        } catch (Refusal refused) {
            throw new AssertionError(refused);
        }
    }

    private static List<Figures> found() throws Exception {
        List<Figures> found = new ArrayList<>();
        for (int seed : AnyJob.numbers(DECLARED)) {
            found.add(Figures.of("declared " + seed, AnyJob.declared(seed)));
        }
        for (int seed = 0; seed < MANY_VIEWS; seed++) {
            found.add(Figures.of("many views " + seed, AnyJob.manyViews(2 + seed)));
        }
        for (int play = 0; play <= 1; play++) {
            Job fresh = AnyJob.computed(play);
            found.add(Figures.of("computed with play " + play, fresh.another()));
            for (int seed = 0; seed < COMPUTED / 2; seed++) {
                found.add(Figures.of("computed with play " + play + " " + seed, AnyJob.computed(fresh, seed)));
            }
        }
        for (String row : ROWS) {
            String[] of = row.split(" ");
            found.add(Figures.of(row, MidJob.fresh(of[0], of[1]).enter("heat 20 C")));
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
    void nothingHasChanged() throws Exception {
        List<Figures> found = found();
        List<Figures> kept = kept();
        assertThat(found)
                .extracting(Figures::job)
                .isEqualTo(kept.stream().map(Figures::job).toList());
        for (int i = 0; i < found.size(); i++) {
            Figures now = found.get(i);
            Figures then = kept.get(i);
            String which = "now " + now.written();
            assertThat(now.minutes()).as(which).isCloseTo(then.minutes(), KEPT);
            assertThat(now.bound()).as(which).isCloseTo(then.bound(), KEPT).isLessThanOrEqualTo(now.minutes());
            assertThat(now.turns()).as(which).isCloseTo(then.turns(), KEPT);
            assertThat(now.rows()).as(which).isCloseTo(then.rows(), KEPT);
            assertThat(now.rowsAtLeast()).as(which).isCloseTo(then.rowsAtLeast(), KEPT);
            assertThat(now.left()).as(which).isEqualTo(then.left());
            assertThat(now.warnings()).as(which).isEqualTo(then.warnings());
        }
    }
}
