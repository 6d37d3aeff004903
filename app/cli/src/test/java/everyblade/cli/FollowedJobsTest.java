package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.gap.Gap;
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
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole jobs from {@code start} to {@code close}, by what is next alone, whoever does it. */
class FollowedJobsTest {

    private static final Path MODELS = Path.of("../../engine-models").toAbsolutePath();

    private static final String SMALL = """
            { "schema": "everyblade/engine-model/1", "id": "small", "name": "Small engine", "notice": "Invented for tests.",
              "spools": [ { "id": "gas", "pads": [ { "id": "pad", "ratio": "29/77", "play": 1.5, "drift": 0.2 } ] } ],
              "rows": [ { "id": "c", "kind": "rotor", "count": 19, "landmarks": [ { "airfoil": 1, "what": "etched" } ] },
                        { "id": "s", "kind": "stator", "count": 14, "landmarks": [ { "airfoil": 1, "what": "at the split" } ] },
                        { "id": "t", "kind": "rotor", "count": 31,
                          "landmarks": [ { "airfoil": 1, "what": "etched" }, { "airfoil": 16, "what": "notched" } ] } ],
              "ports": [ { "id": "p1" }, { "id": "p2" } ],
              "views": [ { "id": "p1-c", "port": "p1", "row": "c", "reference": 90,
                           "window": { "halfWidth": 6, "shows": ["root"] } },
                         { "id": "p2-c", "port": "p2", "row": "c", "reference": 200,
                           "window": { "halfWidth": 5, "shows": ["tip"] } },
                         { "id": "p1-s", "port": "p1", "row": "s", "reference": 90, "travels": true,
                           "window": { "halfWidth": 8, "shows": ["all"] } },
                         { "id": "p2-t", "port": "p2", "row": "t", "reference": 180,
                           "window": { "halfWidth": 4, "shows": ["all"] } } ] }
            """;

    @TempDir
    Path folder;

    private Fold fold;
    private final List<String> lines = new ArrayList<>();

    private Surroundings around(PrintStream out) {
        return new Surroundings(
                System.in,
                out,
                out,
                InstantSource.system(),
                Map.of("EVERYBLADE_CACHE", folder.resolve("cache").toString()),
                folder,
                Optional.empty(),
                new LocalDisk());
    }

