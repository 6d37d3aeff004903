package everyblade.record;

import static everyblade.record.Jobs.entries;
import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.read;
import static everyblade.record.Jobs.started;
import static everyblade.record.Jobs.writer;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.record.JobFolder.InUse;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Torn;
import everyblade.record.JournalWriter.NotKept;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalWriterTest {

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

    @Nested
    class Keeping {

        @Test
        void givesBackWhatWasSaidInTheOrderInWhichItWasSaid() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                assertThat(keep(writer, Samples.DIVERSE.subList(0, 4)))
                        .extracting(JournalLine::k)
                        .containsExactly(1, 2, 3, 4);
                assertThat(keep(writer, Samples.DIVERSE.subList(4, 11)))
                        .extracting(JournalLine::k)
                        .endsWith(10, 11);
            }

            assertThat(entries(folder)).isEqualTo(Samples.DIVERSE);
        }

        @Test
        void keepsALongFileForTheSamePeopleAsBefore() throws IOException {
            assumeTrue(temp.getFileSystem().supportedFileAttributeViews().contains("posix"));
            started(folder);
            Set<PosixFilePermission> theirs = PosixFilePermissions.fromString("rw-rw----");
            Files.setPosixFilePermissions(file("journal.jsonl"), theirs);
            try (JournalWriter writer = writer(folder)) {
                keep(writer, Samples.notes(1, 250));
                keep(writer, Samples.notes(251, 252));
            }
            assertThat(entries(folder)).isEqualTo(Samples.notes(1, 252));
            assertThat(Files.getPosixFilePermissions(file("journal.jsonl"))).isEqualTo(theirs);
        }

        @Test
        void goesOnCountingWhenOpenedAgain() {
            started(folder);
            keep(folder, Samples.note(1), Samples.note(2));

            assertThat(keep(folder, Samples.note(3))).extracting(JournalLine::k).containsExactly(3);
            assertThat(folder.verify(Optional.empty()))
                    .isInstanceOfSatisfying(
                            Sound.class, sound -> assertThat(sound.entries()).isEqualTo(3));
        }

        @Test
        void makesTheSameBytesFromTheSameWordsSoThatAJobCanBeSavedElsewhere() throws IOException {
            JobFolder elsewhere = started(new JobFolder(new LocalDisk(), temp.resolve("elsewhere")));
            started(folder);
            keep(folder, Samples.DIVERSE.toArray(Addition[]::new));

            keep(elsewhere, entries(folder).toArray(Addition[]::new));

            assertThat(elsewhere.path().resolve(Journal.FILE)).hasSameBinaryContentAs(file(Journal.FILE));
        }

        @Test
        void refusesWhatWouldNotReadBackAndGoesOn() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                Addition halfACharacter = Samples.say("note \uD83D", new RecordEntry.Note("\uD83D"));

                assertThat(writer.append(List.of(Samples.note(1), halfACharacter)))
                        .isInstanceOfSatisfying(
                                NotKept.class, not -> assertThat(not.canGoOn()).isTrue());
                assertThat(keep(writer, List.of(Samples.note(1))))
                        .extracting(JournalLine::k)
                        .containsExactly(1);
            }
        }

        @Test
        void stopsWhenTheJournalWasRemovedUnderIt() throws IOException {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                Files.delete(file(Journal.FILE));

                assertThat(writer.append(List.of(Samples.note(1)))).isInstanceOf(NotKept.class);
            }
        }

        @Test
        void stopsWhenTheJournalWasReplacedUnderItByOneJustAsLong() throws IOException {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                Path copy = Files.copy(file(Journal.FILE), temp.resolve("copy"));
                Files.move(copy, file(Journal.FILE), StandardCopyOption.REPLACE_EXISTING);

                assertThat(writer.append(List.of(Samples.note(1)))).isInstanceOf(NotKept.class);
            }
        }

        @Test
        void refusesANumberThatNoLineCanHoldAndGoesOn() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                Addition endless =
                        Samples.say("heat 1 C", new LookEntry.Heat(Samples.said(new BigDecimal("1E+99999")), false));

                assertThat(writer.append(List.of(endless)))
                        .isInstanceOfSatisfying(
                                NotKept.class, not -> assertThat(not.canGoOn()).isTrue());
                assertThat(keep(writer, List.of(Samples.note(1)))).hasSize(1);
            }
        }

        @Test
        void stopsWithoutCuttingWhenSomethingElseWroteToTheJournal() throws IOException {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                Files.writeString(file(Journal.FILE), "from elsewhere", StandardOpenOption.APPEND);

                assertThat(writer.append(List.of(Samples.note(1)))).isInstanceOf(NotKept.class);
                assertThat(file(Journal.FILE)).content().endsWith("from elsewhere");
            }
        }
    }

    @Nested
    class ATornLastLine {

        private void tear(String bytes) throws IOException {
            started(folder);
            keep(folder, Samples.note(1));
            Files.writeString(file(Journal.FILE), bytes, StandardOpenOption.APPEND);
        }

        @Test
        void isReportedByVerifyWithItsLine() throws IOException {
            tear("{\"k\":2,\"at\"");

            assertThat(folder.verify(Optional.empty())).isInstanceOfSatisfying(Torn.class, torn -> {
                assertThat(torn.problem().line()).isEqualTo(3);
                assertThat(torn.entries()).isEqualTo(1);
            });
        }

        @Test
        void isLeftOutByReadersWhoSaySo() throws IOException {
            tear("{\"k\":2,\"at\"");

            assertThat(entries(folder)).containsExactly(Samples.note(1));
            assertThat(read(folder).notices())
                    .singleElement()
                    .extracting(English::said)
                    .asString()
                    .startsWith("Torn line: journal.jsonl line 3");
        }

        @Test
        void isSetAsideByTheNextWriterIntoAFileOfItsOwn() throws IOException {
            tear("{\"k\":2");
            try (JournalWriter writer = writer(folder)) {
                assertThat(writer.notices())
                        .singleElement()
                        .extracting(English::said)
                        .asString()
                        .contains("torn-1.txt");
                keep(writer, List.of(Samples.note(2)));
            }
            Files.writeString(file(Journal.FILE), "again", StandardOpenOption.APPEND);
            writer(folder).close();

            assertThat(file("torn-1.txt")).hasContent("{\"k\":2");
            assertThat(file("torn-2.txt")).hasContent("again");
            assertThat(entries(folder)).isEqualTo(Samples.notes(1, 2));
        }
    }

    @Nested
    class OneWriter {

        @Test
        void keepsASecondOneOutAndTellsWhoAndSinceWhen() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                keep(writer, List.of(Samples.note(1)));

                assertThat(folder.write("Ben Rim", Samples.TIME))
                        .isInstanceOfSatisfying(
                                InUse.class,
                                inUse -> assertThat(English.said(inUse.holder()))
                                        .startsWith("Ada Vane since 2026-03-01T08:00:00Z"));
                assertThat(entries(folder)).hasSize(1);
            }

            assertThat(keep(folder, Samples.note(2))).hasSize(1);
        }

        @Test
        void isStillTheOnlyOneAfterManyInTheSameProcessHaveAsked() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                for (int asked = 0; asked < 5; asked++) {
                    JobFolder other = new JobFolder(new LocalDisk(), folder.path());
                    assertThat(other.write("Ben Rim", Samples.TIME)).isInstanceOf(InUse.class);
                    assertThat(folder.write("Ben Rim", Samples.TIME)).isInstanceOf(InUse.class);
                }
                assertThat(keep(writer, List.of(Samples.note(1)))).hasSize(1);
            }
        }

        @Test
        void takesNothingMoreOnceClosed() {
            started(folder);
            JournalWriter writer = writer(folder);
            writer.close();

            assertThat(writer.append(List.of(Samples.note(1)))).isInstanceOf(NotKept.class);
            assertThat(entries(folder)).isEmpty();
        }
    }
}
