package everyblade.record;

import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.read;
import static everyblade.record.Jobs.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.NotedHead;
import everyblade.record.JobFolder.Refused;
import everyblade.record.JobFolder.Sound;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobFolderTest {

    @TempDir
    Path temp;

    private JobFolder folder;

    @BeforeEach
    void aPlaceForAJob() {
        folder = new JobFolder(new LocalDisk(), temp.resolve("job"));
    }

    private Path file(String name) {
        return folder.path().resolve(name);
    }

    @Test
    void saysWhatAFolderWithoutJournalLacks() {
        String message =
                "No job: " + folder.path() + ": there is no journal.jsonl in it; name a job folder, or start one";

        assertThat(folder.read()).isEqualTo(folder.write("Ada Vane", Samples.TIME));
        assertThat(folder.read())
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(English.said(refused.problem())).isEqualTo(message));
        assertThat(folder.path()).doesNotExist();
    }

    @Test
    void opensNothingWhoseEngineModelIsNotTheOneFrozen() throws IOException {
        started(folder);
        Files.writeString(file("model/engine.json"), "{}");

        assertThat(folder.verify(Optional.empty()))
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(broken.problem().file()).isEqualTo("model/engine.json"));
        assertThat(folder.read()).isInstanceOf(Refused.class);
        assertThat(folder.write("Ada Vane", Samples.TIME)).isInstanceOf(Refused.class);
    }

    @Test
    void opensAJournalOfANewerMinorVersionForReadingOnlyAndSaysSo() throws IOException {
        started(folder);
        String line = Files.readString(file(Journal.FILE)).strip().replace("journal/1", "journal/1.3");
        String object = line.replaceFirst(",\"hash\":\"[0-9a-f]{64}\"}$", "}");
        String newer = new String(Chain.seal(Chain.START, object).bytes(), StandardCharsets.UTF_8) + "\n";
        Files.writeString(file(Journal.FILE), newer);

        assertThat(read(folder).notices())
                .singleElement()
                .extracting(English::said)
                .asString()
                .contains("version 1.3");
        assertThat(folder.write("Ada Vane", Samples.TIME))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(English.said(refused.problem()))
                                .isEqualTo(
                                        "Newer journal: journal.jsonl line 1: it is of version 1.3, this program writes version"
                                                + " 1.0; open it for reading, or use a newer program"));
        assertThat(file(Journal.FILE)).hasContent(newer);
    }

    @Test
    void findsLinesMissingAtTheEndByAHeadKeptElsewhere() throws IOException {
        started(folder);
        String first = keep(folder, Samples.note(1)).get(0).hash();
        byte[] shorter = Files.readAllBytes(file(Journal.FILE));
        String head = keep(folder, Samples.note(2)).get(0).hash();
        assertThat(folder.verify(noted(first))).isEqualTo(new Sound(2, head, OptionalInt.of(1)));

        Files.write(file(Journal.FILE), shorter);

        assertThat(folder.verify(Optional.empty())).isEqualTo(new Sound(1, first, OptionalInt.empty()));
        assertThat(folder.verify(noted(head)))
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(broken.problem().line()).isEqualTo(3));
    }

    @Test
    void writesToNoDamagedJournal() throws IOException {
        started(folder);
        keep(folder, Samples.note(1), Samples.note(2));
        byte[] before = Files.readString(file(Journal.FILE))
                .replace("number 1", "number 7")
                .getBytes(StandardCharsets.UTF_8);
        Files.write(file(Journal.FILE), before);

        assertThat(folder.write("Ada Vane", Samples.TIME))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.problem().line()).isEqualTo(2));
        assertThat(file(Journal.FILE)).hasBinaryContent(before);
    }

    private static Optional<NotedHead> noted(String hash) {
        return Optional.of(new NotedHead(hash, OptionalInt.empty()));
    }
}
