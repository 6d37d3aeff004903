package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchTest {

    private static final Stamp GONE = new Stamp(false, Map.of());

    private static Stamp stamp(int bytes) {
        return new Stamp(true, Map.of("engine.json", new Stamp.File(bytes, FileTime.fromMillis(0), "")));
    }

    /** Which of these looks, from 0, find that the folder is to be read. */
    private static String due(Stamp... looks) {
        Watch watch = Watch.FIRST;
        StringBuilder due = new StringBuilder();
        for (Stamp look : looks) {
            watch = watch.looked(look);
            due.append(watch.isDue() ? 'r' : '.');
        }
        return due.toString();
    }

    @Nested
    class AFolder {

        @Test
        void isReadOnceItStaysAsItIs() {
            assertThat(due(stamp(1), stamp(1), stamp(1), stamp(1))).isEqualTo(".r..");
        }

        @Test
        void isReadAgainAfterEachSave() {
            assertThat(due(stamp(1), stamp(1), stamp(2), stamp(2), stamp(3), stamp(3), stamp(3)))
                    .isEqualTo(".r.r.r.");
        }

        @Test
        void isNotReadWhileItIsBeingWritten() {
            assertThat(due(stamp(1), stamp(1), stamp(2), stamp(3), stamp(4), stamp(5), stamp(5)))
                    .isEqualTo(".r....r");
        }

        @Test
        void isNotReadForWhatWasTakenBackMeanwhile() {
            assertThat(due(stamp(1), stamp(1), stamp(2), stamp(1), stamp(1))).isEqualTo(".r...");
        }

        @Test
        void isNotReadAgainForWhatWasReadMeanwhile() {
            Watch read = Watch.FIRST.looked(stamp(1)).looked(stamp(1)).read(stamp(2));

            assertThat(read.looked(stamp(2)).looked(stamp(2)).isDue()).isFalse();
            assertThat(read.looked(stamp(3)).looked(stamp(3)).isDue()).isTrue();
        }

        @Test
        void isReadWhenItVanishesAndWhenItComesBack() {
            assertThat(due(stamp(1), stamp(1), GONE, GONE, GONE, stamp(1), stamp(1)))
                    .isEqualTo(".r.r..r");
        }
    }

    @Nested
    class AStamp {

        @TempDir
        Path folder;

        private Bench bench() {
            return new Bench(folder.resolve("sedge-2"));
        }

        @Test
        void isTheSameWhileNothingIsSaved() {
            bench().save(Bench.MODEL);

            assertThat(bench().model().stamp(ModelFolder.files()))
                    .isEqualTo(bench().model().stamp(ModelFolder.files()));
        }

        @Test
        void tellsAFileThatWasPutInThePlaceOfAnotherOfTheSameLengthAndTime() throws IOException {
            bench().save(Bench.MODEL);
            Path file = bench().folder().resolve("engine.json");
            FileTime time = Files.getLastModifiedTime(file);
            Stamp before = bench().model().stamp(ModelFolder.files());

            bench().save(Bench.MODEL.replace("24", "26"));
            Files.setLastModifiedTime(file, time);

            boolean tellsFilesApart = Files.readAttributes(file, java.nio.file.attribute.BasicFileAttributes.class)
                            .fileKey()
                    != null;
            assertThat(bench().model().stamp(ModelFolder.files()).equals(before))
                    .isEqualTo(!tellsFilesApart);
        }

        @Test
        void ofAReadModelCountsItsMeshesThoseThatAreNotThereToo() throws IOException {
            Attempt missing = bench().read(Bench.meshed("meshes/c1.ply"), Bench.FIRST);
            assertThat(missing.stamp().names()).containsExactlyInAnyOrder("engine.json", "meshes/c1.ply");
            Files.createDirectories(bench().folder().resolve("meshes"));
            Files.writeString(bench().folder().resolve("meshes").resolve("c1.ply"), "ply");
            Files.writeString(bench().folder().resolve("notes.txt"), "not looked at");

            Stamp now = bench().model().stamp(missing.stamp().names());
            assertThat(now).isNotEqualTo(missing.stamp());
            assertThat(bench().model().read(now.names(), Bench.LATER).stamp()).isEqualTo(now);
        }

        @Test
        void ofATextThatCannotBeReadCountsTheMeshesOfTheLastOne() {
            Attempt meshed = bench().read(Bench.meshed("c1.ply"), Bench.FIRST);
            bench().save("{");

            assertThat(bench().model()
                            .read(meshed.stamp().names(), Bench.LATER)
                            .stamp()
                            .names())
                    .isEqualTo(meshed.stamp().names());
        }

        @Test
        void ofAFolderThatIsNotThereSaysSo() {
            assertThat(bench().model().stamp(ModelFolder.files()).there()).isFalse();
        }
    }
}
