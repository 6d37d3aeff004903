package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.Fault;
import everyblade.json.jar.JarPatience;
import everyblade.spi.EngineModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Provider;
import java.security.Security;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A folder full of broken plugins is looked through once, each in a process of its own, and told for what it is. */
class BrokenPluginsTest {

    /** The jar, the code it is told by, and what its message says. */
    private static final String OUTCOMES = """
            missing-class            | plugin-failed    | Provider P not found
            throwing-constructor     | plugin-failed    | IllegalStateException: no table
            throwing-initialiser     | plugin-failed    | IllegalStateException: no row
            overflowing-initialiser  | plugin-failed    | StackOverflowError
            hidden-constructor       | plugin-failed    | NoSuchMethodException: P.<init>()
            endless-constructor      | plugin-too-slow  | s of processor time, and
            wrong-type               | plugin-failed    | not a subtype
            wrong-name               | plugin-failed    | wrong name: Q
            newer-java               | newer-java       | compiled for Java 21
            no-class-file            | plugin-failed    | ClassFormatError
            garbage-services         | plugin-failed    | Illegal
            missing-library          | plugin-failed    | a/b/Table
            missing-method           | plugin-failed    | against version 1.2 of the plugin interface
            throwing                 | plugin-failed    | table 7 is missing; copy it beside
            overflowing              | plugin-failed    | StackOverflowError
            out-of-memory            | plugin-failed    | OutOfMemoryError
            endless-models           | plugin-failed    | more than 100 models
            null-list                | plugin-failed    | NullPointerException
            null-model               | plugin-failed    | NullPointerException
            null-inside              | plugin-failed    | NullPointerException
            empty-list               | plugin-failed    | hands over no model
            not-a-number             | wrong-type       | as engine.json
            wrong-count              | out-of-range     | as engine.json
            evil-exception           | plugin-failed    | fails
            long-message             | plugin-failed    | a b a b
            exits                    | plugin-failed    | ended with status 0
            halts                    | plugin-failed    | ended with status 7
            fills-memory             | plugin-failed    | OutOfMemoryError
            forges                   | plugin-failed    | ended before it had handed everything over
            newer-spi                | newer-spi        | needs version 1.9
            next-spi                 | newer-spi        | needs version 2.0
            older-spi                | older-spi        | before 1.0
            empty-range              | bad-manifest     | [2.0,1.0)
            half-told                | bad-manifest     | lacks Everyblade-Plugin-Version
            strange-version          | bad-manifest     | newest
            other-jars               | bad-manifest     | Class-Path
            garbage-manifest         | bad-manifest     | cannot be read
            no-zip                   | bad-jar          | no readable jar
            empty-file               | bad-jar          | no readable jar
            cut-off                  | bad-jar          | no readable jar
            no-model                 | no-model-in-jar  | META-INF/services/everyblade.spi.EngineModelSource
            slip-up                  | name-outside-jar | ../../out
            slip-inside              | name-outside-jar | a/../../out
            slip-root                | name-outside-jar | /etc/out
            slip-backslash           | name-outside-jar | ..\\out
            slip-drive               | name-outside-jar | C:out
            huge-file                | jar-too-large    | 10240 MB
            many-entries             | jar-too-large    | 10001 entries
            gigabyte-of-brackets     | jar-too-large    | unpacks to 1024 MB
            long-brackets            | too-large        | 64 MB
            deep-brackets            | too-deep         | 200 deep
            """;

    private record Outcome(String jar, String code, String says) {
        static Outcome of(String line) {
            String[] parts = line.split(" +\\| +");
            return new Outcome(parts[0].strip(), parts[1], parts[2].strip());
        }
    }

    @TempDir
    static Path temp;

    private static List<String> names;
    private static ModelShelf shelf;
    private static Own before;
    private static Own after;

    /** Sound but for what they do beside. */
    private static final List<String> BESIDE = List.of(
            "locale",
            "security",
            "properties",
            "endless-threads",
            "endless-hook",
            "loud",
            "closed-streams",
            "environment",
            "litter");

    /** What belongs to the whole process. */
    private record Own(
            Locale locale, TimeZone zone, List<Provider> security, Map<Object, Object> properties, Object out) {
        static Own now() {
            return new Own(
                    Locale.getDefault(),
                    TimeZone.getDefault(),
                    List.of(Security.getProviders()),
                    Map.copyOf(System.getProperties()),
                    System.out);
        }
    }

