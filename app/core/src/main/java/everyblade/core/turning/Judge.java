package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import java.util.OptionalDouble;

/**
 * Judges entries one by one: may this be, after what was before, and what does it lead to. Voids are not judged here;
 * {@link Fold} leaves out what they strike.
 */
final class Judge {

    private Judge() {}

    /**
     * The step of one entry.
     *
     * @param number K of the entry
     * @param sinceBefore seconds since the entry before, if both were entered live
     * @throws Refusal if it cannot be, with the column at which the line goes wrong
     */
    static EntryEffect judge(Situation situation, int number, Entry entry, OptionalDouble sinceBefore) throws Refusal {
        if (entry instanceof Entry.View
                || entry instanceof Entry.At
                || entry instanceof Entry.Watch
                || entry instanceof Entry.In
                || entry instanceof Entry.Clear
                || entry instanceof Entry.Out
                || entry instanceof Entry.Pad
                || entry instanceof Entry.Heat
                || entry instanceof Entry.Vanes) {
            return ViewEntries.judge(situation, number, entry);
        }
        if (entry instanceof Entry.Turn
                || entry instanceof Entry.Skip
                || entry instanceof Entry.Round
                || entry instanceof Entry.Look
                || entry instanceof Entry.Draw
                || entry instanceof Entry.Feed) {
            return MovementEntries.judge(situation, number, entry, sinceBefore);
        }
        if (entry instanceof Entry.Datum
                || entry instanceof Entry.Here
                || entry instanceof Entry.Slip
                || entry instanceof Entry.Pause
                || entry instanceof Entry.Handover
                || entry instanceof Entry.Takeover) {
            return CountEntries.judge(situation, number, entry);
        }
        if (entry instanceof Entry.Find
                || entry instanceof Entry.Recheck
                || entry instanceof Entry.Photo
                || entry instanceof Entry.Saw
                || entry instanceof Entry.NoAccess
                || entry instanceof Entry.Ask) {
            return CellEntries.judge(situation, number, entry);
        }
        return new EntryEffect(OpenEntries.judge(situation, number, entry)).and(ClosingAdvice.on(situation, entry));
    }
}
