package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record that is still the same gets the same answer, and any other gets its own. */
class KeptAnswersTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder)
                .with("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        console.start();
        assertThat(console.run("log", "job", "view p-r", "datum r 1", "turn on 120", "nick 3 tip 1 mm")
                        .status())
                .isZero();
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("answer-"))
                    .toList();
        }
    }

    @Test
    void isGivenAgainWithItsStatusWithoutBeingComputed() throws IOException {
        Ran first = console.run("gaps", "job", "--json");
        assertThat(first.status()).isEqualTo(1);
        assertThat(kept()).hasSize(1);
        assertThat(console.run("gaps", "job", "--json")).isEqualTo(first);
        assertThat(kept()).hasSize(1);
    }

    @Test
    void hangsOnTheQuestion() {
        for (String[] asked : new String[][] {
            {"coverage", "job"},
            {"coverage", "job", "--json"},
            {"coverage", "job", "--csv"},
            {"coverage", "job", "--row", "v"},
            {"coverage", "job", "--row", "r", "--explain", "3", "tip"},
            {"coverage", "job", "--row", "r", "--explain", "4", "tip"},
            {"gaps", "job"},
            {"gaps", "job", "--csv"},
            {"next", "job"},
            {"next", "job", "--json"},
            {"next", "job", "--finding", "4"}
        }) {
            Ran computed = Console.in(folder).run(asked);
            assertThat(console.run(asked)).isEqualTo(computed);
            assertThat(console.run(asked)).isEqualTo(computed);
        }
    }

    @Test
    void hangsOnEveryEntry() {
        Ran before = console.run("coverage", "job", "--json");
        console.run("log", "job", "turn on 30");
        Ran after = console.run("coverage", "job", "--json");
        assertThat(after.out())
                .isNotEqualTo(before.out())
                .isEqualTo(Console.in(folder).run("coverage", "job", "--json").out());
    }

    @Test
    void isNotGivenOfADamagedRecord() {
        console.run("coverage", "job");
        console.write("job/journal.jsonl", console.read("job/journal.jsonl").replace("turn on 120", "turn on 150"));
        Ran ran = console.run("coverage", "job");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("Damaged line");
    }

    @Test
    void leavesNothingUnsaidThatCameAboutSince() throws IOException {
        Files.write(folder.resolve("p.png"), Pictured.png(1));
        console.run("log", "job", "photo p.png of 3");
        assertThat(console.run("coverage", "job").out()).doesNotContain("Picture changed");
        Files.delete(folder.resolve("job/photos/p.png"));
        assertThat(console.run("coverage", "job").out()).contains("Picture changed");
        assertThat(console.run("coverage", "job", "--json").err()).contains("Picture changed");
    }

    @Test
    void isThrownAwayWhenSomebodyChangedIt() throws IOException {
        Ran computed = console.run("gaps", "job");
        Path answer = kept().get(0);
        byte[] bytes = Files.readAllBytes(answer);
        bytes[bytes.length - 3] ^= 1;
        Files.write(answer, bytes);
        assertThat(console.run("gaps", "job")).isEqualTo(computed);
    }
}
