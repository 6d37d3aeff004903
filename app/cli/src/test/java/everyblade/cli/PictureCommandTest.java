package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PictureCommandTest {

    /** One axial row between two cylinders, seen from ahead; invented for tests. */
    private static final String BLADE = """
            { "schema": "everyblade/engine-model/1", "id": "blade", "name": "Blade", "notice": "Invented for tests.",
              "walls": [ { "id": "hub", "curve": [[0, 60], [60, 60]] }, { "id": "casing", "curve": [[0, 100], [60, 100]] } ],
              "rows": [ { "id": "c1", "name": "First rotor", "kind": "rotor", "count": 24, "source": "invented",
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ],
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 22, "stagger": 20, "camber": 20, "thickness": 0.08, "x": 20 },
                            { "span": 1, "chord": 22, "stagger": 50, "camber": 10, "thickness": 0.05, "x": 22 } ] } },
                        { "id": "c2", "kind": "rotor", "count": 9, "landmarks": [ { "airfoil": 1, "what": "etched" } ] } ],
              "scopeTips": [ { "id": "t", "cone": 90, "near": 2, "far": 80, "pixels": 200, "diameter": 4 } ],
              "views": [ { "id": "v", "row": "c1", "scopeTip": "t", "reference": 6, "stations": [
                { "id": "a", "x": 5, "r": 85, "clock": 0, "forward": [1, 0.3, 0], "up": [0, 0, 1],
                  "within": { "mm": 0, "deg": 0 } } ] },
                { "id": "w", "row": "c2", "reference": 0, "window": { "halfWidth": 5, "shows": ["all"] } } ] }
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
    void drawsAnAirfoilUnrolledInEachFormat() throws IOException {
        for (String name : new String[] {"p.svg", "p.PNG", "p.pdf"}) {
            assertThat(console.run("picture", "blade", "--view", "v", "--out", name))
                    .isEqualTo(new Ran(0, "", ""));
        }

        assertThat(console.read("p.svg"))
                .startsWith("<?xml")
                .contains("First rotor (c1), view v, station a", "Invented for tests.", "turned away or grazing");
        assertThat(Files.readAllBytes(console.file("p.PNG"))).startsWith(0x89, 'P', 'N', 'G');
        assertThat(new String(Files.readAllBytes(console.file("p.pdf")), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void drawsWhatTheScopeTipSeesFromTheReferenceUnlessToldOtherwise() throws IOException {
        console.run("picture", "blade", "--view", "v", "--kind", "tip", "--out", "usual.png");
        console.run("picture", "blade", "--view", "v", "--kind", "tip", "--at", "6", "--out", "six.png");
        Ran ran = console.run("picture", "blade", "--view", "v", "--kind", "tip", "--at", "9,5", "--out", "other.png");

        assertThat(ran).isEqualTo(new Ran(0, "", ""));
        assertThat(Files.readAllBytes(console.file("six.png")))
                .isEqualTo(Files.readAllBytes(console.file("usual.png")));
        assertThat(Files.readAllBytes(console.file("other.png")))
                .isNotEqualTo(Files.readAllBytes(console.file("usual.png")));
    }

    @Test
    void drawsLightOnDarkAndWithADetail() {
        console.run("picture", "blade", "--view", "v", "--out", "light.svg");
        console.run("picture", "blade", "--view", "v", "--out", "dark.svg", "--dark", "--detail", "0.4mm");

        assertThat(console.read("light.svg")).contains("#ffffff").doesNotContain("fine enough for");
        assertThat(console.read("dark.svg")).contains("#10161d", "fine enough for 0.4 mm");
    }

    static Stream<Arguments> wrongUses() {
        return Stream.of(
                Arguments.of("there is no such picture; say unrolled or tip", "v", "p.png", "--kind flat"),
                Arguments.of("end the name with .png", "v", "p.svg", "--kind tip"),
                Arguments.of("end the name with .svg", "v", "p.gif", ""),
                Arguments.of("shows the whole turn", "v", "p.svg", "--at 5"),
                Arguments.of("is no number of deg", "v", "p.png", "--kind tip --at noon"),
                Arguments.of("no such view; it has v, w", "x", "p.svg", ""),
                Arguments.of("view v has a", "v", "p.svg", "--station b"),
                Arguments.of("only a stated window", "w", "p.svg", ""),
                Arguments.of("a detail has a size", "v", "p.svg", "--detail 0"),
                Arguments.of("its folder is not there", "v", "nowhere/p.svg", ""));
    }

    @ParameterizedTest
    @MethodSource("wrongUses")
    void refusesWrongUseInOneLineAndWritesNothing(String says, String view, String out, String more) {
        String[] arguments = Stream.concat(
                        Stream.of("picture", "blade", "--view", view, "--out", out),
                        Stream.of(more.split(" ")).filter(word -> !word.isEmpty()))
                .toArray(String[]::new);

        Ran ran = console.run(arguments);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.errLines()).singleElement().asString().contains(says);
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("ring", "blade");
    }
}