    /** What a command says on all its streams, after it ended so. */
    private String run(int status, String... command) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int ended = Commands.run(around(new PrintStream(out, true, StandardCharsets.UTF_8)), command);
        String said = out.toString(StandardCharsets.UTF_8);
        assertThat(ended).as("%s: %s", command[0], said).isEqualTo(status);
        return said;
    }

    private OpenedJob begun(Path model) {
        run(0, "start", "job", "--model", model.toString(), "--serial", "1", "--task", "all", "--by", "Ann");
        return OpenedJob.read(around(System.err), folder.resolve("job"));
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
        lines.add(line);
        try {
            Entry entry = EntryParser.parse(line);
            fold = fold.with(new Logged(fold.entries().size() + 1, Instant.EPOCH, "Ann", false, line, entry));
            return fold.warnings();
        } catch (Refusal refused) {
            throw new AssertionError(line + ": " + refused.why() + " after " + lines, refused);
        }
    }

    /** What a job took. */
    private record Took(int openings, int views, double degrees, int entries, double minutes, int warnings) {}

    private Took followed(OpenedJob job, Technician technician) {
        fold = job.fold();
        log("heat 20 C");
        Coverage coverage = job.coverage().after(fold.situation());
        int warnings = 0;
        List<Move> moves = new ArrayList<>();
        Optional<Move> next = PlanBuilder.next(fold, coverage, job.prices(), Progress.NONE);
        while (next.isPresent()) {
            Move move = next.get();
            moves.add(move);
            for (String line : technician.lines(move)) {
                int called = log(line).size();
                assertThat(called == 0 || technician.mayErr())
                        .as("%s: %s", move.view().id(), line)
                        .isTrue();
                warnings += called;
            }
            coverage = coverage.after(fold.situation());
            if (!technician.mayErr()) {
                assertClosed(move, coverage);
            }
            assertThat(moves.size()).as("it ends, after %s", lines).isLessThan(400);
            next = PlanBuilder.next(fold, coverage, job.prices(), Progress.NONE);
        }
        Plan done = Plan.of(moves);
        double degrees = done.turning().add(done.drawing()).doubleValue();
        return new Took(done.openings(), done.views(), degrees, lines.size(), done.minutes(), warnings);
    }

    private static void assertClosed(Move move, Coverage coverage) {
        for (Move.Closing closing : move.closes()) {
            for (int n : closing.airfoils()) {
                assertThat(Gaps.within(coverage.row(move.row().id()), n)
                                .intersection(closing.zones())
                                .isEmpty())
                        .isTrue();
            }
        }
    }

    /** Keeps all that was logged, accepts what no move can reach, shuts what is open: then nothing is left. */
    private void close(OpenedJob job) {
        Coverage coverage = job.coverage().after(fold.situation());
        if (coverage.rows().stream().anyMatch(FollowedJobsTest::outOfReach)) {
            log("noaccess unshown because no view shows it");
        }
        coverage = coverage.after(fold.situation());
        for (Gap gap : Gaps.of(coverage)) {
            List<String> zones =
                    fold.situation().engine().zonings().get(gap.row().id()).names();
            for (int zone = 0; zone < zones.size(); zone++) {
                for (String run : gap.zones().contains(zone) ? runs(gap.airfoils()) : List.<String>of()) {
                    log(gap.row().id() + " noaccess " + zones.get(zone) + " " + run
                            + " because every view is too coarse");
                }
            }
        }
        if (fold.situation().seat().filter(seat -> !seat.out()).isPresent()) {
            log("out");
        }
        List.copyOf(fold.situation().ledger().openings().keySet())
                .forEach(port -> log("shut " + port + " seen by Ann"));
        for (String fact : List.of("hours 1", "cycles 1", "position 1", "manual M", "revision 2")) {
            log("fact " + fact);
        }
        List<String> command = new ArrayList<>(List.of("log", "job"));
        command.addAll(lines);
        run(0, command.toArray(String[]::new));
        run(0, "close", "job");
    }

    /** Rising numbers as they are typed: those that follow each other as one run. */
    private static List<String> runs(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to = 0; from < numbers.size(); from = to) {
            while (to < numbers.size() && numbers.get(to) - numbers.get(from) == to - from) {
                to++;
            }
            runs.add(to - from == 1 ? "" + numbers.get(from) : numbers.get(from) + "-" + numbers.get(to - 1));
        }
        return runs;
    }

    private static boolean outOfReach(RowCoverage row) {
        return IntStream.rangeClosed(1, row.row().count())
                .anyMatch(n -> !Gaps.beyond(row, n).isEmpty());
    }

    @ParameterizedTest
    @EnumSource
    void aSmallJobComesToItsEndWhoeverDoesIt(Technician.Kind kind) throws IOException {
        Files.writeString(Files.createDirectory(folder.resolve("small")).resolve("engine.json"), SMALL);
        OpenedJob job = begun(folder.resolve("small"));
        Took took = followed(job, new Technician(kind));
        assertThat(took.openings()).isGreaterThanOrEqualTo(fewest(job));
        assertThat(kind != Technician.Kind.PERFECT || took.openings() == 2).isTrue();
        assertThat(kind != Technician.Kind.MISCOUNTING || took.warnings() > 0)
                .as("who is an airfoil off is told at the next identification")
                .isTrue();
        close(job);
    }

    /** Each line of what is next is logged by itself, by the commands that a person types. */
    @Test
    @EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
    void theDemoIsFollowedToWhereOnlyAPersonCanAnswer() throws IOException {
        Path demo = Path.of("../desktop/src/demo").toAbsolutePath();
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        begun(MODELS.resolve("larkspur-4"));
        run(0, "log", "job", "--file", "entries.txt");
        ObjectMapper json = new ObjectMapper();
        double promised =
                json.readTree(run(0, "next", "job", "--json")).get("minutes").asDouble();
        double taken = 0;
        int moves = 0;
        for (JsonNode next = first(json); next != null; next = first(json)) {
            for (JsonNode line : next.get("entries")) {
                String said = run(0, "log", "job", line.asText());
                assertThat(said.lines())
                        .as(line.asText())
                        .noneMatch(told -> told.contains("doubtful") || told.contains("lost") || told.contains("shut"));
            }
            taken += next.get("minutes").asDouble();
            assertThat(moves++).as("it ends").isLessThan(150);
        }
        assertThat(taken).as("whoever goes on is not sent on a longer way").isLessThanOrEqualTo(1.02 * promised);
        run(0, "log", "job", "noaccess unshown because no view shows it", "out");
        assertThat(json.readTree(run(1, "close", "job", "--json")).findValuesAsText("kind"))
                .doesNotContain("count")
                .contains("finding");
    }

    private JsonNode first(ObjectMapper json) throws IOException {
        return json.readTree(run(0, "next", "job", "--json")).get("moves").get(0);
    }

    private static Stream<Arguments> wholeJobs() {
        Map<String, Integer> ports = new TreeMap<>(Map.of("tansy-a1", 7, "larkspur-4", 11, "corncrake-12", 12));
        return ports.entrySet().stream()
                .flatMap(model -> Stream.of(Technician.Kind.values())
                        .map(kind -> Arguments.of(model.getKey(), kind, model.getValue())));
    }

    /** @param ports that must be opened, and that nobody opens twice who does not err */
    @ParameterizedTest
    @MethodSource("wholeJobs")
    @EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
    void aWholeJobComesToItsEndWhoeverDoesIt(String model, Technician.Kind kind, int ports) throws IOException {
        OpenedJob job = begun(MODELS.resolve(model));
        Plan before = PlanBuilder.of(job.fold(), job.coverage(), job.prices());
        assertThat(fewest(job)).as("no fewer ports would do").isEqualTo(ports);
        Took took = followed(job, new Technician(kind));
        System.out.printf(
                "%s, %s: %d openings, %d views, %.0f°, %d entries, %.0f min of at least %.0f, %d warnings%n",
                model,
                kind,
                took.openings(),
                took.views(),
                took.degrees(),
                took.entries(),
                took.minutes(),
                before.bound(),
                took.warnings());
        assertThat(took.openings()).isGreaterThanOrEqualTo(ports);
        assertThat(kind != Technician.Kind.PERFECT || took.openings() == ports).isTrue();
        assertThat(before.bound()).isLessThanOrEqualTo(took.minutes() + 1e-6);
        close(job);
    }
}
