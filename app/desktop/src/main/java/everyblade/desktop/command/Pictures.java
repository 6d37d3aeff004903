package everyblade.desktop.command;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Copies the pictures that entries name into the job, before the entries are kept.
 *
 * @param writer of the job
 * @param folder of the job
 * @param places folders in which a picture may be, the first one first
 */
record Pictures(JournalWriter writer, JobFolder folder, List<Path> places) {

    /**
     * Copies what an entry names.
     *
     * @return what a person should be told, such as that a picture is not there
     * @throws Refusal if the picture cannot be kept
     */
    Optional<String> keep(Speech.Said said) throws Refusal {
        Optional<Said<String>> name = named(said.addition().means());
        return name.isEmpty() ? Optional.empty() : keep(name.get()).map(note -> "entry " + said.number() + ": " + note);
    }

    private static Optional<Said<String>> named(Entry entry) {
        return entry instanceof Entry.Photo photo
                ? Optional.of(photo.file())
                : entry instanceof Entry.Saw saw ? Optional.of(saw.file()) : Optional.empty();
    }

    private Optional<String> keep(Said<String> name) throws Refusal {
        try {
            Path file = Path.of(name.value());
            String plain = String.valueOf(file.getFileName());
            Optional<Path> found = places.stream()
                    .map(place -> place.resolve(file))
                    .filter(Files::isRegularFile)
                    .findFirst();
            if (found.isPresent()) {
                Optional<Problem> problem = writer.keepPhoto(plain, Files.readAllBytes(found.get()));
                if (problem.isPresent()) {
                    throw new Refusal(name.column(), problem.get().message());
                }
                return Optional.empty();
            }
            return Files.exists(folder.path().resolve("photos").resolve(plain))
                    ? Optional.empty()
                    : Optional.of(missing(name.value()));
        } catch (IOException | InvalidPathException unreadable) {
            return Optional.of(missing(name.value()));
        }
    }

    private static String missing(String name) {
        return "there is no picture " + name + " to copy, so only its name is kept; put it where it is named from and"
                + " say it again";
    }
}
