package everyblade.session;

import everyblade.record.Disk;
import everyblade.record.JournalWriter;
import everyblade.record.RecordProblem;
import everyblade.record.photo.PhotoFile;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The pictures of a job, to be copied into another one.
 *
 * @param disk both are on
 * @param from folder of the job that has them
 * @param words in which is told why they cannot be
 */
record PictureCopy(Disk disk, Path from, Words words) {

    private static final String PHOTOS = "photos";

    /** Copies all of them; gives why that could not be, if it could not. */
    Optional<String> into(JournalWriter writer) {
        Path folder = from.resolve(PHOTOS);
        try {
            if (disk.exists(folder)) {
                disk.requireFolder(folder);
            }
            for (String name : disk.exists(folder) ? disk.list(folder) : java.util.List.<String>of()) {
                byte[] picture;
                try (InputStream in = disk.read(folder.resolve(name), PhotoFile.LARGEST)) {
                    picture = in.readAllBytes();
                }
                Optional<RecordProblem> problem = writer.keepPhoto(name, picture);
                if (problem.isPresent()) {
                    return problem.map(words::say);
                }
            }
            return Optional.empty();
        } catch (IOException unreadable) {
            return Optional.of(words.say("keeping.noPicture", folder));
        }
    }
}
