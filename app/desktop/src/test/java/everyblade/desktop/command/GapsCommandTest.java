package everyblade.desktop.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.desktop.command.Console.Ran;
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
}
