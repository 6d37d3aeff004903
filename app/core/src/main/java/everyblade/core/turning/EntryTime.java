package everyblade.core.turning;

import everyblade.fact.Fact;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * What can be wrong with the time of an entry. No time is refused, since an entry may be typed long after, from a clock
 * that was wrong; the order of a record is that in which it was kept, whatever its times say.
 */
public final class EntryTime {

    /** Before this nobody kept such a record by a program; common practice, no source. */
    private static final Instant FIRST = Instant.parse("1980-01-01T00:00:00Z");

    /** By so much clocks of two machines differ that are both right. */
    private static final Duration SLACK = Duration.ofMinutes(5);

    /** What is typed later than that was not entered in the shift in which it was done; common practice, no source. */
    private static final Duration SHIFT = Duration.ofHours(12);

    private EntryTime() {}

    /**
     * What to tell at an entry. What is so of a run of entries is told at its first one.
     *
     * @param at its time
     * @param before the time of the entry before it, or that at which the job was started
     * @param now by this machine's clock
     */
    public static List<Fact> doubts(Instant at, Instant before, Instant now) {
        List<Fact> doubts = new ArrayList<>();
        if (at.isBefore(before)) {
            doubts.add(new TimeWarning.Earlier(told(at), told(before)));
        }
        if (isToCome(at, now) && !isToCome(before, now)) {
            doubts.add(new TimeWarning.ToCome(told(at), told(now)));
        }
        if (at.isBefore(FIRST) && !before.isBefore(FIRST)) {
            doubts.add(new TimeWarning.LongAgo(told(at)));
        }
        return doubts;
    }

    /**
     * Whether somebody says when it was: it was entered as it happened, or a time was given that is not simply the one at
     * which it was typed. Of a record that kept only one time nobody can tell.
     */
    public static boolean isClaimed(Logged logged) {
        return logged.live()
                || logged.written()
                        .filter(written -> !written.equals(logged.at()))
                        .isPresent();
    }

    /** Seconds from one time to another, negative if it is earlier; no two times are too far apart. */
    public static double seconds(Instant from, Instant to) {
        Duration between = Duration.between(from, to);
        return (between.getSeconds() * 1000.0 + between.getNano() / 1_000_000) / 1000;
    }

    /** Whether a time is later than now by more than two clocks differ that are both right. */
    public static boolean isToCome(Instant at, Instant now) {
        return Duration.between(now, at).compareTo(SLACK) > 0;
    }

    /** Whether something was typed so long after it was done that nobody remembers it by then. */
    public static boolean isLongAfter(Instant at, Instant written) {
        return Duration.between(at, written).compareTo(SHIFT) > 0;
    }

    /** Whether the machine's clock stood earlier when an entry was typed than at the one before it. */
    public static boolean clockRanBack(Logged before, Logged logged) {
        return before.written()
                .flatMap(first -> logged.written().filter(then -> then.isBefore(first)))
                .isPresent();
    }

    /** A time for people, to the second, UTC. */
    public static String told(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
