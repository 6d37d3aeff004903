package everyblade.record;

import everyblade.record.photo.PhotoFile;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The pictures of a job: each a picture that can be shown, there as a whole under its own name, or not at all, and never
 * replaced by another. A line that names one carries its hash.
 */
final class Photos {

    private static final Pattern PLAIN_NAME = Pattern.compile("[^/\\\\:\\p{Cntrl}]{1,200}");
    private static final String ON_ITS_WAY = ".part";

    private final Disk disk;
    private final Path folder;

    Photos(Disk disk, Path job) {
        this.disk = disk;
        this.folder = job.resolve(JobFolder.PHOTOS);
    }

    /** Keeps a picture under this name, safe on disk when it returns; gives why not, if not. */
    Optional<Problem> keep(String name, byte[] picture) {
        if (!isPlain(name)) {
            return problem(name, "it is not the plain name of a file", "give the picture a plain name");
        }
        if (PhotoFile.look(picture) instanceof PhotoFile.Refused refused) {
            return problem(name, refused.why(), refused.toDo());
        }
        Path place = folder.resolve(name);
        try {
            if (!disk.exists(place)) {
                copy(picture, place);
            } else if (!Arrays.equals(disk.read(place), picture)) {
                return problem(name, "the job has another picture of that name", "give this one another name");
            }
            disk.forceFolder(folder);
            return Optional.empty();
        } catch (IOException failure) {
            return problem(name, Reasons.of(failure), "see to the disk and say it again");
        }
    }

    /** What came of looking at the picture that an entry names. */
    sealed interface Stamping {}

    /** The entry, with its picture as it is on the disk if it names one that is there. */
    record Stamped(Addition entry) implements Stamping {}

    /** There is no such picture to be named. */
    record Missing(Problem problem) implements Stamping {}

    /** Adds to an entry what its picture is; nothing if the job has no such picture, so that only its name is kept. */
    Stamping stamp(Addition entry) {
        Optional<String> named = entry.photoNamed();
        if (named.isEmpty()) {
            return new Stamped(entry);
        }
        String name = named.get();
        try {
            if (!isPlain(name)) {
                return new Missing(problem(name, "it is not the plain name of a file", "give the picture a plain name")
                        .orElseThrow());
            }
            Path place = folder.resolve(name);
            if (!disk.exists(place)) {
                return new Stamped(entry);
            }
            byte[] picture = disk.read(place);
            if (PhotoFile.look(picture) instanceof PhotoFile.Sound sound) {
                return new Stamped(
                        entry.with(new KeptPhoto(name, Chain.sha256(picture), picture.length, sound.facts())));
            }
            return new Missing(problem(name, "it is damaged", "copy it again").orElseThrow());
        } catch (IOException | InvalidPathException failure) {
            String why = failure instanceof IOException refused ? Reasons.of(refused) : "it has no usable name";
            return new Missing(
                    problem(name, why, "see to the disk and say it again").orElseThrow());
        }
    }

    /** The first line whose picture is not there as it was when the line was kept; empty if all are. */
    Optional<Problem> changed(Journal journal) {
        for (Line line : journal.lines()) {
            Optional<KeptPhoto> photo = line.entry().photo();
            String why = photo.map(this::whyNot).orElse("");
            if (!why.isEmpty()) {
                return Optional.of(new Problem(
                        "Picture changed",
                        Journal.FILE,
                        line.k() + 1,
                        "its picture " + JobFolder.PHOTOS + "/"
                                + photo.orElseThrow().file() + " " + why,
                        "put back the picture, from a copy of the job"));
            }
        }
        return Optional.empty();
    }

    private String whyNot(KeptPhoto photo) {
        try {
            boolean same = Chain.sha256(disk.read(folder.resolve(photo.file()))).equals(photo.sha256());
            return same ? "" : "is not the one that was kept";
        } catch (IOException | InvalidPathException failure) {
            return failure instanceof IOException refused
                    ? "cannot be read: " + Reasons.of(refused)
                    : "has no usable name";
        }
    }

    private static boolean isPlain(String name) {
        return PLAIN_NAME.matcher(name).matches() && !name.startsWith(".") && !name.endsWith(ON_ITS_WAY);
    }

    private void copy(byte[] picture, Path place) throws IOException {
        Path part = folder.resolve(place.getFileName() + ON_ITS_WAY);
        if (disk.exists(part)) {
            disk.delete(part); // left by a failure; there is only one writer
        }
        try (Disk.OpenFile file = disk.create(part)) {
            file.write(0, picture);
            file.force();
        }
        disk.rename(part, place);
    }

    private static Optional<Problem> problem(String name, String why, String toDo) {
        return Optional.of(Problem.inFile("Picture not kept", JobFolder.PHOTOS + "/" + name, why, toDo));
    }
}
