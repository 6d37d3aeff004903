package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The list of a job: its plan as it was begun, ticked off by the record. The engine {@code two} has a rotor of 20 blades
 * through port p1, a stator of 30 vanes, and the tips of a rotor of 24, both through p2.
 */
class JobListTest {

    private static final Path MODELS = Path.of("../../engine-models").toAbsolutePath();

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
        console.write("two/engine.json", PlanCommandTest.TWO_PORTS);
    }

    private Ran start(String model, String... more) {
        Ran started = console.run(Stream.concat(
                        Stream.of("start", "job", "--model", model, "--serial", "7", "--task", "look", "--by", "Ann"),
                        Stream.of(more))
                .toArray(String[]::new));
        assertThat(started.status()).as(started.err()).isZero();
        return started;
    }

    private void log(String... entries) {
        Ran logged = console.run(
                Stream.concat(Stream.of("log", "job"), Stream.of(entries)).toArray(String[]::new));
        assertThat(logged.status()).as(logged.err()).isZero();
    }

    private List<String> list(String... more) {
        Ran told = console.run(
                Stream.concat(Stream.of("plan", "job"), Stream.of(more)).toArray(String[]::new));
        assertThat(told.status()).as(told.err()).isZero();
        return told.outLines();
    }

    private JsonNode json(String... arguments) throws IOException {
        Ran told = console.run(
                Stream.concat(Stream.of(arguments), Stream.of("--json")).toArray(String[]::new));
        assertThat(told.status()).as(told.err()).isZero();
        return new ObjectMapper().readTree(told.out());
    }

    private static List<JsonNode> views(JsonNode list) {
        return StreamSupport.stream(list.get("ports").spliterator(), false)
                .flatMap(port -> StreamSupport.stream(port.get("views").spliterator(), false))
                .toList();
    }

    /** The entries of {@code next} that are done through this view. */
    private List<String> through(String view) throws IOException {
        List<String> entries = new ArrayList<>();
        for (JsonNode move : json("next", "job").get("moves")) {
            if (move.get("view").textValue().equals(view)) {
                move.get("entries").forEach(entry -> entries.add(entry.textValue()));
            }
        }
        return entries;
    }

    /** Ports in order with their views, as {@code plan} tells of the model, then what that takes, then what is left. */
    @Test
    void isThePlanOfTheModelWithEverythingOpenBeforeTheFirstEntry() {
        List<String> planned = console.run("plan", "two").outLines();
        start("two");

        List<String> list = list();

        assertThat(list).hasSize(planned.size() + 1);
        IntStream.range(0, planned.size())
                .forEach(i -> assertThat(list.get(i)
                                .replaceFirst("\\[ ] ", "")
                                .replaceFirst("; open$", "")
                                .strip())
                        .isEqualTo(planned.get(i).strip()));
        assertThat(list.get(0)).startsWith("[ ] 1. p1, front plug, at 90°: ").endsWith("; open");
        assertThat(list.get(1)).startsWith("    [ ] p1-c1, ").endsWith("; open");
        assertThat(list.get(list.size() - 1)).startsWith("Left by this list: 3 views, ");
    }

    @Test
    void isToldByStartWhereThatIsAskedAndElseNothingMore() {
        String with = start("two", "--plan").out();
        String list = console.run("plan", "job").out();
        Console other = Console.in(folder.resolve("other"));
        other.write("two/engine.json", PlanCommandTest.TWO_PORTS);

        Ran without = other.run("start", "job", "--model", "two", "--serial", "7", "--task", "look", "--by", "Ann");

        assertThat(with).isEqualTo(without.out() + list);
    }

    /** On an engine that comes with the program, in which several views close the cells of one row between them. */
    @Test
    void isTickedOffByWhatNextSaidOnceThatIsDone() throws IOException {
        console = console.with("EVERYBLADE_CACHE", folder.resolve("kept").toString());
        Ran started = start(MODELS.resolve("tansy-a1").toString(), "--rows", "t", "--plan");
        assertThat(started.out()).contains("[ ] 1. ig, Igniter, at 135°: ").contains("Left by this list: 3 views, ");
        JsonNode before = json("plan", "job");
        String first = views(before).get(0).get("view").textValue();
        log("heat 24 C");
        log(through(first).toArray(String[]::new));

        JsonNode after = json("plan", "job");

        assertThat(views(after))
                .extracting(view -> view.get("done").booleanValue())
                .containsExactly(true, false, false);
        assertThat(views(after).get(0).get("left").intValue()).isZero();
        assertThat(views(after).get(0).get("cells").intValue()).isPositive();
        assertThat(views(after))
                .extracting(view -> view.get("cells"))
                .isEqualTo(views(before).stream().map(view -> view.get("cells")).toList());
        assertThat(after.at("/ports/0/done").booleanValue()).isTrue();
        assertThat(after.at("/left/views").intValue()).isEqualTo(2);
        assertThat(after.at("/left/minutes").doubleValue())
                .isCloseTo(
                        before.at("/left/minutes").doubleValue()
                                - views(before).get(0).get("minutes").doubleValue(),
                        within(1e-3 * 2));
        List<String> list = list();
        assertThat(list.get(0))
                .as("the metal was measured")
                .startsWith("[x] 1. ig, Igniter, at 135°: ")
                .endsWith("; done");
        assertThat(list.get(1)).startsWith("    [x] " + first).endsWith("; done");
        assertThat(list.get(2)).startsWith("[ ] 2. exhaust, ").endsWith("; open");

        console.write("rest.txt", console.run("next", "job").out());
        log("--file", "rest.txt");

        assertThat(list()).filteredOn(line -> line.contains("[ ]")).isEmpty();
        assertThat(list().get(list().size() - 1)).isEqualTo("All views of this list are done.");
        assertThat(list().get(list().size() - 2)).startsWith("nothing is left to do, but not all is seen: ");
    }

    @Test
    void tellsHowManyCellsOfAViewAndHowManyViewsOfAPortAreLeft() {
        start("two");
        log("open p2", "view p2-s1", "datum s1 1", "draw 90", "view p2-c2", "datum c2 1", "round 1");

        List<String> list = list();

        // From vane 1 in the middle 90° round show 8 of 30 at 12° apart; 22 are left, root and tip.
        assertThat(list.toString()).contains("p2: ").contains("; 1 of 2 views left");
        assertThat(list).anyMatch(line -> line.startsWith("    [ ] p2-s1, ") && line.endsWith("; 44 cells left"));
        assertThat(list).anyMatch(line -> line.startsWith("    [x] p2-c2, ") && line.endsWith("; done"));
        assertThat(list.get(0)).endsWith("; open");
        assertThat(list.get(list.size() - 1)).startsWith("Left by this list: 2 views, ");
    }

    @Test
    void followsWhatIsAskedNow() throws IOException {
        start("two", "--rows", "c1");
        assertThat(views(json("plan", "job")))
                .extracting(view -> view.get("view").textValue())
                .containsExactly("p1-c1");
        log("open p1", "view p1-c1", "datum c1 3", "round 3");
        assertThat(list().get(0)).startsWith("[x] ");

        log("ask s1 all");

        JsonNode list = json("plan", "job");
        assertThat(views(list)).extracting(view -> view.get("view").textValue()).containsExactly("p1-c1", "p2-s1");
        assertThat(views(list))
                .extracting(view -> view.get("done").booleanValue())
                .containsExactly(true, false);
        log("void 7 because only the rotor was meant");
        assertThat(views(json("plan", "job"))).hasSize(1);
    }

    @Test
    void isOpenAgainWhereWhatTickedItWasVoid() {
        start("two", "--rows", "c1");
        log("open p1", "view p1-c1", "datum c1 3", "round 3");
        assertThat(list().get(1)).startsWith("    [x] ");

        log("void 6 because nobody looked");

        assertThat(list().get(1)).startsWith("    [ ] ");
    }

    /** Whoever sends a job cannot send ticks with it. */
    @Test
    void isToldOfAPackedJobAndChangesNothing() {
        start("two", "--plan");
        log("open p1", "view p1-c1", "datum c1 3", "round 3");
        assertThat(console.run("pack", "job", "--out", "sent.zip").status()).isZero();
        SortedMap<String, String> before = console.everything();

        List<String> ofFolder = list();

        assertThat(console.run("plan", "sent.zip").outLines()).isEqualTo(ofFolder);
        assertThat(console.everything()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"--rows,c1", "--zones,tip", "--card,tips", "--from,p1", "--detail,1"})
    void aJobSaysItselfWhatIsAskedFor(String option, String value) {
        start("two");

        Ran refused = console.run("plan", "job", option, value);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.errLines())
                .containsExactly(option + ": job is a job, and its list is made of what its record asks for and of the"
                        + " settings that it began with; leave this out, or name an engine model instead of the job");
    }

    @Test
    void isACardOfOnePageWithWhatIsDone() throws IOException {
        start("two");
        log("open p1", "view p1-c1", "datum c1 3", "round 3");

        assertThat(console.run("plan", "job", "--out", "list.pdf").status()).isZero();

        try (PDDocument card = Loader.loadPDF(Files.readAllBytes(folder.resolve("list.pdf")))) {
            assertThat(card.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(card))
                    .contains("serial 7, ticked off by its record")
                    .contains("Left by this list: 2 views, ")
                    .contains("after 4 entries, 2026-05-14 06:00 UTC")
                    .containsPattern("p1-c1 – .* – done");
        }
    }

    /** Of a port with more views than a card has lines for, those that are done are told among the others. */
    @Test
    void isACardOfOnePageOnAnEngineWithManyViews() throws IOException {
        String rows = IntStream.rangeClosed(1, 25)
                .mapToObj(i -> "{ \"id\": \"r" + i + "\", \"kind\": \"stator\", \"count\": 2,"
                        + " \"landmarks\": [{ \"airfoil\": 1, \"what\": \"notch\" }] }")
                .collect(Collectors.joining(", "));
        String views = IntStream.rangeClosed(1, 25)
                .mapToObj(i -> "{ \"id\": \"v" + i + "\", \"port\": \"p\", \"row\": \"r" + i + "\", \"travels\": true,"
                        + " \"window\": { \"halfWidth\": 4, \"shows\": [\"all\"] } }")
                .collect(Collectors.joining(", "));
        console.write(
                "many/engine.json",
                "{ \"schema\": \"everyblade/engine-model/1\", \"id\": \"many\", \"name\": \"Many\","
                        + " \"notice\": \"Invented.\", \"ports\": [{ \"id\": \"p\" }], \"rows\": [" + rows
                        + "], \"views\": [" + views + "] }");
        start("many");
        log("open p", "view v2", "datum r2 1", "draw 360");

        assertThat(console.run("plan", "job", "--out", "list.pdf").status()).isZero();

        try (PDDocument card = Loader.loadPDF(Files.readAllBytes(folder.resolve("list.pdf")))) {
            assertThat(card.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(card).replaceAll("\\s+", " "))
                    .contains("v1 from 1; v2 from 1 – done; v3 from 1")
                    .contains("24 of 25 views left");
        }
    }

    @Test
    void speaksGerman() {
        start("two");
        log("open p1", "view p1-c1", "datum c1 3", "round 3", "open p2", "view p2-c2", "datum c2 1", "round 1");

        List<String> list = list("--lang", "de");

        assertThat(list.get(0)).startsWith("[x] 1. p1, front plug, bei 90°: ").endsWith("; erledigt");
        assertThat(list).anyMatch(line -> line.startsWith("[ ] 2. p2") && line.endsWith("; noch 1 von 2 Zugängen"));
        assertThat(list).anyMatch(line -> line.startsWith("    [ ] p2-s1, ") && line.endsWith("; offen"));
        assertThat(list.get(list.size() - 1)).startsWith("Nach dieser Liste bleibt 1 Zugang, ");
        assertThat(console.run("plan", "job", "--rows", "c1", "--lang", "de").err())
                .startsWith("--rows: job ist ein Auftrag, ");
    }

    @Test
    void ofAJobThatCannotBeReadIsRefusedAsEverywhere() {
        console.write("broken/journal.jsonl", "{");

        Ran refused = console.run("plan", "broken");

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).isEqualTo(console.run("gaps", "broken").err()).contains("journal.jsonl");
    }
}
