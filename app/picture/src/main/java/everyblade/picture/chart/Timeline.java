package everyblade.picture.chart;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much was seen as the record stood at several times, from its first entry to its last; times never run back.
 *
 * @param points in the order of the entries
 */
public record Timeline(List<Point> points) {

    /** More points than this would not show on a page. */
    static final int MOST = 120;

    /**
     * What was seen up to a time.
     *
     * @param at when
     * @param tally of all rows
     */
    public record Point(Instant at, Tally tally) {}

    public Timeline {
        points = List.copyOf(points);
    }

    /** The timeline of a journal; void entries are left out as if they had never been made. */
    public static Timeline of(Fold whole, OptionalDouble leastView) {
        List<Logged> entries = whole.entries();
        Fold fold = Fold.start(whole.situation().engine());
        Coverage coverage = Coverage.of(fold.situation(), leastView);
        List<Point> points = new ArrayList<>();
        Instant latest = Instant.MIN;
        int step = Math.max(1, (entries.size() + MOST - 1) / MOST);
        for (int i = 0; i < entries.size(); i++) {
            Logged logged = entries.get(i);
            // Entries typed afterwards may bear earlier times than those before them.
            latest = latest.isAfter(logged.at()) ? latest : logged.at();
            fold = kept(fold, logged, whole.isVoid(logged.number()));
            if (i == 0 || (i + 1) % step == 0 || i == entries.size() - 1) {
                coverage = coverage.after(fold.situation());
                points.add(new Point(latest, coverage.tally()));
            }
        }
        return new Timeline(points);
    }

    /** Void entries and those that void them stay as notes, so that the others keep their numbers. */
    private static Fold kept(Fold fold, Logged logged, boolean isVoid) {
        boolean counts = !isVoid && !(logged.entry() instanceof Entry.Void);
        Entry entry = counts ? logged.entry() : new Entry.Note("");
        try {
            return fold.with(
                    new Logged(logged.number(), logged.at(), logged.by(), logged.live(), logged.text(), entry));
        } catch (Refusal impossible) {
            throw new IllegalStateException("entry " + logged.number() + " counted, and now it does not", impossible);
        }
    }

    /** Whether there is any time between the first point and the last. */
    public boolean takesTime() {
        return points.size() > 1
                && points.get(points.size() - 1).at().isAfter(points.get(0).at());
    }
}
