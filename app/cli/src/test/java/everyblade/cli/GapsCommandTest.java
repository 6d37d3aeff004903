package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GapsCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
    }

    /** Blades 10 to 1 are seen at the root; turning on, blade 9 comes first to the reference, after 120°. */
    @Test
    void tellEachRunOfBladesAndHowToReachIt() throws IOException {
        console.job("view p-r", "datum r 1", "watch root", "turn on 90", "ask v all");

        Ran gaps = console.run("gaps", "job", "--json");

        JsonNode list = new ObjectMapper().readTree(gaps.out()).get("gaps");
        assertThat(gaps.status()).isEqualTo(1);
        assertThat(list).hasSize(3);
        assertThat(list.get(0))
                .hasToString("{\"row\":\"r\",\"airfoils\":[2,3,4,5,6,7,8,9],\"zones\":[\"root\",\"tip\"],"
                        + "\"state\":\"unseen\",\"why\":\"skipped\","
                        + "\"reach\":{\"view\":\"p-r\",\"station\":null,\"turnTo\":120,\"sweep\":210}}");
        assertThat(list.get(1))
                .hasToString("{\"row\":\"r\",\"airfoils\":[10,11,12,1],\"zones\":[\"tip\"],"
                        + "\"state\":\"unseen\",\"why\":\"not watched\","
                        + "\"reach\":{\"view\":\"p-r\",\"station\":null,\"turnTo\":0.0,\"sweep\":90}}");
        assertThat(list.get(2).get("reach").isNull()).isTrue();
    }

    @Test
    void drawTheScopeTipWhereNothingTurns() throws IOException {
        console.job("view p-v", "datum v 1", "draw 90", "ask r root", "r noaccess all all because there is no time");

        JsonNode list = new ObjectMapper()
                .readTree(console.run("gaps", "job", "--json").out())
                .get("gaps");

        assertThat(list).hasSize(1);
        assertThat(list.get(0).get("airfoils")).hasToString("[4,5,6,7,8]");
        assertThat(list.get(0).get("reach"))
                .hasToString("{\"view\":\"p-v\",\"station\":null,\"turnTo\":null,\"drawTo\":135,\"sweep\":180}");
    }

    @Test
    void areNumberedSentencesForPeople() {
        console.job("view p-r", "datum r 1", "turn on 330", "v noaccess all all because another job covers it");
        console.run("log", "job", "skip back 60", "slip", "turn on 30");

        Ran nothing = console.run("gaps", "job");

        assertThat(nothing.status()).isZero();
        assertThat(nothing.outLines())
                .containsExactly(
                        "nothing is left to do; behind that stand: 8 cells accepted as not seen, of which views can show 8",
                        "All rows, declared: 25.0 % left of what these views can show (8 of 32 cells); 75.0 % of the surface"
                                + " seen; 0.0 % of the surface no view shows.",
                        "Judged by: windows that the model states, however slanted and coarse what they show; light, depth"
                                + " of field and time in view are not judged.");

        console.run("log", "job", "void 3 because the light was out");
        Ran left = console.run("gaps", "job");
        assertThat(left.status()).isEqualTo(1);
        assertThat(left.outLines()).last().asString().isEqualTo("1 gap, 24 cells left");
        assertThat(left.outLines()).first().asString().startsWith("1. Rotor (r): all 12 blades, everything: ");
    }

    /** Gaps of every second blade, so that there are more of them than fit on a screen. */
    @Test
    void areGroupedByViewNearestFirstAndFillAScreenAtMost() {
        console.write("combed/engine.json", """
                { "schema": "everyblade/engine-model/1", "id": "combed", "name": "Combed", "notice": "Invented.",
                  "rows": [{ "id": "a", "kind": "rotor", "count": 6 }, { "id": "b", "kind": "rotor", "count": 60 }],
                  "ports": [{ "id": "p1", "name": "front plug" }, { "id": "p2", "name": "rear plug" }],
                  "views": [
                    { "id": "p1-a", "port": "p1", "row": "a", "window": { "halfWidth": 1, "shows": ["all"] } },
                    { "id": "p2-b", "port": "p2", "row": "b", "window": { "halfWidth": 1, "shows": ["all"] } } ] }
                """);
        console.run("start", "job", "--model", "combed", "--serial", "7", "--task", "look", "--by", "Ann");
        console.run("log", "job", "view p2-b", "datum b 1");
        for (int i = 0; i < 30; i++) {
            console.run("log", "job", "look", "skip 12");
        }

        Ran few = console.run("gaps", "job");

        assertThat(few.outLines()).first().asString().isEqualTo("Through rear plug (p2), view p2-b:");
        assertThat(few.outLines().get(1)).startsWith("1. b (b): blade 2, everything: ");
        assertThat(few.outLines()).hasSizeLessThan(30).contains("and 11 more, farther away: gaps --all tells them");
        assertThat(console.run("gaps", "job", "--all").outLines())
                .contains("Through front plug (p1), view p1-a:")
                .anySatisfy(line -> assertThat(line)
                        .startsWith("31. a (a): ")
                        .endsWith("blade 1 (any that you mark), in view p1-a at 0°."));
    }
}
