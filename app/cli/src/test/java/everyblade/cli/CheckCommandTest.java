package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import everyblade.json.ProblemCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    private static final Path EXAMPLES = Path.of("..", "..", "plugins", "json", "examples");

    @TempDir
    Path folder;

    private Ran check(Path path, String... more) {
        return Console.in(folder)
                .run(Stream.concat(
                                Stream.of(
                                        "check",
                                        path.toAbsolutePath().normalize().toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private JsonNode json(Path path) throws IOException {
        return new ObjectMapper().readTree(check(path, "--json").out());
    }

    @TestFactory
    Stream<DynamicTest> tellsWhatOnlySurfacesShowInTheBadExampleAndNothingInTheGoodOne() {
        List<ProblemCode> checked = ProblemCode.all().stream()
                .filter(code -> code.found().equals("checked"))
                .toList();
        assertThat(checked).hasSizeGreaterThan(10);
        return checked.stream()
                .map(code -> DynamicTest.dynamicTest(code.code(), () -> {
                    Path example = EXAMPLES.resolve(code.code());
                    Ran bad = check(example.resolve("bad"));
                    boolean error = code.severity().equals("error");
                    assertThat(bad.status()).isEqualTo(error ? 1 : 0);
                    assertThat(error ? bad.out() : bad.err())
                            .containsPattern("engine\\.json:[0-9]+:[0-9]+: " + code.code() + ": ");
                    Ran good = check(example.resolve("good"));
                    assertThat(good.status()).isZero();
                    assertThat(good.err()).isEmpty();
                    assertThat(good.outLines()).singleElement().asString().startsWith("fine: ");
                }));
    }

    @Test
    void pointsToTheStationOfWhichItSpeaks() throws IOException {
        JsonNode problem = json(EXAMPLES.resolve("station-sees-nothing/bad")).at("/checked/0/problems/0");

        List<String> lines = Files.readAllLines(EXAMPLES.resolve("station-sees-nothing/bad/engine.json"));
        assertThat(problem.get("pointer").textValue()).isEqualTo("/views/0/stations/1");
        assertThat(lines.get(problem.get("line").intValue() - 1)
                        .substring(problem.get("column").intValue() - 1))
                .startsWith("{ \"id\": \"b\"");
    }

    @Nested
    class AsJson {

        @Test
        void namesCodeSeverityPlaceAndTheNearestKey() throws IOException {
            JsonNode model = json(EXAMPLES.resolve("unknown-key/bad")).at("/checked/0");

            assertThat(model.get("refused").booleanValue()).isTrue();
            assertThat(model.get("problems")).anySatisfy(problem -> {
                assertThat(problem.get("code").textValue()).isEqualTo("unknown-key");
                assertThat(problem.get("severity").textValue()).isEqualTo("error");
                assertThat(problem.get("file").textValue()).endsWith("engine.json");
                assertThat(problem.get("line").intValue()).isEqualTo(8);
                assertThat(problem.get("pointer").textValue()).isEqualTo("/rows/0/bladeCount");
                assertThat(problem.get("nearest").textValue()).isEqualTo("count");
                assertThat(problem.get("mend").textValue()).contains("count");
            });
        }

        @Test
        void saysNothingElseOnEitherStream() throws IOException {
            Ran warned = check(EXAMPLES.resolve("no-landmark/bad"), "--json");

            assertThat(warned.status()).isZero();
            assertThat(warned.err()).isEmpty();
            JsonNode model = new ObjectMapper().readTree(warned.out()).at("/checked/0");
            assertThat(model.get("refused").booleanValue()).isFalse();
            assertThat(model.get("id").textValue()).isEqualTo("example");
            assertThat(model.get("problems").findValuesAsText("severity")).containsExactly("warning");
        }

        @Test
        void keepsTheExitStatus() {
            assertThat(check(EXAMPLES.resolve("blades-cut/bad"), "--json").status())
                    .isEqualTo(1);
        }
    }

    @Test
    void leavesSightOutIfAsked() {
        assertThat(check(EXAMPLES.resolve("sees-nothing/bad")).err()).contains(": sees-nothing: ");
        assertThat(check(EXAMPLES.resolve("sees-nothing/bad"), "--no-sight").err())
                .isEmpty();
    }

    @Test
    void findsNothingWrongWithTheModelsThatAreShipped() {
        Ran shipped = check(Path.of("..", "..", "engine-models"));

        assertThat(shipped.status()).isZero();
        assertThat(shipped.err()).isEmpty();
        assertThat(shipped.outLines()).hasSizeGreaterThanOrEqualTo(3).allMatch(line -> line.startsWith("fine: "));
    }

    @Nested
    class ByAllRules {

        @Test
        void tellsWithTheDateWhatBecameOfEach() {
            Ran judged = check(folder.resolve("ring"), "--all-rules");

            assertThat(judged.status()).isZero();
            assertThat(judged.err()).isEmpty();
            assertThat(judged.outLines())
                    .startsWith("Rules for engine models, judged 2026-05-14T06:00:00Z")
                    .anyMatch(line -> line.startsWith("1.3  required  kept "))
                    .anyMatch(line -> line.startsWith("5.1  untested  by hand "));
            assertThat(judged.outLines().get(1)).contains("Ring of twelve (ring), SHA-256 of its engine.json ");
        }

        @Test
        void namesThePlaceWhereOneIsBrokenAndThenRefuses() {
            Ran judged = check(EXAMPLES.resolve("blades-cut/bad"), "--all-rules");

            assertThat(judged.status()).isEqualTo(1);
            assertThat(judged.out())
                    .containsPattern("2\\.3  required  broken .*\\n +.*engine\\.json:[0-9]+:[0-9]+: blades-cut: ");
        }

        @Test
        void asksNothingMoreOfWhatIsNoModel() {
            Ran judged = check(EXAMPLES.resolve("unclosed/bad"), "--all-rules");

            assertThat(judged.status()).isEqualTo(1);
            assertThat(judged.out()).contains(": refused", "1.1  required  broken ", "2.3  required  not asked ");
        }

        @Test
        void givesTheSameAsJson() throws IOException {
            Ran judged = check(folder.resolve("ring"), "--all-rules", "--json");
            JsonNode rules = new ObjectMapper().readTree(judged.out()).at("/checked/0/rules");

            assertThat(rules.get("at").textValue()).isEqualTo("2026-05-14T06:00:00Z");
            assertThat(rules.get("sha256").textValue()).hasSize(64);
            assertThat(rules.get("judged"))
                    .hasSizeGreaterThan(20)
                    .anySatisfy(rule -> assertThat(rule.toString())
                            .contains("\"number\":\"2.3\"", "\"force\":\"required\"", "\"verdict\":\"kept\""));
        }

        @Test
        void isOfEngineModelsOnly() {
            Console console = Console.in(folder);
            console.write("limits.json", "{ \"schema\": \"everyblade/limits/1\" }");

            assertThat(console.run("check", "limits.json", "--all-rules").err())
                    .contains("--all-rules is for engine models");
        }
    }

    @Nested
    class Explaining {

        @Test
        void tellsWhatACodeMeans() {
            Ran told = Console.in(folder).run("check", "--explain", "zero-ratio");

            assertThat(told.status()).isZero();
            assertThat(told.outLines()).singleElement().asString().startsWith("zero-ratio (error): ");
        }

        @Test
        void printsTheWholeTable() {
            assertThat(Console.in(folder).run("check", "--explain", "all").out())
                    .isEqualTo(ProblemCode.table());
        }

        @Test
        void refusesACodeThatThereIsNot() {
            Ran told = Console.in(folder).run("check", "--explain", "zero");

            assertThat(told.status()).isEqualTo(2);
            assertThat(told.errLines()).singleElement().asString().contains("--explain all");
        }
    }

    @Test
    void mustBeToldWhatToCheck() {
        Ran nothing = Console.in(folder).run("check");

        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.errLines()).singleElement().asString().contains("name an engine.json");
    }
}
