package everyblade.record;

import static everyblade.record.Jobs.keep;
import static everyblade.record.Jobs.started;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Refused;
import everyblade.record.photo.CameraPicture;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A job that somebody else made: nothing in it leads out of it, and nothing of it never ends. */
@Timeout(60)
class ReceivedFolderTest {

    private static final String SECRET = "somebody else's file\n";

    @TempDir
    Path temporary;

    private JobFolder folder;
    private Path foreign;

    @BeforeEach
    void aJobWithAPicture() throws IOException {
        folder = started(new JobFolder(new LocalDisk(), temporary.resolve("job")));
        try (JournalWriter writer = Jobs.writer(folder)) {
            assertThat(writer.keepPhoto("blade.png", CameraPicture.png(1))).isEmpty();
        }
        keep(folder, Samples.note(1), Samples.say("photo blade.png", picture()));
        foreign = Files.writeString(temporary.resolve("foreign"), SECRET);
    }

    private static Entry picture() {
        try {
            return EntryParser.parse("photo blade.png");
        } catch (Refusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    private Path file(String name) {
        return folder.path().resolve(name);
    }

    /** Puts something else in the place of a file of the job. */
    private enum Trick {
        SYMBOLIC_LINK {
            @Override
            void play(Path place, Path foreign) throws IOException {
                Files.createSymbolicLink(place, foreign);
            }
        },
        HARD_LINK {
            @Override
            void play(Path place, Path foreign) throws IOException {
                Files.createLink(place, foreign);
            }
        },
        ENDLESS_DEVICE {
            @Override
            void play(Path place, Path foreign) throws IOException {
                assumeThat(Path.of("/dev/zero")).exists();
                Files.createSymbolicLink(place, Path.of("/dev/zero"));
            }
        },
        PIPE {
            @Override
            void play(Path place, Path foreign) throws IOException {
                Process made = new ProcessBuilder("mkfifo", place.toString()).start();
                try {
                    assumeThat(made.waitFor()).isZero();
                } catch (InterruptedException interrupted) {
                    Thread.currentThread().interrupt();
                }
            }
        },
        FOLDER {
            @Override
            void play(Path place, Path foreign) throws IOException {
                Files.createDirectory(place);
            }
        };

        abstract void play(Path place, Path foreign) throws IOException;
    }

    private static Stream<Trick> tricks() {
        return Stream.of(Trick.values());
    }

    /** Of the bytes that were there, so that only the kind of file is wrong. */
    private void play(Trick trick, String name) throws IOException {
        assumeThat(Files.getFileStore(temporary).supportsFileAttributeView("posix"))
                .isTrue();
        Path twin = Files.write(temporary.resolve("twin"), Files.readAllBytes(file(name)));
        Files.delete(file(name));
        trick.play(file(name), twin);
    }

    @ParameterizedTest
    @MethodSource("tricks")
    void aJournalThatIsNoPlainFileIsNotRead(Trick trick) throws IOException {
        play(trick, "journal.jsonl");
        assertThat(folder.read()).isInstanceOf(Refused.class);
        assertThat(folder.write("Ada Vane", Samples.TIME)).isInstanceOf(Refused.class);
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Broken.class);
    }

    @ParameterizedTest
    @MethodSource("tricks")
    void anEngineModelThatIsNoPlainFileIsNotRead(Trick trick) throws IOException {
        play(trick, "model/engine.json");
        assertThat(folder.read()).isInstanceOf(Refused.class);
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Broken.class);
    }

    @ParameterizedTest
    @MethodSource("tricks")
    void aPictureThatIsNoPlainFileIsNotRead(Trick trick) throws IOException {
        play(trick, "photos/blade.png");
        assertThat(folder.verify(Optional.empty()))
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(English.said(broken.problem())).contains("line 3", "photos/blade.png"));
        try (JournalWriter writer = Jobs.writer(folder)) {
            assertThat(writer.append(List.of(Samples.say("photo blade.png", picture()))))
                    .isInstanceOf(JournalWriter.NotKept.class);
        }
    }

    @ParameterizedTest
    @MethodSource("tricks")
    void aLockThatIsNoPlainFileEmptiesNothing(Trick trick) throws IOException {
        Files.deleteIfExists(file("writer.lock"));
        trick.play(file("writer.lock"), foreign);
        assertThat(folder.write("Ada Vane", Samples.TIME)).isInstanceOf(Refused.class);
        assertThat(foreign).hasContent(SECRET);
    }

    @Test
    void aLockThatLinksToNothingMakesNothing() throws IOException {
        Files.deleteIfExists(file("writer.lock"));
        Files.createSymbolicLink(file("writer.lock"), temporary.resolve("made"));
        assertThat(folder.write("Ada Vane", Samples.TIME)).isInstanceOf(Refused.class);
        assertThat(temporary.resolve("made")).doesNotExist();
    }

    @ParameterizedTest
    @MethodSource("foldersOfAJob")
    void aFolderThatIsALinkLeadsNowhere(String name) throws IOException {
        Path elsewhere = temporary.resolve("elsewhere");
        Files.move(file(name), elsewhere);
        Files.createSymbolicLink(file(name), elsewhere);
        assertThat(folder.verify(Optional.empty()))
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(English.said(broken.problem())).contains("symbolic link"));
    }

    private static Stream<String> foldersOfAJob() {
        return Stream.of("model", "photos");
    }

    @Test
    void aPictureIsNeverWrittenThroughALinkedFolder() throws IOException {
        Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
        Files.delete(file("photos/blade.png"));
        Files.delete(file("photos"));
        Files.createSymbolicLink(file("photos"), elsewhere);
        try (JournalWriter writer = Jobs.writer(folder)) {
            assertThat(writer.keepPhoto("other.png", CameraPicture.png(2))).isPresent();
        }
        assertThat(elsewhere).isEmptyDirectory();
    }

    @Test
    void whatIsFarLargerThanSuchFilesAreIsNotRead() throws IOException {
        for (String name : List.of("model/engine.json", "photos/blade.png", "journal.jsonl")) {
            byte[] before = Files.readAllBytes(file(name));
            try (FileChannel sparse = FileChannel.open(file(name), StandardOpenOption.WRITE)) {
                sparse.write(ByteBuffer.wrap(new byte[] {0}), 20L << 30);
            }
            assertThat(folder.verify(Optional.empty()))
                    .isInstanceOfSatisfying(
                            Broken.class,
                            broken -> assertThat(English.said(broken.problem())).contains("larger than"));
            Files.write(file(name), before);
        }
    }

    @Test
    void aLineThatNeverEndsIsNotHeldInMemory() throws IOException {
        byte[] journal = Files.readAllBytes(file("journal.jsonl"));
        try (FileChannel sparse = FileChannel.open(file("journal.jsonl"), StandardOpenOption.WRITE)) {
            sparse.write(ByteBuffer.wrap(new byte[] {0}), 500L << 20);
        }
        assertThat(folder.read())
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(English.said(refused.problem()))
                                .startsWith("Line not understood: journal.jsonl line 4: it is longer than any line"));
        assertThat(new String(journal, StandardCharsets.UTF_8).lines()).hasSize(3);
    }

    @Test
    void aJobThatTheUserNamesThroughALinkIsReadAsUsual() throws IOException {
        Path link = Files.createSymbolicLink(temporary.resolve("today"), folder.path());
        JobFolder linked = new JobFolder(new LocalDisk(), link);
        assertThat(linked.verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);
        assertThat(keep(linked, Samples.note(3))).hasSize(1);
    }
}
