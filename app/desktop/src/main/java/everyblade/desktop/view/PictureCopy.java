package everyblade.desktop.view;

import everyblade.record.Disk;
import everyblade.record.JournalWriter;
import everyblade.record.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The pictures of a job, to be copied into another one.
 *
 * @param disk both are on
 * @param from folder of the job that has them
 */
record PictureCopy(Disk disk, Path from) {

    private static final String PHOTOS = "photos";

    /** Copies all of them; gives why that could not be, if it could not. */
    Optional<String> into(JournalWriter writer) {
        Path folder = from.resolve(PHOTOS);
        try {
            for (String name : disk.exists(folder) ? disk.list(folder) : java.util.List.<String>of()) {
                Optional<Problem> problem = writer.keepPhoto(name, disk.read(folder.resolve(name)));
                if (problem.isPresent()) {
                    return problem.map(Problem::message);
                }
            }
            return Optional.empty();
        } catch (IOException unreadable) {
            return Optional.of(folder + ": a picture cannot be read; see to the disk, or copy the pictures by hand");
        }
    }
}
