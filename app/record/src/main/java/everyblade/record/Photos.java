package everyblade.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/** The pictures of a job: each there as a whole under its own name, or not at all, and never replaced by another. */
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
        if (!PLAIN_NAME.matcher(name).matches() || name.startsWith(".") || name.endsWith(ON_ITS_WAY)) {
            return problem(name, "it is not the plain name of a file", "give the picture a plain name");
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
