package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Refusal;
import everyblade.core.gap.Gaps;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.move.PlanBuilder;
import everyblade.core.move.Prices;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import everyblade.record.LocalDisk;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole jobs on the engines that come with the program, from the first entry to the last, by what is next alone. */
@EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
class FollowedJobsTest {

    private static final Path MODELS = Path.of("../../engine-models").toAbsolutePath();

    @TempDir
    Path folder;

    private Fold fold;

    private OpenedJob begun(String model) {
        Surroundings around = new Surroundings(
                System.in,
                new PrintStream(PrintStream.nullOutputStream()),
                new PrintStream(PrintStream.nullOutputStream()),
                InstantSource.system(),
                Map.of("EVERYBLADE_CACHE", folder.resolve("cache").toString()),
                folder,
                Optional.empty(),
                new LocalDisk());
        assertThat(Commands.run(
                        around,
                        "start",
                        "job",
                        "--model",
                        MODELS.resolve(model).toString(),
                        "--serial",
                        "1",
                        "--task",
                        "all",
                        "--by",
                        "Ann"))
                .isZero();
        return OpenedJob.read(around, folder.resolve("job"));
    }

    /** How many ports are needed at least: the bound where nothing but ports costs much. */
    private static int fewest(OpenedJob job) {
        Prices prices = job.prices();
        double dear = 10_000;
        Plan plan = PlanBuilder.of(
                job.fold(),
                job.coverage(),
                new Prices(
                        prices.watched(),
                        prices.unwatched(),
                        prices.move(),
                        prices.station(),
                        prices.view(),
                        dear,
                        prices.identification()));
        return (int) (plan.bound() / dear);
    }

    private List<Fact> log(String line) {
        try {
            Entry entry = EntryParser.parse(line);
            fold = fold.with(new Logged(fold.entries().size() + 1, Instant.EPOCH, "Ann", false, line, entry));
            return fold.warnings();
        } catch (Refusal refused) {
            throw new AssertionError(line + ": " + refused.why(), refused);
        }
    }

    /**
     * @param interrupted after so many moves each time; 0 for never
     * @param openings of ports that a job takes at most
     */
    @ParameterizedTest
    @CsvSource({
        "larkspur-4, 0, 11",
        "corncrake-12, 0, 12",
        "tansy-a1, 0, 7",
        "larkspur-4, 7, 14",
        "corncrake-12, 7, 16",
        "tansy-a1, 7, 9"
    })
    void areNeverWarnedCloseWhatTheySayAndEnd(String model, int interrupted, int openings) {
        OpenedJob job = begun(model);
        fold = job.fold();
        Coverage coverage = job.coverage();
        Plan before = PlanBuilder.of(fold, coverage, job.prices());
        log("heat 20 C");
        coverage = coverage.after(fold.situation());
        int moves = 0;
        int entered = 0;
        double minutes = 0;
        Optional<String> port = Optional.empty();
        Optional<Move> next = PlanBuilder.next(fold, coverage, job.prices(), Progress.NONE);
        while (next.isPresent()) {
            Move move = next.get();
            for (Entry entry : move.entries()) {
                assertThat(log(EntryText.of(entry)))
                        .as("%s: %s", move.view().id(), EntryText.of(entry))
                        .isEmpty();
            }
            coverage = coverage.after(fold.situation());
            for (Move.Closing closing : move.closes()) {
                for (int n : closing.airfoils()) {
                    assertThat(Gaps.within(coverage.row(move.row().id()), n)
                                    .intersection(closing.zones())
                                    .isEmpty())
                            .isTrue();
                }
            }
            entered += move.seated() && !move.view().port().equals(port) ? 1 : 0;
            port = move.view().port();
            minutes += move.minutes();
            if (++moves % Math.max(1, interrupted) == 0 && interrupted > 0) {
                log("pause");
                log("takeover Ben");
                coverage = coverage.after(fold.situation());
            }
            assertThat(moves).isLessThan(400);
            next = PlanBuilder.next(fold, coverage, job.prices(), Progress.NONE);
        }
        assertThat(entered).isLessThanOrEqualTo(openings);
        assertThat(interrupted > 0 || fewest(job) == openings)
                .as("no fewer ports would do")
                .isTrue();
        assertThat(before.bound()).isLessThanOrEqualTo(minutes + 1e-6);
        System.out.printf(
                "%s, interrupted each %d moves: %d entries, %d openings, %.0f min, bound %.0f%n",
                model, interrupted, fold.entries().size(), entered, minutes, before.bound());
    }
}
