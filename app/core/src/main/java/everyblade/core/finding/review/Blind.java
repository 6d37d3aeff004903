package everyblade.core.finding.review;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.util.List;

/**
 * What a reviewer is shown before they have said what they would still want to see: what was done and found, but not what
 * the technician makes of it. Whoever knows another's answer no longer finds one of their own.
 */
public final class Blind {

    private Blind() {}

    /** The entries that are shown, void ones included. */
    public static List<Logged> shown(Fold fold) {
        return fold.entries().stream().filter(logged -> shows(logged.entry())).toList();
    }

    /**
     * The journal folded without what the technician makes of it: such entries keep their numbers and say nothing, while what
     * was struck stays struck.
     */
    public static Fold fold(Fold fold) {
        Fold blind = Fold.start(fold.situation().engine());
        for (Logged logged : fold.entries()) {
            boolean kept = shows(logged.entry()) || logged.entry() instanceof RecordEntry.Void;
            // What was kept may hang on what was said, such as on who handed over.
            blind = kept ? with(blind, logged, silent(logged)) : with(blind, silent(logged), logged);
        }
        return blind;
    }

    private static Fold with(Fold fold, Logged first, Logged otherwise) {
        try {
            return fold.with(first);
        } catch (Refusal refused) {
            try {
                return fold.with(otherwise);
            } catch (Refusal refusedToo) {
                throw new IllegalStateException("a note can always be made", refusedToo);
            }
        }
    }

    private static Logged silent(Logged logged) {
        return new Logged(logged.number(), logged.at(), logged.by(), logged.live(), "", new RecordEntry.Note(""));
    }

    /** Whether an entry says what was done or found, and not what is made of it. */
    static boolean shows(Entry entry) {
        return EntryKind.of(entry).tellsDeeds();
    }
}
