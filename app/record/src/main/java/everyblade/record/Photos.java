package everyblade.record;

import everyblade.fact.Fact;
import everyblade.record.photo.PhotoFile;
import everyblade.record.photo.PhotoName;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The pictures of a job: each a picture that can be shown, there as a whole under its own name, or not at all, and never
 * replaced by another. A line that names one carries its hash.
 */
final class Photos {

    private static final Pattern PLAIN_NAME = Pattern.compile("[^/\\\\:\\p{Cntrl}]{1,200}");
    private static final String ON_ITS_WAY = ".part";

    private final JobFiles files;
    private final Disk disk;

    Photos(JobFiles files) {
        this.files = files;
        this.disk = files.disk();
    }

    /**
     * Keeps a picture under the {@link PhotoName} of a file, safe on disk when it returns; gives why not, if not.
     *
     * @param file its name, without folders before it
     */
    Optional<RecordProblem> keep(String file, byte[] picture) {
        String name = PhotoName.of(file);
        if (PhotoFile.look(picture) instanceof PhotoFile.Refused refused) {
            return problem(name, refused.why(), refused.toDo());
        }
        try {
            Path place = place(name);
            if (!disk.exists(place) && !isThereInOtherLetters(name, place.getParent())) {
                copy(picture, place);
            } else if (!disk.exists(place) || !Arrays.equals(bytes(name), picture)) {
                return problem(name, PhotoFlaw.Whole.ANOTHER_OF_THAT_NAME, Remedy.ANOTHER_NAME);
            }
            disk.forceFolder(place.getParent());
            return Optional.empty();
        } catch (IOException failure) {
            return problem(name, DiskFailure.of(failure), Remedy.SEE_TO_DISK_AND_REPEAT);
        }
    }

    /** What came of looking at the picture that an entry names. */
    sealed interface Stamping {}

    /** The entry, with its picture as it is on the disk if it names one that is there. */
    record Stamped(Addition entry) implements Stamping {}

    /** There is no such picture to be named. */
    record Missing(RecordProblem problem) implements Stamping {}

    /** Adds to an entry what its picture is; nothing if the job has no such picture, so that only its name is kept. */
    Stamping stamp(Addition entry) {
        Optional<String> named = entry.photoNamed();
        if (named.isEmpty()) {
            return new Stamped(entry);
        }
        String name = PhotoName.of(named.get());
        try {
            if (!disk.exists(files.root().resolve(JobFolder.PHOTOS)) || !disk.exists(place(name))) {
                return new Stamped(entry);
            }
            byte[] picture = bytes(name);
            if (PhotoFile.look(picture) instanceof PhotoFile.Sound sound) {
                return new Stamped(
                        entry.with(new KeptPhoto(name, Chain.sha256(picture), picture.length, sound.facts())));
            }
            return new Missing(
                    problem(name, PhotoFlaw.Whole.DAMAGED, Remedy.COPY_AGAIN).orElseThrow());
        } catch (IOException | InvalidPathException failure) {
            Fact why =
                    failure instanceof IOException refused ? DiskFailure.of(refused) : PhotoFlaw.Whole.NO_USABLE_NAME;
            return new Missing(problem(name, why, Remedy.SEE_TO_DISK_AND_REPEAT).orElseThrow());
        }
    }

    /** What is wrong if the picture of a line is not there as it was when the line was kept. */
    Optional<RecordProblem> changed(JournalLine line) {
        return line.entry()
                .photo()
                .flatMap(photo -> whyNot(photo)
                        .map(why -> new RecordProblem(
                                RecordProblem.What.PICTURE_CHANGED,
                                Journal.FILE,
                                line.k() + 1,
                                why,
                                Remedy.PUT_BACK_PICTURE)));
    }

    private Optional<PhotoFlaw> whyNot(KeptPhoto photo) {
        if (!isPlain(photo.file())) {
            return Optional.of(new PhotoFlaw.HasNoUsableName(photo.file()));
        }
        try {
            byte[] picture = bytes(photo.file());
            boolean same =
                    picture.length == photo.bytes() && Chain.sha256(picture).equals(photo.sha256());
            return same ? Optional.empty() : Optional.of(new PhotoFlaw.NotTheOneKept(photo.file()));
        } catch (IOException | InvalidPathException failure) {
            return Optional.of(
                    failure instanceof IOException refused
                            ? new PhotoFlaw.NotRead(photo.file(), DiskFailure.of(refused))
                            : new PhotoFlaw.HasNoUsableName(photo.file()));
        }
    }

    private Path place(String name) throws IOException {
        return files.place(JobFolder.PHOTOS + "/" + name);
    }

    private byte[] bytes(String name) throws IOException {
        return files.read(JobFolder.PHOTOS + "/" + name, PhotoFile.LARGEST);
    }

    /** Whether a name that stands in a journal leads nowhere else; earlier programs kept other names than we do. */
    private static boolean isPlain(String name) {
        return PLAIN_NAME.matcher(name).matches() && !name.startsWith(".") && !name.endsWith(ON_ITS_WAY);
    }

    /** Whether another picture has this name but for capital letters, which some systems take for the same. */
    private boolean isThereInOtherLetters(String name, Path folder) throws IOException {
        return disk.list(folder).stream()
                .anyMatch(other ->
                        !other.equals(name) && other.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)));
    }

    private void copy(byte[] picture, Path place) throws IOException {
        Path part = place.resolveSibling(place.getFileName() + ON_ITS_WAY);
        if (disk.exists(part)) {
            disk.delete(part); // left by a failure; there is only one writer
        }
        try (Disk.OpenFile file = disk.create(part)) {
            file.write(0, picture);
            file.force();
        }
        disk.rename(part, place);
    }

    private static Optional<RecordProblem> problem(String name, Fact why, Fact toDo) {
        return Optional.of(
                RecordProblem.inFile(RecordProblem.What.PICTURE_NOT_KEPT, JobFolder.PHOTOS + "/" + name, why, toDo));
    }
}
