package everyblade.core.turning;

import everyblade.core.entry.EntryKind;
import java.util.List;

/**
 * Entries that are no question by themselves and that a closing list may yet ask about: a person may answer for them by
 * {@code settle}. What has an entry of its own that closes it, such as an opening, is none of them.
 */
final class Answerable {

    private Answerable() {}

    /** @param entries those before it, and itself */
    static boolean is(List<Logged> entries, Logged logged) {
        return EntryKind.of(logged.entry()).isAnswerable() || isOddlyTimed(entries, logged);
    }

    private static boolean isOddlyTimed(List<Logged> entries, Logged logged) {
        boolean back = entries.subList(0, logged.number() - 1).stream()
                .anyMatch(before -> logged.at().isBefore(before.at()) || EntryTime.clockRanBack(before, logged));
        return back
                || logged.written()
                        .filter(written ->
                                EntryTime.isToCome(logged.at(), written) || EntryTime.isLongAfter(logged.at(), written))
                        .isPresent();
    }
}
