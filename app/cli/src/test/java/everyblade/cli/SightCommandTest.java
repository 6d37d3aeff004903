package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SightCommandTest {

    /** One axial row between two cylinders, seen from ahead; invented for tests. */
    static final String BLADE = """
            { "schema": "everyblade/engine-model/1", "id": "blade", "name": "Blade",
              "walls": [ { "id": "hub", "curve": [[0, 60], [60, 60]] }, { "id": "casing", "curve": [[0, 100], [60, 100]] } ],
              "rows": [ { "id": "c1", "kind": "rotor", "count": 24, "source": "invented",
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ],
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 22, "stagger": 20, "camber": 20, "thickness": 0.08, "x": 20 },
                            { "span": 1, "chord": 22, "stagger": 50, "camber": 10, "thickness": 0.05, "x": 22 } ] } } ],
              "scopeTips": [ { "id": "t", "cone": 90, "near": 2, "far": 80, "pixels": 640, "diameter": 4 } ],
              "views": [ { "id": "v", "row": "c1", "scopeTip": "t", "stations": [
                { "id": "a", "x": 5, "r": 85, "clock": 0, "forward": [1, 0.3, 0], "up": [0, 0, 1],
                  "within": { "mm": 0, "deg": 0 } } ] } ] }
            """;

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void model() {
        console = Console.in(folder);
        console.write("blade/engine.json", BLADE);
    }

    @Test
    void everyFacetHasItsArcsPlaceAndDirection() throws IOException {
        Console.Ran ran = console.run("sight", "blade", "--view", "v", "--json");

        assertThat(ran.status()).isZero();
        JsonNode json = new ObjectMapper().readTree(ran.out());
        assertThat(json.get("row").textValue()).isEqualTo("c1");
        assertThat(json.get("airfoils").intValue()).isEqualTo(24);
        int shown = 0;
        for (JsonNode facet : json.get("facets")) {
            JsonNode normal = facet.get("normal");
            assertThat(Math.hypot(
                            Math.hypot(
                                    normal.get(0).doubleValue(), normal.get(1).doubleValue()),
                            normal.get(2).doubleValue()))
                    .isCloseTo(1, within(1e-9));
            for (JsonNode arc : facet.get("arcs")) {
                assertThat(arc.get(0).doubleValue()).isBetween(0.0, 360.0);
                assertThat(arc.get(1).doubleValue()).isGreaterThan(arc.get(0).doubleValue());
                shown++;
            }
        }
        assertThat(shown).isPositive();
    }

    /** With a further row right before the scope tip's eyes. */
    private void between(String kind, int count) {
        String section =
                "{ \"span\": %d, \"chord\": 6, \"stagger\": 30, \"camber\": 0, \"thickness\": 0.08, \"x\": 9 }";
        String row = "{ \"id\": \"s0\", \"kind\": \"" + kind + "\", \"count\": " + count
                + ", \"shape\": { \"type\": \"axial\", \"sections\": [ " + section.formatted(0) + ", "
                + section.formatted(1) + " ] } }, ";
        console.write("blade/engine.json", BLADE.replace("\"rows\": [", "\"rows\": [ " + row));
    }

    @Test
    void whatRowsBetweenHideStandsBesideTheArcsAndIsCalledOut() throws IOException {
        JsonNode open = new ObjectMapper()
                .readTree(console.run("sight", "blade", "--view", "v", "--json").out());
        assertThat(open.get("between")).isEmpty();
        assertThat(console.run("sight", "blade", "--view", "v", "--json").err()).isEmpty();

        between("rotor", 40);
        Console.Ran ran = console.run("sight", "blade", "--view", "v", "--json");
        JsonNode behind = new ObjectMapper().readTree(ran.out());
        assertThat(ran.err()).contains("s0").contains("0.0 % is left").hasLineCount(1);
        assertThat(behind.get("between").toString()).isEqualTo("[\"s0\"]");
        for (int i = 0; i < open.get("facets").size(); i++) {
            JsonNode facet = behind.get("facets").get(i);
            assertThat(facet.get("arcs")).isEqualTo(open.get("facets").get(i).get("arcs"));
            assertThat(facet.get("between")).isEqualTo(facet.get("arcs"));
        }
        assertThat(console.run("sight", "blade", "--view", "v").outLines())
                .filteredOn(line -> line.startsWith("root") || line.startsWith("tip"))
                .isNotEmpty()
                .allMatch(line -> line.matches("\\S+ +0\\.0 % +0\\.0 % .*"));
    }

    @Test
    void aStationSaysWhatItsToleranceCostsAndWhichWayMost() {
        console.write("loose/engine.json", BLADE.replace("\"mm\": 0, \"deg\": 0", "\"mm\": 2, \"deg\": 1"));

        assertThat(console.run("sight", "loose", "--view", "v").outLines())
                .anyMatch(
                        line -> line.matches(
                                "its tolerance of ± 2 mm and ± 1° costs: [0-9.]+ % of the airfoil surely in"
                                        + " sight, [0-9.]+ % if placed exactly; most costs (standing off|tilting).*if off only so\\)"));
        assertThat(console.run("sight", "blade", "--view", "v").out()).doesNotContain("costs");
    }

    @Test
    void theRootOfThePressureSideIsMostlyInTheShade() {
        Console.Ran ran = console.run("sight", "blade", "--view", "v");

        assertThat(ran.outLines())
                .anyMatch(line -> line.matches("root/pressure/leading +8\\.7 % +8\\.7 % .*"))
                .anyMatch(line -> line.matches("tip/pressure/middle +0\\.0 % .*turned away or grazing"));
    }

    @Test
    void aFinerDetailLeavesNoMoreInSight() throws IOException {
        String all = console.run("sight", "blade", "--view", "v", "--json").out();
        String fine = console.run("sight", "blade", "--view", "v", "--detail", "0.3mm", "--json")
                .out();

        assertThat(inSight(fine)).isPositive().isLessThan(inSight(all));
    }

    private static int inSight(String json) throws IOException {
        int facets = 0;
        for (JsonNode facet : new ObjectMapper().readTree(json).get("facets")) {
            facets += facet.get("arcs").isEmpty() ? 0 : 1;
        }
        return facets;
    }

    @Test
    void aMeshHasOneFaceAFacetAndAFileForEachWall() throws IOException {
        Console.Ran mesh = console.run("mesh", "blade", "--row", "c1", "--out", "b.ply", "--walls");

        assertThat(mesh.status()).isZero();
        int facets = new ObjectMapper()
                .readTree(console.run("sight", "blade", "--view", "v", "--json").out())
                .get("facets")
                .size();
        assertThat(Files.readString(folder.resolve("b.ply"))).contains("element face " + facets + "\n");
        for (String wall : List.of("hub", "casing")) {
            assertThat(folder.resolve("b-" + wall + ".ply")).isNotEmptyFile();
        }
    }
}
