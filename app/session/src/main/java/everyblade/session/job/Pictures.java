package everyblade.session.job;

import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.Stated;
import everyblade.fact.Fact;
import everyblade.record.Addition;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.KeepingProblem;
import everyblade.record.PictureNote;
import everyblade.record.RecordProblem;
import everyblade.record.photo.PhotoFile;
import everyblade.record.photo.PhotoName;
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
public record Pictures(JournalWriter writer, JobFolder folder, List<Path> places) {

    /**
     * Copies what an entry names.
     *
     * @return what a person should be told, such as that a picture is not there
     * @throws Refusal if the picture cannot be kept
     */
    public Optional<Fact> keep(Speech.Said said) throws Refusal {
        return keep(said.number(), said.addition());
    }

    /** The same of an entry of this number. */
    public Optional<Fact> keep(int number, Addition addition) throws Refusal {
        Optional<Said<String>> name = Stated.file(addition.means());
        return name.isEmpty() ? Optional.empty() : keep(name.get()).map(note -> new PictureNote.OfEntry(number, note));
    }

    private Optional<PictureNote> keep(Said<String> name) throws Refusal {
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
        return Optional.of(new PictureNote.NotThere(name.value()));
    }

    private Optional<PictureNote> keep(Said<String> name, Path file) throws IOException, Refusal {
        if (Files.size(file) > PhotoFile.LARGEST) {
            throw new Refusal(name.column(), new KeepingProblem.PictureTooLarge(PhotoFile.LARGEST >> 20));
        }
        byte[] picture = Files.readAllBytes(file);
        String called = String.valueOf(file.getFileName());
        Optional<RecordProblem> problem = writer.keepPhoto(called, picture);
        if (problem.isPresent()) {
            throw new Refusal(name.column(), problem.get());
        }
        return told(called, picture);
    }

    /** What a person should know of a picture that was kept; empty if there is nothing. */
    private static Optional<PictureNote> told(String called, byte[] picture) {
        Optional<Fact> damage =
                PhotoFile.look(picture) instanceof PhotoFile.Sound sound ? sound.damage() : Optional.empty();
        Optional<String> as = Optional.of(PhotoName.of(called)).filter(kept -> !kept.equals(called));
        return damage.isEmpty() && as.isEmpty() ? Optional.empty() : Optional.of(new PictureNote.Kept(damage, as));
    }
}
