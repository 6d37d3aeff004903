package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoverageCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
    }

    @Nested
    class AsJson {

        /** A quarter turn brings blades 1, 12, 11 and 10 past the reference. */
        @Test
        void countsCellsByStateAndRow() throws IOException {
            console.job("view p-r", "datum r 1", "watch root", "turn on 90", "nick 1 root 0.4");

            JsonNode row = json().get("rows").get(0);

            assertThat(row.toString()).startsWith("""
                            {"row":"r","kind":"rotor","basis":"declared","airfoils":12,"cells":24,"seen":4,"part":0,"maybe":0,\
                            "unseen":20,"glimpsed":0,"noAccess":0,"coarse":0,"fast":0,"stated":0,"damaged":1,"declaredCells":0,"seenShare":0.1667,\
                            "doneShare":0.1667,"headline":{"left":0.8334,"seen":0.1667,"beyond":0.0,"leftCells":20,"withinCells":24},\
                            "area":{"reach":1.0,"seen":0.1667,"maybe":0.1667,"seenOfReach":0.1667},\
                            "bySpan":{"root":0.3333,"tip":0.0},"bySide":{},"byChord":{},\
                            "airfoil":[{"n":1,"seen":1,"part":0,"maybe":0,"unseen":1},{"n":2,"seen":0,""");
            assertThat(row.get("airfoil")).hasSize(12);
        }

        @Test
        void saysOfWhatJobItIs() throws IOException {
            console.job(
                    "view p-r",
                    "datum r 1",
                    "watch root",
                    "turn on 90",
                    "nick 1 root 0.4",
                    "void 5 because it is dirt");

            JsonNode json = json();

            assertThat(json.get("model").textValue()).isEqualTo("ring");
            assertThat(json.get("serial").textValue()).isEqualTo("7");
            assertThat(json.get("entries").intValue()).isEqualTo(6);
            assertThat(console.journal().get(6))
                    .endsWith("\"" + json.get("head").textValue() + "\"}");
            assertThat(json.get("findings").intValue()).isZero();
            assertThat(json.get("lostCount").booleanValue()).isFalse();
        }

        @Test
        void givesTotalsForWhatIsDeclaredAndForWhatIsComputedApart() throws IOException {
            console.job("view p-r", "datum r 1", "turn on 360");

            JsonNode json = json();

            assertThat(json.get("declared").toString())
                    .isEqualTo("{\"cells\":32,\"seen\":24,\"part\":0,\"maybe\":0,\"unseen\":8,\"glimpsed\":0,"
                            + "\"noAccess\":0,\"coarse\":0,\"headline\":{\"left\":0.25,\"seen\":0.75,\"beyond\":0.0,"
                            + "\"leftCells\":8,\"withinCells\":32},\"seenShare\":0.75,\"doneShare\":0.75}");
            assertThat(json.get("computed").isNull()).isTrue();
            assertThat(json.get("seenShare").doubleValue()).isEqualTo(0.75);
            assertThat(json.get("doneShare").doubleValue()).isEqualTo(0.75);
        }

        @Test
        void keepsTheTotalsWhenOneRowIsAskedFor() throws IOException {
            console.job("view p-r", "datum r 1", "turn on 360");

            JsonNode json = json("--row", "v");

            assertThat(json.get("rows").findValuesAsText("row")).containsExactly("v");
            assertThat(json.get("rows").get(0).get("bySpan").toString()).isEqualTo("{}");
            assertThat(json.get("seenShare").doubleValue()).isEqualTo(0.75);
        }

        @Test
        void tellsALostCount() throws IOException {
            console.job("view p-r", "datum r 1", "turn on 45", "turn on 45", "here 3");

            JsonNode json = json();

            assertThat(json.get("lostCount").booleanValue()).isTrue();
            assertThat(json.get("rows").get(0).get("maybe").intValue()).isPositive();
        }

        @Test
        void countsWhatWasInViewTooBriefly() throws IOException {
            console.start("--least-view", "1s");
            console.run("log", "job", "view p-r", "datum r 1", "watch root", "turn on 90 in 1s");

            assertThat(json().get("rows").get(0).get("fast").intValue()).isEqualTo(4);
        }

        @Test
        void addsUpInEveryRow() throws IOException {
            console.job(
                    "view p-r", "datum r 1", "turn on 77 ± 3", "slip", "turn on 20", "noaccess tip 2-4 because oil");

            for (JsonNode row : json().get("rows")) {
                int states = StreamSupport.stream(row.get("airfoil").spliterator(), false)
                        .mapToInt(one -> one.get("seen").intValue()
                                + one.get("part").intValue()
                                + one.get("maybe").intValue()
                                + one.get("unseen").intValue())
                        .sum();
                assertThat(states).isEqualTo(row.get("cells").intValue());
            }
        }

        private JsonNode json(String... more) throws IOException {
            String[] arguments = Stream.concat(Stream.of("coverage", "job", "--json"), Stream.of(more))
                    .toArray(String[]::new);
            Console.Ran ran = console.run(arguments);
            assertThat(ran.err()).isEmpty();
            return new ObjectMapper().readTree(ran.out());
        }
    }

    @Nested
    class ForPeople {

        @Test
        void isATableThatSaysOnWhatItRests() {
            console.job("view p-r", "datum r 1", "watch root", "turn on 90", "nick 1 root 0.4");

            assertThat(console.run("coverage", "job").outLines())
                    .contains(
                            "Ring of twelve (ring), serial 7: routine",
                            "Invented for tests.",
                            "row  name      basis     left  surface seen  no view shows  cells  seen  in part  a glimpse"
                                    + "  maybe seen  not seen  no access  too coarse",
                            "r    Rotor  declared   83.4 %        16.6 %          0.0 %     24     4        0          0"
                                    + "           0        20          0           0",
                            "all         declared   87.5 %        12.5 %          0.0 %     32     4        0          0"
                                    + "           0        28          0           0",
                            "r: root 66.7 / 33.3 / 0.0 %, tip 100.0 / 0.0 / 0.0 %",
                            "Nothing counts yet, since no airfoil was identified (datum ROW N), in: v.",
                            "1 finding.")
                    .anyMatch(line -> line.startsWith("Declared: "));
        }

        @Test
        void tellsInWordsThatTheCountWasLost() {
            console.job("view p-r", "datum r 1", "turn on 90", "here 3");

            assertThat(console.run("coverage", "job").outLines())
                    .anyMatch(line ->
                            line.startsWith("Entry 4, blade 3 of r: the COUNT WAS LOST, 150.0° more was counted"));
        }

        @Test
        void namesAnUnknownRowWithThoseThereAre() {
            console.job();

            assertThat(console.run("coverage", "job", "--row", "x"))
                    .isEqualTo(new Console.Ran(2, "", "--row x: this engine has no such row; it has r, v\n"));
        }
    }

    @Test
    void isNeverAHundredPercentWhileSomethingIsOpen() {
        assertThat(JsonText.share(99_999, 100_000)).isEqualByComparingTo("0.9999");
        assertThat(JsonText.share(100_000, 100_000)).isEqualByComparingTo("1");
    }

    @Nested
    class Explaining {

        @BeforeEach
        void aQuarterTurnOfRoots() {
            console.job("view p-r", "datum r 1", "watch root", "turn on 90");
        }

        @Test
        void saysEntryByEntryWhyAZoneHasItsState() {
            Console.Ran ran = console.run("coverage", "job", "--row", "r", "--explain", "12", "root");

            assertThat(ran.status()).isZero();
            assertThat(ran.outLines())
                    .first()
                    .asString()
                    .startsWith("entry 4, through p-r: counted from 0.0° to 90.0°");
            assertThat(ran.outLines()).last().asString().startsWith("so blade 12 of Rotor (r), root is seen");
        }

        @Test
        void refusesWhatThereIsNot() {
            assertThat(console.run("coverage", "job", "--row", "r", "--explain", "13", "root")
                            .err())
                    .contains("row r has blades 1 to 12")
                    .hasLineCount(1);
            assertThat(console.run("coverage", "job", "--row", "r", "--explain", "1", "nose")
                            .err())
                    .contains("nose")
                    .hasLineCount(1);
            assertThat(console.run("coverage", "job", "--explain", "1", "tip"))
                    .satisfies(ran -> assertThat(ran.status()).isEqualTo(2));
        }
    }
}
