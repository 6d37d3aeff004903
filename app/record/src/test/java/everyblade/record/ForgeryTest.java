package everyblade.record;

import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Refusal;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.NotedHead;
import everyblade.record.JobFolder.Sound;
import everyblade.record.photo.CameraPicture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What somebody may do to a record who has it in a folder of their own and knows how lines are sealed, and what is found.
 * The record has seven entries, one of them with a picture.
 */
class ForgeryTest {

    @TempDir
    Path temporary;

    private JobFolder folder;
    private List<String> lines;

    @BeforeEach
    void aRecord() throws IOException {
        folder = started(new JobFolder(new LocalDisk(), temporary.resolve("job")));
        try (JournalWriter writer = Jobs.writer(folder)) {
            assertThat(writer.keepPhoto("blade.png", CameraPicture.png(1))).isEmpty();
        }
        keep(
                folder,
                said("view p1-c1"),
                said("datum c1 1"),
                said("turn on 38"),
                said("crack 14 tpl 1.2"),
                said("photo blade.png of 14 tpl"),
                said("turn on 322"),
                said("here 1"));
        lines = new ArrayList<>(Files.readAllLines(journal()));
    }

    private static Addition said(String text) {
        try {
            return Samples.say(text, EntryParser.parse(text));
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    private Path journal() {
        return folder.path().resolve("journal.jsonl");
    }

    private static String withoutHash(String line) {
        return line.replaceFirst(",\"hash\":\"[0-9a-f]{64}\"}$", "}");
    }

    private static String hash(String line) {
        return line.substring(line.length() - 66, line.length() - 2);
    }

    /** Writes the journal of these lines, each sealed anew after the one before: what a forger would do. */
    private void resealed(List<String> objects) throws IOException {
        StringBuilder journal = new StringBuilder();
        String head = Chain.START;
        for (String object : objects) {
            Chain.Sealed sealed = Chain.seal(head, withoutHash(object));
            journal.append(new String(sealed.bytes(), StandardCharsets.UTF_8)).append('\n');
            head = sealed.hash();
        }
        Files.writeString(journal(), journal);
    }

    private void resealed(int line, UnaryOperator<String> change) throws IOException {
        List<String> changed = new ArrayList<>(lines);
        changed.set(line - 1, change.apply(withoutHash(changed.get(line - 1))));
        assertThat(changed).isNotEqualTo(lines);
        resealed(changed);
    }

    private RecordProblem found() {
        return found(Optional.empty());
    }

    private RecordProblem found(Optional<NotedHead> noted) {
        assertThat(folder.verify(noted)).isInstanceOf(Broken.class);
        return ((Broken) folder.verify(noted)).problem();
    }

    private static Optional<NotedHead> noted(String hash, int entry) {
        return Optional.of(new NotedHead(hash, OptionalInt.of(entry)));
    }

    private static Optional<NotedHead> noted(String hash) {
        return Optional.of(new NotedHead(hash, OptionalInt.empty()));
    }

    @Test
    void isSoundAsItIs() {
        assertThat(folder.verify(Optional.empty())).isEqualTo(new Sound(7, hash(lines.get(7)), OptionalInt.empty()));
    }

    @Nested
    class ALineSealedAnew {

        @Test
        void whoseMeaningIsNoLongerItsTextIsNamed() throws IOException {
            resealed(4, line -> line.replace("\"number\":38", "\"number\":360"));
            assertThat(English.said(found()))
                    .startsWith(
                            "Text and meaning differ: journal.jsonl line 4: its text says \"turn on 38\", but what counts"
                                    + " of it means \"turn on 360");
        }

        @Test
        void whoseTextIsNoLongerItsMeaningIsNamed() throws IOException {
            resealed(5, line -> line.replace("\"text\":\"crack 14 tpl 1.2\"", "\"text\":\"coating 14 tpl 1.2\""));
            assertThat(English.said(found().what())).isEqualTo("Text and meaning differ");
            assertThat(found().line()).isEqualTo(5);
        }

        @Test
        void whoseTextIsNoEntryIsNamed() throws IOException {
            resealed(5, line -> line.replace("\"text\":\"crack 14 tpl 1.2\"", "\"text\":\"nothing to be seen\""));
            assertThat(English.said(found())).contains("journal.jsonl line 5", "is no entry", "means \"find crack 14");
        }

        @Test
        void isToldToWhoeverOnlyReads() throws IOException {
            assertThat(folder.doubts(Jobs.read(folder).journal())).isEmpty();
            resealed(4, line -> line.replace("\"number\":38", "\"number\":360"));
            assertThat(folder.doubts(Jobs.read(folder).journal()))
                    .singleElement()
                    .satisfies(doubt -> assertThat(doubt.line()).isEqualTo(4));
        }

        @Test
        void withAKeyThatIsNotKnownIsRefused() throws IOException {
            resealed(4, line -> line.replace("\"live\":", "\"seen\":true,\"live\":"));
            assertThat(English.said(found())).contains("line 4", "the key \"seen\" is not known");
            resealed(4, line -> line.replace("\"number\":38", "\"number\":38,\"sure\":true"));
            assertThat(English.said(found())).contains("line 4", "the key \"sure\" is not known");
            resealed(1, line -> line.replace("\"serial\":", "\"owner\":\"x\",\"serial\":"));
            assertThat(English.said(found())).contains("line 1", "the key \"owner\" is not known");
        }

        @Test
        void withAKeyTwiceIsRefused() throws IOException {
            resealed(4, line -> line.replace("\"text\":", "\"text\":\"look\",\"text\":"));
            assertThat(English.said(found())).contains("line 4", "Duplicate field 'text'");
            resealed(4, line -> line.replace("\"number\":38", "\"number\":38,\"number\":360"));
            assertThat(English.said(found())).contains("line 4", "Duplicate field 'number'");
            resealed(1, line -> line.replace("\"settings\":{", "\"settings\":{\"grazing\":0,"));
            assertThat(English.said(found())).contains("line 1", "Duplicate field 'grazing'");
        }

        @Test
        void thatCallsItselfNewerIsNotCalledSound() throws IOException {
            resealed(1, line -> line.replace("everyblade/journal/1", "everyblade/journal/1.1"));
            assertThat(English.said(found())).startsWith("Newer journal: journal.jsonl line 1");
        }
    }

    @Nested
    class AHeadNotedElsewhere {

        @Test
        void saysWhichEntriesCameAfterIt() {
            for (int entry = 0; entry <= 7; entry++) {
                assertThat(folder.verify(noted(hash(lines.get(entry)))))
                        .isEqualTo(new Sound(7, hash(lines.get(7)), OptionalInt.of(entry)));
            }
        }

        @Test
        void tellsAShortenedChainFromARewrittenOne() throws IOException {
            String head = hash(lines.get(6));
            resealed(lines.subList(0, 5));
            assertThat(English.said(found(noted(head, 6))))
                    .startsWith("Lines missing: journal.jsonl line 6: ")
                    .contains("ends with entry 4", "cut short");

            resealed(4, line -> line.replace("turn on 38", "turn on 39").replace("\"number\":38", "\"number\":39"));
            assertThat(folder.verify(Optional.empty()))
                    .as("without a head kept elsewhere")
                    .isInstanceOf(Sound.class);
            assertThat(English.said(found(noted(head, 6))))
                    .startsWith("Journal rewritten: journal.jsonl line 7: ")
                    .contains("written anew");
        }

        @Test
        void withoutItsNumberSaysThatItMayBeEither() throws IOException {
            resealed(lines.subList(0, 5));
            assertThat(English.said(found(noted(hash(lines.get(6))))))
                    .startsWith("Lines missing or rewritten: journal.jsonl line 6: ");
        }
    }

    @Nested
    class AFileBesideTheJournal {

        @Test
        void aPictureThatIsAnotherIsNamedWithItsLine() throws IOException {
            Files.write(folder.path().resolve("photos/blade.png"), CameraPicture.png(2));
            assertThat(English.said(found()))
                    .startsWith(
                            "Picture changed: journal.jsonl line 6: its picture photos/blade.png is not the one that was"
                                    + " kept");
            assertThat(folder.doubts(Jobs.read(folder).journal())).hasSize(1);
        }

        @Test
        void aPictureThatIsGoneIsNamedWithItsLine() throws IOException {
            Files.delete(folder.path().resolve("photos/blade.png"));
            assertThat(English.said(found()))
                    .contains("line 6: its picture photos/blade.png cannot be read: it is not there");
        }

        @Test
        void aPictureElsewhereIsNotReadWhateverTheLineNames() throws IOException {
            Files.write(temporary.resolve("blade.png"), CameraPicture.png(1));
            resealed(
                    6,
                    line -> line.replace(
                            "\"file\":\"blade.png\",\"sha256\"", "\"file\":\"../../blade.png\",\"sha256\""));
            assertThat(English.said(found())).contains("line 6: its picture photos/../../blade.png has no usable name");
        }

        @Test
        void anEngineModelThatIsAnotherIsNamed() throws IOException {
            Files.writeString(folder.path().resolve("model/engine.json"), "{}");
            assertThat(English.said(found())).startsWith("Engine model changed: model/engine.json: ");
        }
    }

    @Test
    void everyKindOfEntryAgreesWithItsText() {
        Entry entry = Samples.DIVERSE.get(0).means();
        assertThat(entry).isInstanceOf(LookEntry.View.class);
        assertThat(Samples.DIVERSE)
                .allSatisfy(said -> assertThat(RecordCheck.contradiction(new JournalLine(1, said, "")))
                        .isEmpty());
    }
}
