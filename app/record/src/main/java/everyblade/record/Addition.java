package everyblade.record;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Said;
import everyblade.core.entry.Stated;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * An entry that was judged and is now to be kept.
 *
 * @param text as it was said
 * @param means what the text says
 * @param at when it was, as was said, UTC, cut to milliseconds
 * @param by who said it
 * @param live whether {@code at} is the time at which it happened, not one given afterwards
 * @param photo the picture that the entry names, as it was kept; the writer of the journal sees to it
 * @param written when it was typed by the clock of the machine, UTC, cut to milliseconds; empty in old records, which kept
 *     only one time
 */
public record Addition(
        String text,
        Entry means,
        Instant at,
        String by,
        boolean live,
        Optional<KeptPhoto> photo,
        Optional<Instant> written) {

    public Addition {
        at = at.truncatedTo(ChronoUnit.MILLIS);
        written = written.map(time -> time.truncatedTo(ChronoUnit.MILLIS));
    }

    /** An entry whose picture, if it names one, the writer has still to look at. */
    public Addition(String text, Entry means, Instant at, String by, boolean live, Optional<Instant> written) {
        this(text, means, at, by, live, Optional.empty(), written);
    }

    /** One of which nobody knows when it was typed. */
    public Addition(String text, Entry means, Instant at, String by, boolean live) {
        this(text, means, at, by, live, Optional.empty());
    }

    /** The name of the picture in the job that the entry names, without any folder before it. */
    Optional<String> photoNamed() {
        String named = Stated.file(means).map(Said::value).orElse("");
        return named.isEmpty()
                ? Optional.empty()
                : Optional.of(named.substring(named.replace('\\', '/').lastIndexOf('/') + 1));
    }

    /** The same without the time at which it was typed. */
    public Addition undated() {
        return new Addition(text, means, at, by, live, photo, Optional.empty());
    }

    Addition with(KeptPhoto kept) {
        return new Addition(text, means, at, by, live, Optional.of(kept), written);
    }
}
