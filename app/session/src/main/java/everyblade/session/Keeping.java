package everyblade.session;

import everyblade.record.Addition;
import java.util.List;
import java.util.Optional;

/** What becomes of the entries that are made in a window. */
public sealed interface Keeping {

    /** Each is safe on disk before it shows as kept. */
    record OnDisk() implements Keeping {}

    /**
     * The disk refused: entries are only in memory, and lost if the program ends before they are saved elsewhere.
     *
     * @param problem what happened and what to do, one line
     * @param unsaved entries that are not on disk, in order
     */
    record InMemory(String problem, List<Addition> unsaved) implements Keeping {

        public InMemory {
            unsaved = List.copyOf(unsaved);
        }
    }

    /**
     * No entries can be made here.
     *
     * @param reason why, such as who is writing, one line
     * @param holder who has the job open, and since when, if that is why
     * @param mayChange whether it is worth trying again: not where a record is only reviewed
     */
    record ReadOnly(String reason, Optional<String> holder, boolean mayChange) implements Keeping {}
}
