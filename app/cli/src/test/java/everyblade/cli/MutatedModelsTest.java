package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import everyblade.json.ProblemCode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever a slip of the hand makes of a model, checking it answers, soon, and says what and where; surfaces included.
 * A sample, or with {@code -Deveryblade.campaign=true} a hundred times as many.
 */
class MutatedModelsTest {

    private static final long SEED = 20_260_514;
    private static final int TIMES = Boolean.getBoolean("everyblade.campaign") ? 100 : 1;
    private static final Duration LONGEST = Duration.ofSeconds(5);
    private static final Path ROOT = Path.of("..", "..");
    private static final Set<String> CODES =
            ProblemCode.all().stream().map(ProblemCode::code).collect(Collectors.toSet());

    @TempDir
    Path folder;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Set<String> met = new TreeSet<>();

    @Test
    void withShapesAreCheckedSightAndAll() throws IOException {
        List<MutatedModel> models = new ArrayList<>();
        for (String example : List.of("sees-nothing", "rows-cut", "ring-mates-cut", "blade-cuts-wall", "vanes-cut")) {
            models.add(
                    model(ROOT.resolve("plugins/json/examples").resolve(example).resolve("good")));
        }
        models.add(model(ROOT.resolve("app/picture/src/test/resources/everyblade/picture/section/rotor-37")));

        check(models, 72 * TIMES);

        assertThat(met).contains("blades-cut", "blade-cuts-wall", "no-view");
    }

    @Test
    void areJudgedByEveryRule() throws IOException {
        List<MutatedModel> models = new ArrayList<>();
        for (String example : List.of("sees-nothing", "sectors-overlap", "play-of-half-a-pitch", "wide-window")) {
            models.add(
                    model(ROOT.resolve("plugins/json/examples").resolve(example).resolve("good")));
        }

        check(models, 40 * TIMES, "--all-rules");

        assertThat(met).hasSizeGreaterThan(10);
    }

    @Test
    void thatAreShippedAreCheckedWithoutSight() throws IOException {
        List<MutatedModel> models = new ArrayList<>();
        try (Stream<Path> folders = Files.list(ROOT.resolve("engine-models"))) {
            for (Path one : folders.sorted().toList()) {
                if (Files.exists(one.resolve("engine.json"))) {
                    models.add(model(one));
                }
            }
        }
        assertThat(models).hasSizeGreaterThanOrEqualTo(3);

        check(models, 20 * TIMES, "--no-sight");

        assertThat(met).hasSizeGreaterThan(10);
    }

    private static MutatedModel model(Path folder) throws IOException {
        return new MutatedModel(Files.readString(folder.resolve("engine.json")));
    }

    private void check(List<MutatedModel> models, int times, String... more) throws IOException {
        Console console = Console.in(folder);
        String[] words = Stream.concat(Stream.of("check", "m", "--json"), Stream.of(more))
                .toArray(String[]::new);
        int refused = 0;
        for (int i = 0; i < times; i++) {
            String text = models.get(i % models.size()).changed(random);
            console.write("m/engine.json", text);
            // Time of this thread alone, so that a busy machine does not count.
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();

            Ran ran = console.run(words);

            Duration taken =
                    Duration.ofNanos(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
            assertThat(taken).as("time of %d: %s", i, text).isLessThan(LONGEST);
            assertThat(ran.err()).as("standard error of %d: %s", i, text).isEmpty();
            assertThat(ran.status()).as("exit status of %d", i).isBetween(0, 1);
            JsonNode model = new ObjectMapper().readTree(ran.out()).at("/checked/0");
            assertThat(model.get("refused").booleanValue()).isEqualTo(ran.status() == 1);
            refused += ran.status();
            for (JsonNode problem : model.get("problems")) {
                met.add(problem.get("code").textValue());
                assertThat(problem.get("line").intValue()).isPositive();
                assertThat(problem.get("column").intValue()).isPositive();
                assertThat(List.of("what", "why", "mend"))
                        .allSatisfy(part ->
                                assertThat(problem.get(part).textValue()).isNotBlank());
            }
        }
        assertThat(CODES).containsAll(met);
        assertThat(refused).isBetween(times / 4, times - times / 20);
    }
}
