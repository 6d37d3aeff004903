package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MapCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1", "turn on 90");
    }

    @Test
    void drawsAllRowsWithWhatTheJobIsAbout() {
        assertThat(console.run("map", "job", "--out", "map.svg")).isEqualTo(new Ran(0, "", ""));

        assertThat(console.read("map.svg"))
                .startsWith("<?xml")
                .contains("<svg", "Ring of twelve", "Invented for tests.", "routine");
    }

    @Test
    void drawsTheSameBytesAgainOverAnEarlierPicture() {
        console.run("map", "job", "--out", "map.svg", "--row", "r");
        String first = console.read("map.svg");
        console.write("map.svg", "something else");

        console.run("map", "job", "--out", "map.svg", "--row", "r");

        assertThat(console.read("map.svg")).isEqualTo(first);
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("job", "map.svg", "ring");
    }

    @Test
    void drawsPngAndPdf() throws IOException {
        assertThat(console.run("map", "job", "--out", "map.PNG", "--row", "r")).isEqualTo(new Ran(0, "", ""));
        assertThat(console.run("map", "job", "--out", "map.pdf", "--row", "r")).isEqualTo(new Ran(0, "", ""));

        assertThat(Files.readAllBytes(console.file("map.PNG"))).startsWith(0x89, 'P', 'N', 'G');
        assertThat(new String(Files.readAllBytes(console.file("map.pdf")), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }
}
