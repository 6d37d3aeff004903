package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Work;
import everyblade.spi.Row;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * All ways of saying what is left of random jobs, in the order in which they are tried: those that are kept in {@code sayings.txt},
 * where a person has looked at them.
 */
class SayingsTest {

    private static final int[] JOBS = {
        0, 1, 2, 3, 4, 5, 6, 7, 8, 28, 33, 37, 149, 177, 188, 236, 242, 265, 304, 350, 400, 412, 463
    };

    @Test
    void areThoseThatWereLookedAt() throws Exception {
        assertThat(told()).isEqualTo(kept());
    }

    private static List<String> told() throws Exception {
        List<String> told = new ArrayList<>();
        for (int seed : JOBS) {
            Job job = AnyJob.declared(seed);
            told.add("job " + seed);
            told.addAll(sayings(job));
            for (Move move : PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL)).moves().stream()
                    .limit(1)
                    .toList()) {
                move.entries().forEach(entry -> job.enter(EntryText.of(entry)));
                told.add("after " + move.entries().stream().map(EntryText::of).toList());
                told.addAll(sayings(job));
            }
        }
        return told;
    }

    private static List<String> sayings(Job job) throws Refusal {
        Coverage coverage = job.coverage();
        RemainingState state = new RemainingState(Trial.of(job.fold()), coverage);
        List<String> told = new ArrayList<>();
        for (Row row : state.now().engine().rows().values()) {
            List<ViewOption> options = ViewOption.of(coverage, coverage.row(row.id()));
            RowNeeds needs = RowNeeds.of(coverage, row, state.setBackOrClock(row), options);
            if (!needs.none()) {
                RotationProblem problem = RotationProblem.of(
                        state,
                        row,
                        options,
                        state.slack(row, options.get(0)),
                        false,
                        option -> 0,
                        Prices.of(Settings.USUAL));
                CoverSearch.of(needs, problem).stream()
                        .flatMap(plan -> plan.course().works().stream())
                        .forEach(work -> {
                            told.add(" " + work.how() + " "
                                    + work.option().view().id());
                            sayings(state, problem, work)
                                    .map(SayingsTest::told)
                                    .distinct()
                                    .forEach(told::add);
                        });
            }
        }
        return told;
    }

    private static Stream<Saying> sayings(RemainingState state, RotationProblem problem, Work work) {
        Sayings sayings = new Sayings(state, problem, work);
        Stream<Saying> further = sayings.further(problem.slack());
        return Stream.concat(
                work.how() == How.SWEEP
                        ? work.sweeping().orElseThrow().stretches().stream()
                                .limit(2)
                                .flatMap(stretch -> sayings.stretch(stretch, true))
                        : sayings.whole(),
                further);
    }

    private static String told(Saying way) {
        return String.format(
                Locale.ROOT,
                "  %s identifies %s closing %.4f way %.4f from %s sweep %.4f%s",
                way.entries().stream().map(EntryText::of).toList(),
                way.identifies().equals(OptionalInt.empty())
                        ? "none"
                        : way.identifies().getAsInt(),
                way.closing(),
                way.way(),
                way.from().map(Object::toString).orElse("anywhere"),
                way.sweep(),
                way.round() ? " round" : "");
    }

    private static List<String> kept() throws IOException {
        try (InputStream in = SayingsTest.class.getResourceAsStream("sayings.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }
}
