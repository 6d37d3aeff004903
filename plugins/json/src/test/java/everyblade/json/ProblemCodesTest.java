package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The table of codes is whole and true: each code has an example with the mistake and one without it. */
class ProblemCodesTest {

    static final Path EXAMPLES = Path.of("examples");

    private static final Path SOURCES = Path.of("src", "main", "java", "everyblade", "json");

    /** What looks like a code where a problem is made. */
    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:-[a-z0-9]+)+|comment|unclosed)\"");

    /** Words with hyphens in the sources that are no codes. */
    private static final Set<String> OTHERS = Set.of("problem-codes");

    /** Files too large to keep. */
    private static final Map<String, Supplier<byte[]>> MADE = Map.of(
            "too-large",
                    () -> {
                        byte[] spaces = new byte[JsonTree.LARGEST + 1];
                        Arrays.fill(spaces, (byte) ' ');
                        return spaces;
                    },
            "too-many-values", () -> ("[" + "0,".repeat(JsonTree.MOST_VALUES) + "0]").getBytes(StandardCharsets.UTF_8),
            "more-problems",
                    () -> ("{"
                                    + IntStream.range(0, 200)
                                            .mapToObj(i -> "\"k" + i + "\": 0")
                                            .collect(Collectors.joining(","))
                                    + "}")
                            .getBytes(StandardCharsets.UTF_8));

    /** Told of folders; tested where these are opened. */
    private static final Set<String> OF_FOLDERS = Set.of("duplicate-model");

    @Test
    void there_are_no_two_alike_and_each_is_explained() {
        List<ProblemCode> all = ProblemCode.all();
        assertThat(all).extracting(ProblemCode::code).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(80);
        assertThat(all).allSatisfy(code -> {
            assertThat(code.meaning()).endsWith(".");
            assertThat(code.mend()).endsWith(".");
        });
        assertThat(ProblemCode.of("zero-ratio"))
                .get()
                .extracting(ProblemCode::severity)
                .isEqualTo("error");
        assertThat(ProblemCode.of("none-such")).isEmpty();
    }

    @Test
    void every_line_of_the_table_that_looks_like_one_is_read() {
        long lines = ProblemCode.table()
                .lines()
                .filter(line -> line.startsWith("| `"))
                .count();
        assertThat(ProblemCode.all()).hasSize((int) lines);
    }

    @Test
    void those_in_the_sources_and_those_in_the_table_are_the_same() throws IOException {
        Set<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                LITERAL.matcher(Files.readString(file)).results().forEach(found -> used.add(found.group(1)));
            }
        }
        used.removeAll(OTHERS);
        used.removeIf(word -> word.startsWith("engine-model"));
        Set<String> told = ProblemCode.all().stream()
                .filter(code -> code.found().equals("read"))
                .map(ProblemCode::code)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(used).isEqualTo(told);
    }

    @Test
    void those_of_jars_and_those_in_the_table_are_the_same() {
        assertThat(ProblemCode.all())
                .filteredOn(code -> code.found().equals("jar"))
                .extracting(ProblemCode::code)
                .containsExactly(Arrays.stream(Fault.values()).map(Fault::code).toArray(String[]::new));
    }

    @TestFactory
    Stream<DynamicTest> have_a_bad_example_that_has_it_and_a_good_one_without_any_problem() {
        return ProblemCode.all().stream()
                .filter(code -> code.found().equals("read") && !OF_FOLDERS.contains(code.code()))
                .map(code -> DynamicTest.dynamicTest(code.code(), () -> {
                    List<Problem> bad = bad(code.code());
                    assertThat(bad).extracting(Problem::code).contains(code.code());
                    assertThat(bad)
                            .filteredOn(problem -> problem.code().equals(code.code()))
                            .allSatisfy(problem -> assertThat(code.severity())
                                    .contains(problem.severity().name().toLowerCase(java.util.Locale.ROOT)));
                    if (!MADE.containsKey(code.code())) {
                        assertThat(read(EXAMPLES.resolve(code.code()).resolve("good")))
                                .isEmpty();
                    }
                }));
    }

    @Test
    void examples_are_of_codes_that_exist() throws IOException {
        Set<String> codes = ProblemCode.all().stream().map(ProblemCode::code).collect(Collectors.toSet());
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            assertThat(folders.map(folder -> folder.getFileName().toString()))
                    .isNotEmpty()
                    .isSubsetOf(codes);
        }
    }

    private static List<Problem> bad(String code) {
        if (MADE.containsKey(code)) {
            return problems(EngineJsonReader.read("engine.json", MADE.get(code).get()));
        }
        return read(EXAMPLES.resolve(code).resolve("bad"));
    }

    private static List<Problem> read(Path folder) {
        return problems(EngineJsonReader.read(folder.resolve(EngineJsonReader.FILE)));
    }

    private static List<Problem> problems(Reading reading) {
        return reading instanceof Reading.Read read ? read.warnings() : ((Reading.Unreadable) reading).problems();
    }
}
