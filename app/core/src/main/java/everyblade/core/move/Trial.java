package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;

/**
 * Entries tried after a journal: what would be, if someone did this. The metal is taken to be cold where nobody measured it.
 *
 * @param warnings how often the entries tried last were called out
 */
record Trial(Fold fold, int warnings) {

    /** A trial from where a journal ends. */
    static Trial of(Fold fold) throws Refusal {
        return new Trial(fold, 0).with(List.of(new LookEntry.Heat(new Said<>(BigDecimal.ZERO, 1), false)));
    }

    /** After these entries. */
    Trial with(List<Entry> entries) throws Refusal {
        Fold longer = fold;
        int called = 0;
        for (Entry entry : entries) {
            int number = longer.entries().size() + 1;
            longer = longer.with(new Logged(number, Instant.EPOCH, "", false, EntryText.of(entry), entry));
            called += longer.warnings().size();
        }
        return new Trial(longer, called);
    }

    Trial with(Entry entry) throws Refusal {
        return with(List.of(entry));
    }

    Situation situation() {
        return fold.situation();
    }
}
