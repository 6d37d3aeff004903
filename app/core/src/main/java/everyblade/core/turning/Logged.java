package everyblade.core.turning;

import everyblade.core.entry.Entry;
import java.time.Instant;
import java.util.Optional;

/**
 * An entry as the journal keeps it.
 *
 * @param number K, from 1
 * @param at when it was, as was said, UTC
 * @param by whom
 * @param live whether it was entered as it happened, not from a file
 * @param text as typed
 * @param entry what it means
 * @param written when it was typed by the clock of the machine, UTC; empty where only one time was kept
 */
public record Logged(
        int number, Instant at, String by, boolean live, String text, Entry entry, Optional<Instant> written) {

    /** One of which nobody knows when it was typed. */
    public Logged(int number, Instant at, String by, boolean live, String text, Entry entry) {
        this(number, at, by, live, text, entry, Optional.empty());
    }
}
