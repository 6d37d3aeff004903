package everyblade.record;

import static everyblade.record.Jobs.entries;
import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.read;
import static everyblade.record.Jobs.started;
import static everyblade.record.Jobs.writer;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.InUse;
import everyblade.record.JobFolder.Refused;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Torn;
import everyblade.record.JournalWriter.NotKept;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
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

    private List<String> around() throws IOException {
        try (Stream<Path> paths = Files.walk(temp)) {
            return paths.filter(path -> !path.equals(temp))
                    .map(path -> temp.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }

    @Nested
    class Starting {

        @Test
        void makesAFolderWithJournalModelAndPhotosAndNothingBesideIt() throws IOException {
            started(folder);

            assertThat(around())
                    .containsExactly("job", "job/journal.jsonl", "job/model", "job/model/engine.json", "job/photos");
            assertThat(read(folder).journal().beginning()).isEqualTo(Samples.BEGINNING);
            assertThat(read(folder).model().bytes()).isEqualTo(Samples.ENGINE);
        }

        @Test
        void makesMissingParents() {
            started(new JobFolder(new LocalDisk(), temp.resolve("2026/march/job")));

            assertThat(temp.resolve("2026/march/job/journal.jsonl")).exists();
        }

        @Test
        void takesAnEmptyFolder() throws IOException {
            Files.createDirectory(folder.path());

            started(folder);

            assertThat(entries(folder)).isEmpty();
        }

        @Test
        void refusesAFolderWithAnythingInItAndLeavesItAlone() throws IOException {
            Files.createDirectory(folder.path());
            Files.writeString(file("mine.txt"), "mine");

            Optional<Problem> problem = folder.start(Samples.BEGINNING, Samples.ENGINE);

            assertThat(problem.orElseThrow().message())
                    .isEqualTo("Job not started: " + folder.path()
                            + ": something is there already; name a folder that is not there yet");
            assertThat(around()).containsExactly("job", "job/mine.txt");
        }

        @Test
        void refusesAPlaceTakenByAFile() throws IOException {
            Files.writeString(folder.path(), "mine");

            assertThat(folder.start(Samples.BEGINNING, Samples.ENGINE)).isPresent();
            assertThat(around()).containsExactly("job");
        }
    }

    @Nested
    class Keeping {

        @Test
        void givesBackWhatWasSaidInTheOrderInWhichItWasSaid() {
            started(folder);
            try (JournalWriter writer = writer(folder)) {
                assertThat(keep(writer, Samples.DIVERSE.subList(0, 4)))
                        .extracting(Line::k)
                        .containsExactly(1, 2, 3, 4);
                assertThat(keep(writer, Samples.DIVERSE.subList(4, 11)))
                        .extracting(Line::k)
                        .endsWith(10, 11);
            }

            assertThat(entries(folder)).isEqualTo(Samples.DIVERSE);
        }

        @Test
        void goesOnCountingWhenOpenedAgain() {
            started(folder);
            keep(folder, Samples.note(1), Samples.note(2));

            assertThat(keep(folder, Samples.note(3))).extracting(Line::k).containsExactly(3);
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
                Addition halfACharacter = Samples.say("note \uD83D", new Entry.Note("\uD83D"));

                assertThat(writer.append(List.of(Samples.note(1), halfACharacter)))
                        .isInstanceOfSatisfying(
                                NotKept.class, not -> assertThat(not.canGoOn()).isTrue());
                assertThat(keep(writer, List.of(Samples.note(1))))
                        .extracting(Line::k)
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
                        Samples.say("heat 1 C", new Entry.Heat(Samples.said(new BigDecimal("1E+99999")), false));

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
            assertThat(read(folder).notices()).singleElement().asString().startsWith("Torn line: journal.jsonl line 3");
        }

        @Test
        void isSetAsideByTheNextWriterIntoAFileOfItsOwn() throws IOException {
            tear("{\"k\":2");
            try (JournalWriter writer = writer(folder)) {
                assertThat(writer.notices()).singleElement().asString().contains("torn-1.txt");
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
                                inUse -> assertThat(inUse.holder()).startsWith("Ada Vane since 2026-03-01T08:00:00Z"));
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

    @Nested
    class Refusing {

        @Test
        void saysWhatAFolderWithoutJournalLacks() {
            String message =
                    "No job: " + folder.path() + ": there is no journal.jsonl in it; name a job folder, or start one";

            assertThat(folder.read()).isEqualTo(folder.write("Ada Vane", Samples.TIME));
            assertThat(folder.read())
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.problem().message()).isEqualTo(message));
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

            assertThat(read(folder).notices()).singleElement().asString().contains("version 1.3");
            assertThat(folder.write("Ada Vane", Samples.TIME))
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.problem().message())
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
            assertThat(folder.verify(Optional.of(first))).isEqualTo(new Sound(2, head));

            Files.write(file(Journal.FILE), shorter);

            assertThat(folder.verify(Optional.empty())).isEqualTo(new Sound(1, first));
            assertThat(folder.verify(Optional.of(head)))
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
    }
}
