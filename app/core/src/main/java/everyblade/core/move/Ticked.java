package everyblade.core.move;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * An outline held against what was seen by now. Nobody ticks: what was to be closed at a view is done when none of it is a gap
 * any more that some view shows, however that came about, and open again when it is one again.
 *
 * @param visits as in the outline
 * @param beside how many cells are left that some view shows and nothing of the outline closes
 */
public record Ticked(List<Visit> visits, int beside) {

    public Ticked {
        visits = List.copyOf(visits);
    }

    /** How far something is. */
    public enum How {
        /** Nothing of it was done. */
        OPEN,
        BEGUN,
        DONE;

        private static How of(int left, int all) {
            return left == 0 ? DONE : left == all ? OPEN : BEGUN;
        }
    }

    /**
     * A port.
     *
     * @param planned what was to be done there
     */
    public record Visit(Outline.Visit planned, List<Stop> stops) {

        public Visit {
            stops = List.copyOf(stops);
        }

        /** Done with all its views, open with all its views. */
        public How how() {
            if (stops.stream().allMatch(stop -> stop.how() == How.OPEN)) {
                return How.OPEN;
            }
            return left() == 0 ? How.DONE : How.BEGUN;
        }

        /** How many of its views are not done. */
        public int left() {
            return (int) stops.stream().filter(Stop::isLeft).count();
        }
    }

    /**
     * A view.
     *
     * @param planned what was to be done there
     * @param cells that were to be closed there, at least one; of a view that closes nothing by itself all that are asked
     *     for of its row and some view shows, since nothing less tells that nobody needs it any more
     * @param left how many of them are not done, 0 to {@code cells}
     */
    public record Stop(Outline.Stop planned, int cells, int left) {

        private static Stop of(Outline.Stop planned, Coverage now) {
            RowCoverage row = now.row(planned.row().id());
            SortedMap<Integer, ZoneSet> closes = planned.closes().isEmpty() ? all(row) : planned.closes();
            int cells = closes.values().stream().mapToInt(ZoneSet::size).sum();
            int left = closes.entrySet().stream()
                    .mapToInt(one -> Gaps.within(row, one.getKey())
                            .intersection(one.getValue())
                            .size())
                    .sum();
            return new Stop(planned, cells, left);
        }

        private static SortedMap<Integer, ZoneSet> all(RowCoverage row) {
            SortedMap<Integer, ZoneSet> all = new TreeMap<>();
            for (int n = 1; n <= row.row().count(); n++) {
                all.put(n, row.asked().minus(Gaps.beyond(row, n)));
            }
            return all;
        }

        public How how() {
            return How.of(left, cells);
        }

        private boolean isLeft() {
            return how() != How.DONE;
        }
    }

    /**
     * What of an outline is done.
     *
     * @param now what was seen of the same engine
     */
    public static Ticked of(Outline outline, Coverage now) {
        return new Ticked(
                outline.visits().stream()
                        .map(visit -> new Visit(
                                visit,
                                visit.stops().stream()
                                        .map(stop -> Stop.of(stop, now))
                                        .toList()))
                        .toList(),
                beside(outline, now));
    }

    private static int beside(Outline outline, Coverage now) {
        Map<String, Map<Integer, ZoneSet>> closed = new HashMap<>();
        outline.visits().stream().flatMap(visit -> visit.stops().stream()).forEach(stop -> {
            Map<Integer, ZoneSet> ofRow = closed.computeIfAbsent(stop.row().id(), id -> new HashMap<>());
            stop.closes().forEach((n, zones) -> ofRow.merge(n, zones, ZoneSet::union));
        });
        int beside = 0;
        for (RowCoverage row : now.rows()) {
            Map<Integer, ZoneSet> ofRow = closed.getOrDefault(row.row().id(), Map.of());
            for (int n = 1; n <= row.row().count(); n++) {
                beside += Gaps.within(row, n)
                        .minus(ofRow.getOrDefault(n, ZoneSet.NONE))
                        .size();
            }
        }
        return beside;
    }

    /** How many views are not done. */
    public int views() {
        return (int) left().count();
    }

    /** How long the views that are not done take by the plan, each wholly; minutes, 0 or more. */
    public double minutes() {
        return left().mapToDouble(stop -> stop.planned().minutes()).sum();
    }

    private Stream<Stop> left() {
        return visits.stream().flatMap(visit -> visit.stops().stream()).filter(Stop::isLeft);
    }
}
