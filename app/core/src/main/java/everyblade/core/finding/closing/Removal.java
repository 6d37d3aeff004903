package everyblade.core.finding.closing;

import everyblade.core.entry.ZonePhrase;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.Optional;

/** What was taken out of the record or of the task. */
sealed interface Removal extends Fact {

    record Struck(Weighty what, EntryLine gone, String reason) implements Removal {}

    /**
     * What showed a lost count, or what it came of.
     *
     * @param airfoils about how many
     * @param since entry after which it may have happened
     * @param entry that showed it
     */
    record LostCount(boolean showed, long airfoils, RowKind row, int since, int entry, EntryLine gone, String reason)
            implements Removal {}

    /**
     * Parts that the task no longer asks for.
     *
     * @param asked for still
     * @param at when that was said, ISO 8601, UTC
     */
    record Narrowed(Optional<ZonePhrase> asked, ZonePhrase left, String by, String at) implements Removal {}

    /** What weighs enough to be asked for when it is taken out. */
    enum Weighty implements Fact {
        FINDING,
        IDENTIFICATION,
        SLIP,
        OPENING,
        TOOL,
        LOST,
        QUESTION
    }
}
