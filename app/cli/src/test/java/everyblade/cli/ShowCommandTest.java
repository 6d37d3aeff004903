package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowCommandTest {

    private static final Path EXAMPLES = Path.of("..", "..", "plugins", "json", "examples");
    private static final Path ROTOR_37 =
            Path.of("..", "picture", "src", "test", "resources", "everyblade", "picture", "section", "rotor-37");

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void open() {
        console = Console.in(folder);
    }

    private static String absolute(Path path) {
        return path.toAbsolutePath().normalize().toString();
    }

    @Test
    void drawsAModelOfBladeCounts() {
        Ran shown = console.run("show", "ring", "--out", "ring.svg");

        assertThat(shown).isEqualTo(new Ran(0, "", ""));
        assertThat(console.read("ring.svg"))
                .startsWith("<?xml")
                .contains("Ring of twelve (ring)", ">r · 12<", "<title>blade 12</title>");
    }

    @Test
    void drawsAPublishedRotorThatIsFoundSound() {
        assertThat(console.run("check", absolute(ROTOR_37)).err()).isEmpty();

        console.run("show", absolute(ROTOR_37), "--out", "r.svg");

        assertThat(console.read("r.svg")).contains("<title>wall casing</title>", "<title>blade 36</title>", ">pitch ");
    }

    @Test
    void drawsAMeshFromTheFileBesideTheModel() {
        console.run("show", absolute(EXAMPLES.resolve("missing-mesh/good")), "--out", "there.svg");
        Ran missing = console.run("show", absolute(EXAMPLES.resolve("missing-mesh/bad")), "--out", "missing.svg");

        assertThat(console.read("there.svg")).contains(">pitch ");
        assertThat(missing.status()).isEqualTo(2);
        assertThat(missing.err()).contains("blade.ply");
        assertThat(console.file("missing.svg")).doesNotExist();
    }

    @Test
    void writesPngAndPdfToo() throws IOException {
        console.run("show", "ring", "--out", "ring.png", "--row", "v");
        console.run("show", "ring", "--out", "ring.pdf", "--row", "v");

        assertThat(Files.readAllBytes(console.file("ring.png"))).startsWith(0x89, 'P', 'N', 'G');
        assertThat(Files.readAllBytes(console.file("ring.pdf"))).startsWith('%', 'P', 'D', 'F');
    }

    @Test
    void refusesOtherPicturesAndRowsThatThereAreNot() {
        assertThat(console.run("show", "ring", "--out", "ring.bmp").err()).contains(".svg, .png or .pdf");
        Ran none = console.run("show", "ring", "--out", "ring.svg", "--row", "x");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.errLines()).singleElement().asString().contains("it has r, v");
        assertThat(console.file("ring.svg")).doesNotExist();
    }
}
