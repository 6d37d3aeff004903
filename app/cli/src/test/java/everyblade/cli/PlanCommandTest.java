package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanCommandTest {

    static final String TWO_PORTS = """
            { "schema": "everyblade/engine-model/1", "id": "two", "name": "Two ports", "notice": "Invented.",
              "spools": [{ "id": "gas", "pads": [{ "id": "pad", "play": 1 }] }],
              "rows": [
                { "id": "c1", "kind": "rotor", "count": 20, "landmarks": [{ "airfoil": 3, "what": "notch" }] },
                { "id": "s1", "kind": "stator", "count": 30, "landmarks": [{ "airfoil": 1, "what": "split line" }] },
                { "id": "c2", "kind": "rotor", "count": 24 } ],
              "ports": [{ "id": "p1", "name": "front plug", "clock": 90 }, { "id": "p2" }],
              "views": [
                { "id": "p1-c1", "port": "p1", "row": "c1", "window": { "halfWidth": 4, "shows": ["all"] } },
                { "id": "p2-s1", "port": "p2", "row": "s1", "travels": true, "window": { "halfWidth": 4, "shows": ["all"] } },
                { "id": "p2-c2", "port": "p2", "row": "c2", "window": { "halfWidth": 4, "shows": ["tip"] } } ] }
            """;

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
        console.write("two/engine.json", TWO_PORTS);
    }

    private JsonNode json(String... more) throws IOException {
        String[] all = new String[more.length + 3];
        System.arraycopy(new String[] {"plan", "two", "--json"}, 0, all, 0, 3);
        System.arraycopy(more, 0, all, 3, more.length);
        Ran ran = console.run(all);
        assertThat(ran.status()).as(ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void aModelThatIsNotThereIsNamedAsItWasSaid() {
        assertThat(console.run("plan", "nowhere-9").err()).startsWith("nowhere-9: there is no engine model of that id");
        assertThat(console.run("start", "j", "--model", "nowhere-9", "--serial", "1", "--task", "x", "--by", "A")
                        .err())
                .startsWith("--model nowhere-9: there is no engine model of that id");
    }

    @Test
    void tellsThePortsInOrderWithTheirViewsAndWhatStaysOutOfReach() throws IOException {
        JsonNode plan = json();

        assertThat(plan.get("openings").intValue()).isEqualTo(2);
        assertThat(plan.get("ports")).hasSize(2);
        JsonNode first = plan.get("ports").get(0);
        assertThat(first.get("port").textValue()).isEqualTo("p1");
        JsonNode view = first.get("views").get(0);
        assertThat(view.get("view").textValue()).isEqualTo("p1-c1");
        assertThat(view.get("stations")).isEmpty();
        assertThat(view.get("turns").doubleValue()).isBetween(1.0, 1.2);
        assertThat(view.get("identifies").get(0).intValue()).isEqualTo(3);
        // From vane 1 in the middle to the last of 30 at 12° apart, less what the window shows of it to one side.
        assertThat(plan.get("drawing").doubleValue()).isEqualTo(29 * 12 - 4);
        assertThat(plan.get("bound").doubleValue())
                .isLessThanOrEqualTo(plan.get("minutes").doubleValue());
        assertThat(plan.get("outOfReach"))
                .hasToString("[{\"row\":\"c2\",\"zones\":[\"root\"],\"why\":\"noAccess\",\"cells\":24}]");
    }

    /** What the job then says is next is what was planned. */
    @Test
    void isWhatAJobThatBeginsSoIsToldToDo() throws IOException {
        JsonNode plan = json();
        console.run("start", "job", "--model", "two", "--serial", "7", "--task", "look", "--by", "Ann");

        JsonNode next =
                new ObjectMapper().readTree(console.run("next", "job", "--json").out());

        for (String what : new String[] {"openings", "minutes", "bound", "proved", "drawing"}) {
            assertThat(next.get(what)).as(what).isEqualTo(plan.get(what));
        }
    }

    @Test
    void goesOnlyThroughThePortsThatAreSaid() throws IOException {
        JsonNode plan = json("--from", "p2");

        assertThat(plan.findValuesAsText("view")).containsExactlyInAnyOrder("p2-s1", "p2-c2");
        assertThat(plan.get("outOfReach").findValuesAsText("row")).contains("c1");
        assertThat(json("--from", "p2", "p1").get("ports").get(0).get("port").textValue())
                .isEqualTo("p2");
    }

    @Test
    void asksOnlyForTheRowsAndPartsThatAreSaid() throws IOException {
        assertThat(json("--rows", "s1").findValuesAsText("view")).containsExactly("p2-s1");
        assertThat(json("--rows", "c1,c2", "--zones", "tip").get("outOfReach")).isEmpty();
    }

    @Test
    void aTaskCardOfTheModelSaysTheSame() throws IOException {
        console.write("two/engine.json", TWO_PORTS.strip().replaceFirst("}$", """
                        , "taskCards": [{ "id": "tips", "name": "Tips",
                            "asks": [{ "row": "c1", "parts": ["tip"] }, { "row": "c2", "parts": ["tip"] }] }] }"""));

        assertThat(json("--card", "tips")).isEqualTo(json("--rows", "c1,c2", "--zones", "tip"));
        Ran unknown = console.run("plan", "two", "--card", "roots");
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err())
                .isEqualTo("--card \"roots\": this engine has no such task card; it has tips" + System.lineSeparator());
        assertThat(console.run("plan", "two", "--card", "tips", "--rows", "c1").err())
                .contains("leave out --rows and --zones, or the card");
    }

    /** The list of the job is what is left of it, so it is ticked off by the work itself. */
    @Test
    void aJobCanBeBegunWithTheSameTask() {
        Ran started = console.run(
                "start",
                "job",
                "--model",
                "two",
                "--serial",
                "7",
                "--task",
                "look",
                "--by",
                "Ann",
                "--rows",
                "c1,c2",
                "--zones",
                "tip");

        assertThat(started.status()).as(started.err()).isZero();
        assertThat(console.run("gaps", "job").out()).doesNotContain("s1").doesNotContain("root");
        console.write("next.txt", console.run("next", "job").out());
        assertThat(console.run("log", "job", "--file", "next.txt").status()).isZero();
        assertThat(console.run("gaps", "job").status()).isZero();
        assertThat(console.run("close", "job").out()).contains("the task asks for nothing of it");
    }

    @Test
    void isACardOfOnePage() throws IOException {
        assertThat(console.run("plan", "two", "--out", "card.pdf").status()).isZero();

        try (PDDocument card = Loader.loadPDF(Files.readAllBytes(folder.resolve("card.pdf")))) {
            assertThat(card.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void tellsPeopleWhatToIdentifyAndHowLongItTakes() {
        assertThat(console.run("plan", "two").out())
                .contains("1. p1, front plug, at 90°: ")
                .contains("from blade 3, notch")
                .contains("2 ports, 3 views, ")
                .contains("Out of reach: c2 (c2), 24 cells: root: no view");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--rows; c9; this engine has no such row; it has c1, s1, c2",
                "--from; p9; this engine has no such port; it has p1, p2",
                "--zones; glub; no row that is asked for has these parts"
            })
    void refusesWhatTheEngineDoesNotHave(String option, String value, String said) {
        Ran ran = console.run("plan", "two", option, value);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains(option).contains(said);
    }
}
