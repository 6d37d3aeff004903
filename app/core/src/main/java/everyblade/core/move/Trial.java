package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Entries tried after a journal: what would be, if someone did this. A scope tip that is among the blades is drawn clear
 * first, and the metal is taken to be cold.
 */
final class Trial {

    private final Fold fold;

    private Trial(Fold fold) {
        this.fold = fold;
    }

    /** A trial from where a journal ends. */
    static Trial of(Fold fold) throws Refusal {
        Trial trial = new Trial(fold).with(List.of(new Entry.Heat(new Said<>(BigDecimal.ZERO, 1), false)));
        return fold.situation().among() ? trial.with(List.of(new Entry.Clear())) : trial;
    }

    /** After these entries. */
    Trial with(List<Entry> entries) throws Refusal {
        Fold longer = fold;
        for (Entry entry : entries) {
            int number = longer.entries().size() + 1;
            longer = longer.with(new Logged(number, Instant.EPOCH, "", false, EntryText.of(entry), entry));
        }
        return new Trial(longer);
    }

    Trial with(Entry entry) throws Refusal {
        return with(List.of(entry));
    }

    Trial seated(View view) throws Refusal {
        return with(new Entry.View(new Said<>(view.id(), 1), Optional.empty()));
    }

    Situation situation() {
        return fold.situation();
    }
}
