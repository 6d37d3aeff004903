package everyblade.core.turning;

import everyblade.core.entry.Entry;
import java.time.Instant;

/**
 * An entry as the journal keeps it.
 *
 * @param number K, from 1
 * @param at when it was entered
 * @param by whom
 * @param live whether it was entered as it happened, not from a file
 * @param text as typed
 * @param entry what it means
 */
public record Logged(int number, Instant at, String by, boolean live, String text, Entry entry) {}
