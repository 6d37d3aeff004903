package everyblade.record;

import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.started;
import static everyblade.record.Jobs.writer;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job that travels line by line and file by file arrives byte for byte, or not at all. */
class SentJobTest {

    @TempDir
    Path temp;

    private JobFolder folder;
    private JobFolder there;

    @BeforeEach
    void aJob() {
        folder = started(new JobFolder(new LocalDisk(), temp.resolve("job")));
        keep(folder, Samples.DIVERSE.toArray(Addition[]::new));
        there = new JobFolder(new LocalDisk(), temp.resolve("places").resolve("there"));
    }

    private SentJob sent() {
        return ((JobFolder.Ready) folder.send()).sent();
    }

    private static byte[] text(List<SealedLine> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line ->
                text.append(new String(line.bytes(), StandardCharsets.UTF_8)).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private JobFolder.Verification arrive(byte[] journal) {
        return there.<RuntimeException>arrive(receiver -> {
            for (String name : sent().files()) {
                receiver.file(name, folder.bytes(name));
            }
            receiver.file("journal.jsonl", journal);
        });
    }

    @Test
    void everyLineIsSentWithItsNumberAndHash() {
        SentJob sent = sent();

        assertThat(sent.journal()).hasSize(1 + Samples.DIVERSE.size());
        assertThat(sent.journal()).extracting(SealedLine::n).startsWith(0, 1, 2);
        assertThat(sent.journal().get(sent.journal().size() - 1).hash())
                .isEqualTo(Jobs.read(folder).journal().head());
        assertThat(sent.files()).containsExactly("model/engine.json");
    }

    @Test
    void whatArrivesIsWhatWasSent() throws IOException {
        assertThat(arrive(text(sent().journal()))).isInstanceOf(Sound.class);

        assertThat(Files.readAllBytes(there.path().resolve("journal.jsonl")))
                .isEqualTo(Files.readAllBytes(folder.path().resolve("journal.jsonl")));
        assertThat(temp.resolve("places")).isDirectoryContaining(path -> path.endsWith("there"));
    }

    @Test
    void ofAJournalThatIsNotSoundNothingIsLeft() {
        byte[] forged = new String(text(sent().journal()), StandardCharsets.UTF_8)
                .replace("heat 41 C", "heat 14 C")
                .getBytes(StandardCharsets.UTF_8);

        assertThat(arrive(forged)).isInstanceOf(Broken.class);
        assertThat(temp.resolve("places")).doesNotExist();
    }

    @Test
    void nothingArrivesOutsideItsFolder() {
        for (String name : List.of("../outside", "/etc/x", "photos/../../x", "run.sh", "model/engine.json/x")) {
            assertThat(there.<RuntimeException>arrive(receiver -> receiver.file(name, new byte[] {1})))
                    .isInstanceOfSatisfying(
                            Broken.class,
                            broken -> assertThat(English.said(broken.problem())).contains("is no file of a job"));
        }
        assertThat(temp.resolve("places")).doesNotExist();
        assertThat(temp.resolve("outside")).doesNotExist();
    }

    @Test
    void linesFromElsewhereFollowOnlyWhereTheyWereSealed() {
        arrive(text(sent().journal()));
        keep(folder, Samples.note(1), Samples.note(2));
        List<SealedLine> all = sent().journal();
        List<byte[]> later = new ArrayList<>();
        all.subList(all.size() - 2, all.size()).forEach(line -> later.add(line.bytes()));

        try (JournalWriter writer = writer(there)) {
            assertThat(writer.follow(later.subList(1, 2)))
                    .isInstanceOfSatisfying(
                            JournalWriter.NotKept.class,
                            not -> assertThat(not.canGoOn()).isTrue());
            assertThat(writer.follow(later)).isInstanceOf(JournalWriter.Kept.class);
            keep(writer, List.of(Samples.note(3)));
        }
        assertThat(there.verify(Optional.empty())).isInstanceOf(Sound.class);
        assertThat(Jobs.read(there).journal().lines()).hasSize(Samples.DIVERSE.size() + 3);
    }

    @Test
    void aFolderInWhichSomethingIsStaysAsItIs() throws IOException {
        Files.createDirectories(there.path());
        Files.writeString(there.path().resolve("mine.txt"), "mine");

        assertThat(arrive(text(sent().journal()))).isInstanceOf(Broken.class);
        assertThat(there.path()).isDirectoryContaining(path -> path.endsWith("mine.txt"));
        assertThat(temp.resolve("places"))
                .isDirectoryNotContaining(path -> path.toString().contains("arriving"));
    }
}
