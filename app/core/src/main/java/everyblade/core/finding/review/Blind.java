package everyblade.core.finding.review;

import everyblade.core.entry.Entry;
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

    /** Whether an entry says what was done or found, and not what is made of it. */
    public static boolean shows(Entry entry) {
        return !(entry instanceof Entry.Note
                || entry instanceof Entry.NoAccess
                || entry instanceof Entry.Saw
                || entry instanceof Entry.Ask
                || entry instanceof Entry.Recheck
                || entry instanceof Entry.Refer
                || entry instanceof Entry.Again
                || entry instanceof Entry.Settle
                || entry instanceof Entry.Void
                || entry instanceof Entry.Handover);
    }
}
