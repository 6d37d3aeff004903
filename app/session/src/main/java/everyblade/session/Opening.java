package everyblade.session;

import everyblade.practice.drill.Truth;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What opens the window; the commands know no more of it. */
public interface Opening {

    /** Where there is no window to be opened: says what to do instead. */
    Opening NONE = (around, shelf, job) -> {
        throw Failure.of("stopped.opening.thereNoScreenToOpen");
    };

    /**
     * Opens the window, and returns when it was closed.
     *
     * @param job a folder with a job, a drill or an engine model, opened at once; without one the start screen shows
     * @return the exit status
     * @throws Failure if there is no screen
     */
    int open(Surroundings around, Shelf shelf, Optional<Path> job);

    /**
     * Opens the window on a record to be reviewed, and returns when it was closed.
     *
     * @return the exit status
     * @throws Failure if there is no screen
     */
    default int review(Surroundings around, Shelf shelf, Path job) {
        return open(around, shelf, Optional.of(job));
    }

    /**
     * Opens the window on a drill.
     *
     * @param truth what is on the airfoils; nobody is told before the drill ends
     * @return the exit status
     * @throws Failure if there is no screen
     */
    default int drill(Surroundings around, Shelf shelf, DrillRecord drill, Truth truth) {
        return NONE.open(around, shelf, Optional.empty());
    }

    /**
     * Builds and paints the window of a job without a screen, and changes nothing.
     *
     * @return the exit status
     */
    default int rehearse(Surroundings around, Path job) {
        return open(around, Shelf.of(around, List.of(), Consent.of(around, List.of())), Optional.of(job));
    }
}
