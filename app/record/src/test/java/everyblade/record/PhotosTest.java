package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import everyblade.core.entry.FindingEntry;
import everyblade.record.photo.CameraPicture;
import everyblade.record.photo.PhotoName;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotosTest {

    private static final Path PLACE = Shift.JOB.resolve("photos/blade 14.jpg");
    private static final byte[] PICTURE = picture(1);

    private static byte[] picture(int seed) {
        return CameraPicture.png(seed);
    }

    private static SimulatedDisk diskWithJob() {
        SimulatedDisk disk = PowerCutTest.emptyDisk();
        Jobs.started(new JobFolder(disk, Shift.JOB));
        return disk;
    }

    private static Optional<RecordProblem> keep(Disk disk, String name, byte[] picture) {
        try (JournalWriter writer = Jobs.writer(new JobFolder(disk, Shift.JOB))) {
            return writer.keepPhoto(name, picture);
        }
    }

    @Test
    void areKeptUnderTheirNames() throws IOException {
        SimulatedDisk disk = diskWithJob();

        assertThat(keep(disk, "blade 14.jpg", PICTURE)).isEmpty();

        assertThat(disk.read(PLACE)).isEqualTo(PICTURE);
        assertThat(disk.list(PLACE.getParent())).containsExactly("blade 14.jpg");
    }

    @Test
    void areNeverReplacedByOthersOfTheSameName() throws IOException {
        SimulatedDisk disk = diskWithJob();
        keep(disk, "blade 14.jpg", PICTURE);

        assertThat(keep(disk, "blade 14.jpg", PICTURE)).isEmpty();
        assertThat(English.said(keep(disk, "blade 14.jpg", picture(2)).orElseThrow()))
                .isEqualTo("Picture not kept: photos/blade 14.jpg: the job has another picture of that name; give this"
                        + " one another name");
        assertThat(disk.read(PLACE)).isEqualTo(PICTURE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "..", ".hidden", "../journal.jsonl", "a/b.jpg", "a\\b.jpg", "c:a.jpg", "a\nb", "a.part"})
    void stayInTheirFolderWhateverTheirNamesAre(String name) throws IOException {
        SimulatedDisk disk = diskWithJob();
        byte[] journal = disk.read(Shift.JOB.resolve("journal.jsonl"));

        assertThat(keep(disk, name, PICTURE)).isEmpty();

        assertThat(disk.list(PLACE.getParent())).containsExactly(PhotoName.of(name));
        assertThat(disk.read(Shift.JOB.resolve("journal.jsonl"))).isEqualTo(journal);
    }

    @Test
    void areRefusedWhereASystemWouldTakeAnothersNameForTheSame() {
        SimulatedDisk disk = diskWithJob();
        keep(disk, "blade 14.jpg", PICTURE);

        assertThat(English.said(keep(disk, "Blade 14.JPG", picture(2)).orElseThrow()))
                .contains("the job has another picture of that name");
    }

    @Test
    void areThereAsAWholeOrNotAtAllWhateverCutsThemShort() throws IOException {
        SplittableRandom random = new SplittableRandom(20260305);
        SimulatedDisk rehearsal = diskWithJob().with(Fault.NONE);
        keep(rehearsal, "blade 14.jpg", PICTURE);
        int points = 0;
        for (int step = 0; step < rehearsal.steps().size(); step++) {
            for (int bytes = 0; bytes <= rehearsal.steps().get(step).bytes(); bytes += 3) {
                SimulatedDisk disk = diskWithJob().with(new Fault(step, bytes, Fault.Kind.POWER_CUT));
                assertThat(catchThrowable(() -> keep(disk, "blade 14.jpg", PICTURE)))
                        .isInstanceOf(SimulatedDisk.PowerCut.class);
                for (int part = 0; part < 16; part++, points++) {
                    SimulatedDisk found = disk.afterPowerCut(BitSet.valueOf(new long[] {random.nextLong()}));
                    assertThat(!found.exists(PLACE) || Arrays.equals(found.read(PLACE), PICTURE))
                            .isTrue();
                    assertThat(keep(found, "blade 14.jpg", PICTURE)).isEmpty();
                    assertThat(found.read(PLACE)).isEqualTo(PICTURE);
                }
            }
        }
        assertThat(points).isGreaterThan(500);
    }

    @Test
    void areSafeOnceKept() throws IOException {
        SimulatedDisk disk = diskWithJob();
        keep(disk, "blade 14.jpg", PICTURE);

        assertThat(disk.afterPowerCut(new BitSet()).read(PLACE)).isEqualTo(PICTURE);
    }

    @Test
    void canBeSaidAgainAfterTheDiskRefused() throws IOException {
        SimulatedDisk rehearsal = diskWithJob().with(Fault.NONE);
        keep(rehearsal, "blade 14.jpg", PICTURE);
        int openingSteps = (int) rehearsal.steps().stream()
                .takeWhile(step -> !step.what().contains("photos"))
                .count();
        for (int step = openingSteps; step < rehearsal.steps().size(); step++) {
            SimulatedDisk disk = diskWithJob().with(new Fault(step, 120, Fault.Kind.REFUSED_ONCE));

            assertThat(English.said(keep(disk, "blade 14.jpg", PICTURE).orElseThrow()))
                    .contains("No space left on device");
            assertThat(keep(disk, "blade 14.jpg", PICTURE)).isEmpty();
            assertThat(disk.afterPowerCut(new BitSet()).read(PLACE)).isEqualTo(PICTURE);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no picture at all", "GIF89a", "<svg xmlns='http://www.w3.org/2000/svg'/>"})
    void areRefusedIfTheyAreNone(String words) {
        byte[] bytes = words.getBytes(java.nio.charset.StandardCharsets.UTF_8);

        assertThat(English.said(keep(diskWithJob(), "a.jpg", bytes).orElseThrow()))
                .startsWith("Picture not kept: photos/a.jpg: it is ");
    }

    @Nested
    class TheLineThatNamesOne {

        private static Addition photo(String name) {
            return Samples.say(
                    "photo \"" + name + "\"",
                    new FindingEntry.Photo(Samples.said(name), Optional.empty(), Optional.empty()));
        }

        private static JobFolder kept(Disk disk) {
            JobFolder folder = new JobFolder(disk, Shift.JOB);
            try (JournalWriter writer = Jobs.writer(folder)) {
                assertThat(writer.keepPhoto("blade 14.jpg", PICTURE)).isEmpty();
                Jobs.keep(writer, java.util.List.of(photo("card/blade 14.jpg"), Samples.note(2)));
            }
            return folder;
        }

        @Test
        void carriesItsHashAndWhatItSaysOfItself() {
            KeptPhoto photo = Jobs.read(kept(diskWithJob()))
                    .journal()
                    .lines()
                    .get(0)
                    .entry()
                    .photo()
                    .orElseThrow();

            assertThat(photo.file()).isEqualTo("blade 14.jpg");
            assertThat(photo.sha256()).isEqualTo(Chain.sha256(PICTURE));
            assertThat(photo.bytes()).isEqualTo(PICTURE.length);
            assertThat(photo.facts().width()).isEqualTo(16);
        }

        @Test
        void keepsTheNameThatWasTypedBesideTheOneThatEverySystemCanHold() {
            try (JournalWriter writer = Jobs.writer(new JobFolder(diskWithJob(), Shift.JOB))) {
                assertThat(writer.keepPhoto("blade? 14.jpg", PICTURE)).isEmpty();
                assertThat(Jobs.keep(writer, java.util.List.of(photo("card/blade? 14.jpg"))))
                        .singleElement()
                        .satisfies(line -> {
                            assertThat(line.entry().text()).contains("card/blade? 14.jpg");
                            assertThat(line.entry().photo().orElseThrow().file())
                                    .isEqualTo("blade_ 14.jpg");
                        });
            }
        }

        @Test
        void carriesItsNameAloneWhereThereIsNoPicture() {
            try (JournalWriter writer = Jobs.writer(new JobFolder(diskWithJob(), Shift.JOB))) {
                assertThat(Jobs.keep(writer, java.util.List.of(photo("missing.jpg"))))
                        .singleElement()
                        .satisfies(line -> assertThat(line.entry().photo()).isEmpty());
            }
        }

        @Test
        void isFoundWhenThePictureWasChangedOrIsGone() throws IOException {
            SimulatedDisk disk = diskWithJob();
            JobFolder folder = kept(disk);
            assertThat(folder.verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);

            disk.delete(PLACE);
            assertThat(folder.verify(Optional.empty()))
                    .isInstanceOfSatisfying(
                            JobFolder.Broken.class,
                            broken -> assertThat(English.said(broken.problem()))
                                    .startsWith(
                                            "Picture changed: journal.jsonl line 2: its picture photos/blade 14.jpg"));
            try (Disk.OpenFile file = disk.create(PLACE)) {
                file.write(0, picture(2));
            }
            assertThat(folder.verify(Optional.empty()))
                    .isInstanceOfSatisfying(
                            JobFolder.Broken.class,
                            broken -> assertThat(English.said(broken.problem()))
                                    .contains("is not the one that was kept"));
        }
    }
}