    /** However busy the machine is: only work counts, and by the clock it would never be over. */
    private static final JarPatience PATIENCE = (clock, processor) -> processor.toSeconds() >= 3;

    @BeforeAll
    static void lookThroughTheFolder() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("models"));
        BrokenPlugins plugins = new BrokenPlugins(folder, temp);
        plugins.fill();
        names = plugins.names();
        before = Own.now();
        shelf = ModelShelf.of(List.of(folder), ModelShelf.ownProcess(PATIENCE));
        after = Own.now();
    }

    @TestFactory
    Stream<DynamicTest> each_is_refused_on_one_line_with_its_code_and_its_reason() {
        return outcomes().stream()
                .map(outcome -> DynamicTest.dynamicTest(outcome.jar(), () -> {
                    List<Problem> problems = problems(outcome.jar());
                    assertThat(problems).extracting(Problem::code).contains(outcome.code());
                    assertThat(problems)
                            .extracting(Problem::toString)
                            .anySatisfy(line -> assertThat(line)
                                    .contains(outcome.says())
                                    .contains(outcome.jar() + ".jar")
                                    .doesNotContain("\n")
                                    .hasSizeLessThan(1000));
                }));
    }

    @Test
    void the_sound_ones_load_all_the_same_and_the_one_without_a_version_with_a_warning() {
        assertThat(shelf.models())
                .extracting(EngineModel::id)
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(Stream.of("first", "last", "untold", "again"), BESIDE.stream())
                                .toList());
        assertThat(loaded("a-sound").warnings()).extracting(Problem::code).doesNotContain("no-plugin-version");
        assertThat(loaded("untold").warnings())
                .filteredOn(problem -> problem.code().equals("no-plugin-version"))
                .singleElement()
                .satisfies(problem -> assertThat(problem.severity()).isEqualTo(Severity.WARNING));
    }

    @Test
    void every_jar_of_the_folder_is_accounted_for() {
        List<String> told =
                new ArrayList<>(outcomes().stream().map(Outcome::jar).toList());
        told.addAll(List.of("a-sound", "z-sound", "untold"));
        told.addAll(BESIDE);
        assertThat(told).containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void every_fault_of_a_jar_has_an_example() {
        assertThat(shelf.found().stream()
                        .flatMap(BrokenPluginsTest::all)
                        .map(Problem::code)
                        .collect(Collectors.toSet()))
                .containsAll(Stream.of(Fault.values()).map(Fault::code).toList());
    }

    @Test
    void nothing_of_what_they_do_beside_touches_the_program() {
        assertThat(after).isEqualTo(before);
        assertThat(Thread.getAllStackTraces().keySet())
                .extracting(Thread::getName)
                .noneMatch(name -> name.contains("plugin"));
        assertThat(ProcessHandle.current().descendants()).isEmpty();
    }

    @Test
    void without_a_door_none_of_them_is_run() {
        ModelShelf closed = ModelShelf.of(List.of(temp.resolve("models")));
        assertThat(closed.models()).isEmpty();
        assertThat(closed.found())
                .filteredOn(Found.Code.class::isInstance)
                .extracting(found -> ((Found.Code) found).jar().plugin())
                .hasSizeGreaterThan(40)
                .contains("p 1.0.0", "untold.jar");
    }

    private static List<Outcome> outcomes() {
        return OUTCOMES.lines().map(Outcome::of).toList();
    }

    private static Stream<Found> of(String jar) {
        return shelf.found().stream()
                .filter(found -> found.origin().getFileName().toString().equals(jar + ".jar"));
    }

    private static List<Problem> problems(String jar) {
        return of(jar).filter(Found.Refused.class::isInstance)
                .flatMap(BrokenPluginsTest::all)
                .toList();
    }

    private static Found.Loaded loaded(String jar) {
        return (Found.Loaded) of(jar).findFirst().orElseThrow();
    }

    private static Stream<Problem> all(Found found) {
        return found instanceof Found.Loaded loaded
                ? loaded.warnings().stream()
                : ((Found.Refused) found).problems().stream();
    }
}
