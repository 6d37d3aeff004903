package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NextCommandTest {

    private static final String NO_VANES = "v noaccess all all because another job covers it";

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
    }

    private JsonNode json() throws IOException {
        Ran next = console.run("next", "job", "--json");
        assertThat(next.status()).isZero();
        assertThat(next.err()).isEmpty();
        return new ObjectMapper().readTree(next.out());
    }

    /** Blades 10 to 1 are seen; 9 comes into sight at 115°, and 2 does at 325°: 235° on from 90°, whatever is skipped. */
    @Test
    void tellsTheMovesAndTheirBound() throws IOException {
        console.job("view p-r", "datum r 1", "turn on 90", NO_VANES);

        JsonNode plan = json();

        assertThat(plan.get("moves")).hasSize(1);
        JsonNode move = plan.get("moves").get(0);
        assertThat(move.get("view").textValue()).isEqualTo("p-r");
        assertThat(move.get("watch")).hasToString("[\"all\"]");
        assertThat(move.get("closes")).hasToString("[{\"airfoils\":[2,3,4,5,6,7,8,9],\"zones\":[\"root\",\"tip\"]}]");
        assertThat(move.get("entries")).hasSize(2);
        assertThat(plan.get("turning").decimalValue()).isEqualByComparingTo("235");
        assertThat(plan.get("bound").decimalValue())
                .isEqualByComparingTo(plan.get("minutes").decimalValue());
        assertThat(plan.get("proved").booleanValue()).isTrue();
        assertThat(plan.get("openings").intValue()).isZero();
        assertThat(plan.get("views").intValue()).isZero();
        assertThat(plan.get("left").intValue()).isZero();
    }

    @Test
    void whatItPrintsIsAFileOfEntriesThatClosesAllGaps() {
        console.job("view p-r", "datum r 1", "watch root", "turn on 90", "view p-v", "datum v 1", "draw 50");
        Ran next = console.run("next", "job");
        console.write("moves.txt", next.out());

        Ran logged = console.run("log", "job", "--file", "moves.txt");

        assertThat(logged.status()).as(logged.err()).isZero();
        assertThat(console.run("gaps", "job").status()).isZero();
        assertThat(next.out())
                .contains("# Rotor (r) through p-r closes blades ", "# turning ", "# drawing the scope tip ");
    }

    @Test
    void itsJsonSaidAsEntriesClosesAllGaps() throws IOException {
        console.job("view p-r", "datum r 1", "watch root", "turn on 90", "skip 100", "turn on 3.33", NO_VANES);
        List<String> entries = new ArrayList<>(List.of("log", "job"));
        for (JsonNode move : json().get("moves")) {
            List<String> watch = new ArrayList<>();
            move.get("watch").forEach(word -> watch.add(word.textValue()));
            entries.add("view " + move.get("view").textValue());
            entries.add("watch " + String.join(" ", watch));
            entries.add("skip to " + move.get("skipTo").asText());
            entries.add("turn " + move.get("turn").asText());
        }

        Ran logged = console.run(entries.toArray(String[]::new));

        assertThat(logged.status()).as(logged.err()).isZero();
        assertThat(console.run("gaps", "job").status()).isZero();
    }

    @Test
    void saysThatNothingIsLeft() throws IOException {
        console.job("view p-r", "datum r 1", "turn on 360", NO_VANES);

        assertThat(console.run("next", "job"))
                .isEqualTo(new Ran(
                        0,
                        "# nothing is left to do; behind that stand: 8 cells accepted as not seen, of which views can show"
                                + " 8\n",
                        ""));
        assertThat(json().get("moves")).isEmpty();
        assertThat(json().get("turning").decimalValue()).isZero();
    }

    /** Whoever reads the JSON alone must not be refused at the first view. */
    @Test
    void itsJsonTellsThatTheMetalMustBeMeasuredFirst() throws IOException {
        console.write("hot/engine.json", """
                { "schema": "everyblade/engine-model/1", "id": "hot", "name": "Hot", "notice": "Invented.",
                  "rows": [{ "id": "r", "kind": "rotor", "count": 20, "landmarks": [{ "airfoil": 1, "what": "notch" }] }],
                  "scopeTips": [{ "id": "tip", "cone": 60, "near": 2, "far": 60, "pixels": 400, "diameter": 4, "hottest": 75 }],
                  "views": [{ "id": "v", "row": "r", "scopeTip": "tip", "window": { "halfWidth": 5, "shows": ["all"] } }] }
                """);
        console.run("start", "job", "--model", "hot", "--serial", "7", "--task", "routine", "--by", "Ann");

        assertThat(json().get("heat")).hasToString("{\"scopeTips\":[\"tip\"],\"hottest\":75.0}");

        console.run("log", "job", "heat 40 C");

        assertThat(json().has("heat")).isFalse();
    }

    @Test
    void tellsFromWhereAFindingIsSeenBest() throws IOException {
        console.job("view p-r", "datum r 1", "nick 4 tip", "skip 10");

        Ran told = console.run("next", "job", "--finding", "3");

        assertThat(told.outLines())
                .first()
                .asString()
                .isEqualTo(
                        "# blade 4 of r, tip: seen most squarely through p-r, standing at 90.0° on the clock, 100 % of"
                                + " it in sight");
        console.write("look.txt", told.out());
        assertThat(console.run("log", "job", "--file", "look.txt").status()).isZero();
        JsonNode json = new ObjectMapper()
                .readTree(console.run("next", "job", "--finding", "3", "--json").out());
        assertThat(json.get("faces").get(0).get("from").get("view").textValue()).isEqualTo("p-r");
    }

    @Test
    void refusesAnEntryThatIsNoFinding() {
        console.job("view p-r", "datum r 1");

        Ran told = console.run("next", "job", "--finding", "2");

        assertThat(told.status()).isEqualTo(2);
        assertThat(told.err()).contains("--finding 2: entry 2 is no finding that counts");
    }

    @Test
    void namesTheAirfoilAndTheViewWhereNothingIsCountedYet() throws IOException {
        console.job("view p-r", NO_VANES);

        assertThat(console.run("next", "job").outLines())
                .anySatisfy(line -> assertThat(line)
                        .startsWith("# turn, unwatched, until blade 1 (")
                        .contains(" stands at the reference of p-r, at "));
        assertThat(json().get("moves").get(0).get("identifies").intValue()).isEqualTo(1);
    }

    @Test
    void saysWhatNeedsNoTurning() {
        console.job("view p-v", "datum v 1", "draw 90", "r noaccess all all because there is no time");

        assertThat(console.run("next", "job").outLines())
                .contains("# no shaft needs to be turned")
                .anySatisfy(line -> assertThat(line).startsWith("draw "));
    }

    @Test
    void countsWhatNoViewShows() throws IOException {
        console.write("ring/engine.json", Console.RING.replace("[\"root\", \"tip\"]", "[\"tip\"]"));
        console.job("view p-r", "datum r 1", "turn on 360", NO_VANES);

        assertThat(json().get("left").intValue()).isEqualTo(12);
        assertThat(console.run("next", "job").outLines())
                .singleElement()
                .asString()
                .startsWith(
                        "# 12 cells cannot be seen (no view of this engine model shows enough of it): no move reaches them");
    }
}
