package everyblade.desktop.view;

import everyblade.record.Addition;
import java.util.List;

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
     * @param inUse whether that may change, because somebody else has the job open
     */
    record ReadOnly(String reason, boolean inUse) implements Keeping {}
}
