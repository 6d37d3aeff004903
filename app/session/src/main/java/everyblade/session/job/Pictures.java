package everyblade.session.job;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.record.Addition;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.RecordProblem;
import everyblade.record.photo.PhotoFile;
import everyblade.record.photo.PhotoName;
import everyblade.session.around.OneLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Copies the pictures that entries name into the job, before the entries are kept.
 *
 * @param writer of the job
 * @param folder of the job
 * @param places folders in which a picture may be, the first one first
 */
public record Pictures(JournalWriter writer, JobFolder folder, List<Path> places) {

    /**
     * Copies what an entry names.
     *
     * @return what a person should be told, such as that a picture is not there
     * @throws Refusal if the picture cannot be kept
     */
    public Optional<String> keep(Speech.Said said) throws Refusal {
        return keep(said.number(), said.addition());
    }

    /** The same of an entry of this number. */
    public Optional<String> keep(int number, Addition addition) throws Refusal {
        Optional<Said<String>> name = named(addition.means());
        return name.isEmpty() ? Optional.empty() : keep(name.get()).map(note -> "entry " + number + ": " + note);
    }

    private static Optional<Said<String>> named(Entry entry) {
        return entry instanceof Entry.Photo photo
                ? Optional.of(photo.file())
                : entry instanceof Entry.Saw saw ? Optional.of(saw.file()) : Optional.empty();
    }

    private Optional<String> keep(Said<String> name) throws Refusal {
        try {
            Path file = Path.of(name.value());
            String plain = PhotoName.of(String.valueOf(file.getFileName()));
            Optional<Path> found = places.stream()
                    .map(place -> place.resolve(file))
                    .filter(Files::isRegularFile)
                    .findFirst();
            if (found.isPresent()) {
                return keep(name, found.get());
            }
            if (Files.exists(folder.path().resolve("photos").resolve(plain))) {
                return Optional.empty();
            }
        } catch (IOException | InvalidPathException unreadable) {
            // said below
        }
        return Optional.of(
                "there is no picture " + name.value()
                        + " to copy that can be read, so only its name is kept; put it where it is named from and say it again");
    }

    private Optional<String> keep(Said<String> name, Path file) throws IOException, Refusal {
        if (Files.size(file) > PhotoFile.LARGEST) {
            throw new Refusal(
                    name.column(),
                    "the picture is larger than " + (PhotoFile.LARGEST >> 20)
                            + " MB; save it smaller and say it again");
        }
        byte[] picture = Files.readAllBytes(file);
        String called = String.valueOf(file.getFileName());
        Optional<RecordProblem> problem = writer.keepPhoto(called, picture);
        if (problem.isPresent()) {
            throw new Refusal(name.column(), problem.get().message());
        }
        return told(called, picture);
    }

    /** What a person should know of a picture that was kept; empty if there is nothing. */
    private static Optional<String> told(String called, byte[] picture) {
        List<String> notes = new ArrayList<>();
        if (PhotoFile.look(picture) instanceof PhotoFile.Sound sound) {
            sound.damage()
                    .ifPresent(damage -> notes.add("the picture is kept, but " + damage
                            + "; copy it from the camera again under another name, and say it again"));
        }
        String kept = PhotoName.of(called);
        if (!kept.equals(called)) {
            notes.add("its name cannot be held by every system, so the picture is kept as " + kept);
        }
        return notes.isEmpty() ? Optional.empty() : Optional.of(OneLine.of(String.join("; ", notes)));
    }
}
