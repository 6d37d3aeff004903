package everyblade.picture.chart;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How much was seen, of the rows whose sight is computed or, if there are none, of those whose windows are declared, as the
 * record stood at several times, from its first entry to its last; times never run back.
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
     * @param cells of all rows
     * @param seen cells that are
     * @param done cells that are seen, or as far as they can be
     * @param atLeastMaybe cells that are seen, seen in part, or maybe one of these
     */
    public record Point(Instant at, int cells, int seen, int done, int atLeastMaybe) {

        // States alone are counted: a tally would ask of each cell what was remarked about it, at each point again.
        static Point of(Instant at, Coverage coverage) {
            int cells = 0;
            int seen = 0;
            int done = 0;
            int left = 0;
            for (RowCoverage row : coverage.rows()) {
                if (row.basis() != coverage.leading()) {
                    continue;
                }
                cells += row.cells();
                for (int n = 1; n <= row.row().count(); n++) {
                    for (int zone = 0; zone < row.zoning().size(); zone++) {
                        State state = row.state(n, zone);
                        seen += state == State.SEEN ? 1 : 0;
                        done += state.isDone() ? 1 : 0;
                        left += state.grade() == State.Grade.LEFT ? 1 : 0;
                    }
                }
            }
            return new Point(at, cells, seen, done, cells - left);
        }
    }

    public Timeline {
        points = List.copyOf(points);
    }

    /**
     * The timeline of a journal; void entries are left out as if they had never been made.
     *
     * @param covered the coverage of all of it
     */
    public static Timeline of(Fold whole, Coverage covered) {
        List<Logged> entries = whole.entries();
        Fold fold = Fold.start(whole.situation().engine());
        Coverage coverage = covered.after(fold.situation());
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
                points.add(Point.of(latest, coverage));
            }
        }
        return new Timeline(points);
    }

    /**
     * Void entries and those that void them stay as notes, so that the others keep their numbers; so do answers, which may be
     * about a void.
     */
    private static Fold kept(Fold fold, Logged logged, boolean isVoid) {
        boolean counts = !isVoid
                && !(logged.entry() instanceof RecordEntry.Void)
                && !(logged.entry() instanceof FindingEntry.Settle);
        Entry entry = counts ? logged.entry() : new RecordEntry.Note("");
        try {
            return fold.with(new Logged(
                    logged.number(), logged.at(), logged.by(), logged.live(), logged.text(), entry, logged.written()));
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
