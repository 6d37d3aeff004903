package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.record.ReviewWriter.Kept;
import everyblade.record.ReviewWriter.NotKept;
import everyblade.record.ReviewWriter.Said;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class ReviewTest {

    @TempDir
    Path temp;

    private JobFolder folder;

    @BeforeEach
    void aJobOfTwoEntries() {
        folder = Jobs.started(new JobFolder(new LocalDisk(), temp.resolve("job")));
        Jobs.keep(folder, Samples.note(1), Samples.note(2));
    }

    private Path file() {
        return folder.path().resolve(Review.FILE);
    }

    private Said say(What what, String text, Optional<ReviewedPlace> place, OptionalInt of) {
        Journal journal = Jobs.read(folder).journal();
        return new Said(
                Samples.TIME, "R. Viewer", journal.head(), journal.lines().size(), what, text, place, of);
    }

    private Said question(String text) {
        return say(
                What.QUESTION, text, Optional.of(new ReviewedPlace("c1", 14, 16, "tip/pressure")), OptionalInt.empty());
    }

    private ReviewWriter writer() {
        ReviewFile.Writing writing = folder.review().write("R. Viewer", Samples.TIME, first());
        assertThat(writing).isInstanceOf(ReviewFile.Writable.class);
        return ((ReviewFile.Writable) writing).writer();
    }

    private String first() {
        return Jobs.read(folder).journal().firstHash();
    }

    private List<ReviewRemark> keep(Said... said) {
        try (ReviewWriter writer = writer()) {
            ReviewWriter.Appended appended = writer.append(List.of(said));
            assertThat(appended).isInstanceOf(Kept.class);
            return ((Kept) appended).remarks();
        }
    }

    private Review read() {
        ReviewFile.Reading reading = folder.review().read(first());
        assertThat(reading).isInstanceOf(ReviewFile.Readable.class);
        return ((ReviewFile.Readable) reading).review();
    }

    private RecordProblem refused() {
        ReviewFile.Reading reading = folder.review().read(first());
        assertThat(reading).isInstanceOf(ReviewFile.Refused.class);
        return ((ReviewFile.Refused) reading).problem();
    }

    private RecordProblem broken() {
        Verification found = folder.verify(Optional.empty());
        assertThat(found).isInstanceOf(Broken.class);
        return ((Broken) found).problem();
    }

    private Map<String, byte[]> contents() throws IOException {
        Map<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder.path())) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                contents.put(folder.path().relativize(path).toString(), Files.readAllBytes(path));
            }
        }
        return contents;
    }

    @Test
    void givesBackWhatWasSaid() {
        List<ReviewRemark> kept = new ArrayList<>(keep(
                say(What.WANTED, "the roots, süß & \"<b>\"", Optional.empty(), OptionalInt.empty()),
                say(What.SHOWN, "", Optional.empty(), OptionalInt.empty())));
        kept.addAll(
                keep(question("what is the shadow"), say(What.WITHDRAWN, "seen", Optional.empty(), OptionalInt.of(3))));

        assertThat(read().remarks()).isEqualTo(kept);
        assertThat(kept).extracting(ReviewRemark::number).containsExactly(1, 2, 3, 4);
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
    }

    @Test
    void readingTouchesNothingAndRemarksTouchNothingOfTheRecord() throws IOException {
        Map<String, byte[]> before = contents();

        assertThat(read()).isEqualTo(Review.NONE);
        assertThat(contents()).containsExactlyEntriesOf(before);

        keep(question("what is the shadow"));
        Map<String, byte[]> after = contents();
        assertThat(after.keySet()).contains(Review.FILE, "review.lock").hasSize(before.size() + 2);
        before.forEach((name, bytes) -> assertThat(after.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void aReviewerAndTheTechnicianWriteAtTheSameTimeButNotTwoReviewers() {
        try (JournalWriter technician = Jobs.writer(folder);
                ReviewWriter reviewer = writer()) {
            Jobs.keep(technician, List.of(Samples.note(3)));
            assertThat(reviewer.append(List.of(question("and this")))).isInstanceOf(Kept.class);

            assertThat(folder.review().write("S. Body", Samples.TIME, first()))
                    .isInstanceOfSatisfying(
                            ReviewFile.Refused.class,
                            refused ->
                                    assertThat(English.said(refused.problem())).contains("Review in use", "R. Viewer"));
        }
    }

    @Test
    void whatWouldNotReadBackIsRefusedAndNothingIsLeftOfIt() throws IOException {
        keep(question("one"));
        byte[] before = Files.readAllBytes(file());
        try (ReviewWriter writer = writer()) {
            assertThat(writer.append(List.of(question("two"), question("half a character \uD83D"))))
                    .isInstanceOf(NotKept.class);
            assertThat(writer.append(List.of(question("x".repeat(600_000))))).isInstanceOf(NotKept.class);
        }
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Nested
    class Verifying {

        @Test
        void findsEveryByteThatWasChanged() throws IOException {
            keep(question("one"), question("two"));
            byte[] sound = Files.readAllBytes(file());
            for (int at = 0; at < sound.length; at += 31) {
                byte[] changed = sound.clone();
                changed[at] ^= 1;
                Files.write(file(), changed);
                assertThat(English.said(broken())).as("byte " + at).contains("review.jsonl line");
            }
        }

        @Test
        void findsALineThatIsMissingOrTwice() throws IOException {
            keep(question("one"), question("two"), question("three"));
            List<String> lines = Files.readAllLines(file());
            for (List<Integer> kept :
                    List.of(List.of(0, 2, 3), List.of(0, 1, 1, 2, 3), List.of(0, 2, 1, 3), List.of(1, 2))) {
                Files.write(file(), kept.stream().map(lines::get).toList());
                assertThat(English.said(broken().what())).isEqualTo("Damaged line");
            }
        }

        @Test
        void findsThatItIsOfAnotherJob() throws IOException {
            keep(question("one"));
            byte[] review = Files.readAllBytes(file());
            JobFolder other = new JobFolder(new LocalDisk(), temp.resolve("other"));
            assertThat(other.start(
                            new Beginning(
                                    Samples.TIME.plusSeconds(1),
                                    "Ada Vane",
                                    "invented-1",
                                    "SN 0007",
                                    "again",
                                    new TreeMap<>(),
                                    Optional.empty()),
                            Samples.ENGINE))
                    .isEmpty();
            folder = other;
            Files.write(file(), review);

            assertThat(English.said(broken().what())).isEqualTo("Review of another job");
            assertThat(refused()).isEqualTo(broken());
        }

        @Test
        void findsAJournalThatWasCutShortOrWrittenAnewAfterItWasReviewed() throws IOException {
            keep(question("one"));
            Path journal = folder.path().resolve(Journal.FILE);
            List<String> lines = Files.readAllLines(journal);
            Files.write(journal, lines.subList(0, 2));
            assertThat(English.said(broken())).contains("Lines missing", "remark 1", "cut short");

            Jobs.keep(folder, Samples.note(7));
            assertThat(English.said(broken())).contains("Journal rewritten", "journal.jsonl line 3", "remark 1");
            assertThat(read().unbound(Jobs.read(folder).journal())).contains(broken());
        }

        @Test
        void toleratesThatTheTechnicianWentOn() {
            keep(question("one"));
            Jobs.keep(folder, Samples.note(3));

            assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
            assertThat(read().unbound(Jobs.read(folder).journal())).isEmpty();
        }

        @Test
        void tellsATornLineWhichTheNextReviewerSetsAside() throws IOException {
            keep(question("one"));
            Files.write(file(), "{\"n\":2".getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);

            assertThat(English.said(broken())).contains("Torn line", "review.jsonl line 3");
            assertThat(read().remarks()).hasSize(1);
            try (ReviewWriter writer = writer()) {
                assertThat(writer.setAside()).contains("torn-1.txt");
                assertThat(writer.append(List.of(question("two")))).isInstanceOf(Kept.class);
            }
            assertThat(read().remarks()).hasSize(2);
            assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
        }
    }

    @Test
    void isReadFromPlainFilesOnly() throws IOException {
        Path elsewhere = Files.writeString(temp.resolve("elsewhere"), "somebody else's\n");
        try {
            Files.createSymbolicLink(file(), elsewhere);
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            assumeThat(false).isTrue();
        }
        assertThat(refused().file()).isEqualTo(Review.FILE);
        assertThat(folder.review().write("R. Viewer", Samples.TIME, first())).isInstanceOf(ReviewFile.Refused.class);
        assertThat(elsewhere).hasContent("somebody else's\n");
    }

    @Test
    void losesNothingThatWasAcknowledgedWhereverTheDiskRefuses() {
        int steps = 0;
        for (Fault.Kind kind : List.of(Fault.Kind.values())) {
            for (int step = 0; step < 16; step++) {
                SimulatedDisk disk = PowerCutTest.emptyDisk();
                folder = Jobs.started(new JobFolder(disk, Shift.JOB));
                Said one = question("one");
                Said two = question("two");
                String first = first();
                SimulatedDisk failing = disk.with(new Fault(step, 3, kind));
                int promised = 0;
                try {
                    if (new JobFolder(failing, Shift.JOB).review().write("R. Viewer", Samples.TIME, first)
                            instanceof ReviewFile.Writable writable) {
                        for (Said said : List.of(one, two)) {
                            promised += writable.writer().append(List.of(said)) instanceof Kept ? 1 : 0;
                        }
                        writable.writer().close();
                    }
                } catch (SimulatedDisk.PowerCut cut) {
                    // what stands is seen below
                }
                folder = new JobFolder(failing.afterPowerCut(new java.util.BitSet()), Shift.JOB);
                assertThat(read().remarks()).hasSizeGreaterThanOrEqualTo(promised);
                assertThat(keep(question("three"))).hasSize(1);
                assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
                steps++;
            }
        }
        assertThat(steps).isPositive();
    }
}
