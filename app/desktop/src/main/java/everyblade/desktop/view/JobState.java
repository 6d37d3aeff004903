package everyblade.desktop.view;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.desktop.command.Speech;
import everyblade.record.Beginning;
import everyblade.spi.EngineModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A job as a window shows it at one moment; immutable.
 *
 * @param folder of the job
 * @param beginning what is fixed for the job
 * @param head hash of the last line that is on disk
 * @param speech all entries so far, those only in memory included
 * @param coverage of all these entries
 * @param keeping what becomes of the next one
 */
public record JobState(
        Path folder, Beginning beginning, String head, Speech speech, Coverage coverage, Keeping keeping) {

    public Fold fold() {
        return speech.fold();
    }

    public Situation situation() {
        return speech.fold().situation();
    }

    public EngineModel model() {
        return situation().engine().model();
    }

    /** The view in use. */
    public Optional<Seat> seat() {
        return situation().seat();
    }

    /** The last entry, void or not. */
    public Optional<Logged> last() {
        List<Logged> entries = fold().entries();
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    /** Whether entries can be made. */
    public boolean open() {
        return !(keeping instanceof Keeping.ReadOnly);
    }

    JobState with(Keeping other) {
        return new JobState(folder, beginning, head, speech, coverage, other);
    }

    JobState after(Speech said, String newHead, Keeping newKeeping) {
        return new JobState(
                folder, beginning, newHead, said, coverage.after(said.fold().situation()), newKeeping);
    }
}
