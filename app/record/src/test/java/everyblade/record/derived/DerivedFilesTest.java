package everyblade.record.derived;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DerivedFilesTest {

    private static final byte[] CONTENT = "computed at length".getBytes(UTF_8);

    @TempDir
    private Path home;

    private Path folder;

    @BeforeEach
    void inACache() {
        folder = home.resolve("cache/everyblade");
    }

    private DerivedFiles files() {
        return DerivedFiles.in(folder, () -> "1.0");
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(".kept"))
                    .sorted()
                    .toList();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).toList();
        }
    }

    @Test
    void whatWasKeptIsFoundByTheNextProgramOfThisUser() {
        files().keep("sight", "model 7", CONTENT);
        assertThat(files().find("sight", "model 7")).contains(CONTENT);
    }

    @Test
    void itIsFoundUnderItsOwnKindKeyAndProgramVersionAlone() {
        files().keep("sight", "model 7", CONTENT);
        assertThat(files().find("fold", "model 7")).isEmpty();
        assertThat(files().find("sight", "model 8")).isEmpty();
        assertThat(DerivedFiles.in(folder, () -> "1.1").find("sight", "model 7"))
                .isEmpty();
    }

    @Test
    void lookingMakesNothing() {
        assertThat(files().find("sight", "model 7")).isEmpty();
        assertThat(folder).doesNotExist();
    }

    @Test
    void aFileThatAnotherUsersProgramSealedIsNotBelieved() throws IOException {
        Path other = home.resolve("other");
        DerivedFiles.in(other, () -> "1.0").keep("sight", "model 7", "forged".getBytes(UTF_8));
        files().keep("sight", "model 7", CONTENT);
        Path mine = kept().get(0);
        Files.write(mine, Files.readAllBytes(other.resolve(mine.getFileName())));
        assertThat(files().find("sight", "model 7")).isEmpty();
        assertThat(mine).as("and it is thrown away").doesNotExist();
    }

    @Test
    void aFilePutInThePlaceOfAnotherIsNotBelieved() throws IOException {
        files().keep("sight", "model 7", CONTENT);
        Path seven = kept().get(0);
        files().keep("sight", "model 8", "of model 8".getBytes(UTF_8));
        Path eight =
                kept().stream().filter(file -> !file.equals(seven)).findFirst().orElseThrow();
        Files.write(seven, Files.readAllBytes(eight));
        assertThat(files().find("sight", "model 7")).isEmpty();
    }

    @Test
    void noByteOfItCanBeChangedAndNoneBeMissing() throws IOException {
        files().keep("sight", "model 7", CONTENT);
        Path file = kept().get(0);
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= 1;
            Files.write(file, changed);
            assertThat(files().find("sight", "model 7")).as("byte %d", i).isEmpty();
            Files.write(file, java.util.Arrays.copyOf(whole, i));
            assertThat(files().find("sight", "model 7")).as("cut at %d", i).isEmpty();
        }
        Files.write(file, whole);
        assertThat(files().find("sight", "model 7")).contains(CONTENT);
    }

    @Test
    void keyAndFilesAreTheUsersAlone() throws IOException {
        assumeThat(OwnFile.hasPermissions(home)).isTrue();
        files().keep("sight", "model 7", CONTENT);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        for (Path file : List.of(folder.resolve("seal.key"), kept().get(0))) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void aKeyThatOthersMayReadSealsNothingAnyMore() throws IOException {
        assumeThat(OwnFile.hasPermissions(home)).isTrue();
        files().keep("sight", "model 7", CONTENT);
        Path key = folder.resolve("seal.key");
        byte[] known = Files.readAllBytes(key);
        Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-r--r--"));
        assertThat(files().find("sight", "model 7")).isEmpty();
        assertThat(key).isRegularFile();
        assertThat(Files.readAllBytes(key)).isNotEqualTo(known);
    }

    @Test
    void aLinkInThePlaceOfAFileOrOfTheKeyIsNotFollowed() throws IOException {
        files().keep("sight", "model 7", CONTENT);
        Path file = kept().get(0);
        Path elsewhere = home.resolve("elsewhere");
        Files.move(file, elsewhere);
        Files.createSymbolicLink(file, elsewhere);
        assertThat(files().find("sight", "model 7")).isEmpty();

        Path key = folder.resolve("seal.key");
        Path foreign = Files.write(home.resolve("foreign"), new byte[32]);
        Files.delete(key);
        Files.createSymbolicLink(key, foreign);
        files().keep("sight", "model 7", CONTENT);
        assertThat(Files.isSymbolicLink(key)).isFalse();
        assertThat(Files.readAllBytes(foreign)).containsOnly(0);
        assertThat(files().find("sight", "model 7")).contains(CONTENT);
    }

    @Test
    void withoutAPlaceNothingIsKeptAndNothingSaid() throws IOException {
        DerivedFiles.none().keep("sight", "model 7", CONTENT);
        assertThat(DerivedFiles.none().find("sight", "model 7")).isEmpty();

        Path file = Files.write(home.resolve("file"), CONTENT);
        DerivedFiles impossible = DerivedFiles.in(file.resolve("cache"), () -> "1.0");
        impossible.keep("sight", "model 7", CONTENT);
        assertThat(impossible.find("sight", "model 7")).isEmpty();
        assertThat(file).hasBinaryContent(CONTENT);
    }

    @Test
    void itNeverTakesTheRoomThatAJournalNeeds() throws IOException {
        DerivedFiles crowded = DerivedFiles.in(folder, () -> "1.0", DerivedFiles.MOST, Long.MAX_VALUE / 2);
        crowded.keep("sight", "model 7", CONTENT);
        assertThat(crowded.find("sight", "model 7")).isEmpty();
        assertThat(names()).noneMatch(name -> name.endsWith(".kept") || name.endsWith(".part"));
    }

    @Test
    void itStaysWithinItsSizeAndWhatWasUsedLongestAgoGoesFirst() throws IOException {
        long most = 10_000;
        for (int i = 0; i < 40; i++) {
            DerivedFiles small = DerivedFiles.in(folder, () -> "1.0", most, 0);
            small.keep("sight", "model " + i, new byte[1000]);
            setAges();
            assertThat(small.find("sight", "model 0"))
                    .as("model 0, used all along")
                    .isPresent();
            long size = 0;
            for (Path file : kept()) {
                size += Files.size(file);
            }
            assertThat(size).isLessThanOrEqualTo(most);
        }
        assertThat(files().find("sight", "model 39")).isPresent();
        assertThat(files().find("sight", "model 20")).isEmpty();
    }

    /** Makes every file a minute older, since clocks of files may be coarse. */
    private void setAges() throws IOException {
        for (Path file : kept()) {
            Instant used = Files.getLastModifiedTime(file).toInstant();
            Files.setLastModifiedTime(file, FileTime.from(used.minus(Duration.ofMinutes(1))));
        }
    }

    @Test
    void whatNobodyAskedForInThreeMonthsGoesAndSoDoesWhatACrashLeft() throws IOException {
        files().keep("sight", "old", CONTENT);
        Path old = kept().get(0);
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(91))));
        Path left = Files.write(folder.resolve("left.part"), CONTENT);
        Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
        Path foreign = Files.write(folder.resolve("letter.txt"), CONTENT);
        Files.setLastModifiedTime(foreign, FileTime.from(Instant.EPOCH));
        files().keep("sight", "new", CONTENT);
        assertThat(old).doesNotExist();
        assertThat(left).doesNotExist();
        assertThat(foreign).as("not ours").exists();
    }

    @Test
    void manyAtOnceFindWhatTheyKeptOrNothing() throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(8);
        List<Future<?>> work = new ArrayList<>();
        for (int person = 0; person < 8; person++) {
            int seed = person;
            work.add(people.submit(() -> {
                Random random = new Random(seed);
                DerivedFiles mine = DerivedFiles.in(folder, () -> "1.0", 2_000, 0);
                for (int i = 0; i < 60; i++) {
                    String key = "model " + random.nextInt(5);
                    mine.keep("sight", key, key.getBytes(UTF_8));
                    mine.find("sight", key)
                            .ifPresent(
                                    found -> assertThat(found).asString(UTF_8).isEqualTo(key));
                }
            }));
        }
        for (Future<?> one : work) {
            one.get();
        }
        people.shutdown();
        assertThat(names()).noneMatch(name -> name.endsWith(".part"));
    }
}
