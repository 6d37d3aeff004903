package everyblade.record;

import everyblade.core.entry.Entry;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * An entry that was judged and is now to be kept.
 *
 * @param text as it was said
 * @param means what the text says
 * @param at when, UTC, cut to milliseconds
 * @param by who said it
 * @param live whether {@code at} is the time at which it happened, not one given afterwards
 */
public record Addition(String text, Entry means, Instant at, String by, boolean live) {

    public Addition {
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }
}
