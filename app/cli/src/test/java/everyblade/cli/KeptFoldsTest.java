package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A long journal is opened from where it was folded before, and nothing but the time it takes tells. */
class KeptFoldsTest {

    private static final int ENTRIES = 1500;

    @TempDir
    Path folder;

    Console console;
    Console forgetful;

    @BeforeEach
    void aLongJob() throws IOException {
        forgetful = Console.in(folder);
        console = forgetful.with("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        console.start();
        List<String> entries = new ArrayList<>(List.of("view p-r", "datum r 1"));
        for (int i = entries.size(); i < ENTRIES; i++) {
            entries.add(
                    i % 7 == 0 ? "note number " + i : i % 50 == 0 ? "nick " + (1 + i % 12) + " tip 0.5" : "turn on 1");
        }
        console.write("entries.txt", String.join("\n", entries) + "\n");
        assertThat(console.run("log", "job", "--file", "entries.txt").status()).isZero();
        assertThat(kept()).hasSize(1);
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("fold-"))
                    .toList();
        }
    }

    /** Whatever a person asks, with and without the fold that is kept. */
    private void saysTheSameWithoutIt() {
        for (String[] asked : new String[][] {
            {"coverage", "job", "--json"},
            {"coverage", "job", "--row", "r", "--explain", "3", "tip"},
            {"gaps", "job"},
            {"next", "job", "--json"},
            {"findings", "job"},
            {"close", "job"},
            {"verify", "job"}
        }) {
            Ran with = console.run(asked);
            Ran without = forgetful.run(asked);
            assertThat(with.out()).as(String.join(" ", asked)).isEqualTo(without.out());
            assertThat(with.status()).isEqualTo(without.status());
        }
    }

    @Test
    void everyAnswerIsTheSame() {
        saysTheSameWithoutIt();
    }

    @Test
    void moreEntriesAndVoidsFollowAsAlways() {
        for (String entry : List.of(
                "turn on 30", "here 5", "void 100 because mistyped", "void 1503 because it was right", "look")) {
            assertThat(console.run("log", "job", entry).status()).as(entry).isZero();
        }
        assertThat(console.run("log", "job", "void 1 because wrong view").err()).contains("refused");
        saysTheSameWithoutIt();
    }

    @Test
    void whoTookOverIsStillSpeaking() {
        console.write("on.txt", "takeover Cy\n" + "note on\n".repeat(1500));
        assertThat(console.run("log", "job", "--file", "on.txt").status()).isZero();
        assertThat(console.run("log", "job", "look").status()).isZero();
        List<String> lines = console.journal();
        assertThat(lines.get(lines.size() - 1)).contains("\"by\":\"Cy\"");
        assertThat(console.run("log", "job", "void 1501 because he did not come")
                        .status())
                .isZero();
        assertThat(console.run("log", "job", "look").status()).isZero();
        lines = console.journal();
        assertThat(lines.get(lines.size() - 1)).contains("\"by\":\"Ann\"");
    }

    @Test
    void whatIsKeptTakesLittleRoom() throws IOException {
        assertThat(Files.size(kept().get(0))).isLessThan(100 * ENTRIES);
    }

    @Test
    void anotherJournalWithTheSameBeginningIsFoldedAnew() {
        List<String> lines = console.journal();
        console.write("job/journal.jsonl", String.join("\n", lines.subList(0, 400)) + "\n");
        saysTheSameWithoutIt();
        console.write("more.txt", "here 3\nround 3\n" + "note other\n".repeat(1500));
        assertThat(forgetful.run("log", "job", "--file", "more.txt").status()).isZero();
        saysTheSameWithoutIt();
    }

    @Test
    void aLineDamagedInTheFoldedPartIsStillFound() {
        console.write(
                "job/journal.jsonl", console.read("job/journal.jsonl").replace("note number 700", "note number 701"));
        for (String command : List.of("coverage", "verify")) {
            Ran ran = console.run(command, "job");
            assertThat(ran.status()).isNotZero();
            assertThat(ran.out() + ran.err()).contains("Damaged line: journal.jsonl line 70");
        }
        assertThat(console.run("log", "job", "look").status()).isEqualTo(2);
    }

    @Test
    void aDamagedOneIsThrownAway() throws IOException {
        Path fold = kept().get(0);
        byte[] bytes = Files.readAllBytes(fold);
        bytes[bytes.length / 2] ^= 1;
        Files.write(fold, bytes);
        saysTheSameWithoutIt();
    }
}
