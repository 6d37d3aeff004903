package everyblade.core.angle;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The naive model on a circle too large to list: between the ends of the arcs it was made of nothing changes, so one
 * tick of each piece stands for the piece. Membership is asked of every arc, one after the other.
 *
 * @param arcs pairs of start and length, as drawn: in any order, overlapping, over the seam
 */
record BoundaryModel(Circle circle, List<long[]> arcs) {

    boolean has(long tick) {
        return arcs.stream().anyMatch(arc -> Math.floorMod(tick - arc[0], circle.ticks()) < arc[1]);
    }

    ArcSet set() {
        return ArcSet.of(
                circle,
                arcs.stream().map(arc -> new Arc(circle, arc[0], arc[1])).toList());
    }

    BoundaryModel turned(long by) {
        return new BoundaryModel(
                circle,
                arcs.stream().map(arc -> new long[] {arc[0] + by, arc[1]}).toList());
    }

    BoundaryModel grown(long radius) {
        return new BoundaryModel(
                circle,
                arcs.stream()
                        .filter(arc -> arc[1] > 0)
                        .map(arc -> new long[] {arc[0] - radius, Math.min(circle.ticks(), arc[1] + 2 * radius)})
                        .toList());
    }

    /** What a combination of two sets does with a tick. */
    interface Rule {
        boolean keeps(boolean inFirst, boolean inSecond);
    }

    /** The maximal arcs of a combination, in order of their starts. */
    static List<Arc> combined(BoundaryModel first, BoundaryModel second, Rule rule) {
        Circle circle = first.circle;
        TreeSet<Long> cuts = new TreeSet<>();
        for (BoundaryModel model : List.of(first, second)) {
            for (long[] arc : model.arcs) {
                cuts.add(circle.wrap(arc[0]));
                cuts.add(circle.wrap(arc[0] + arc[1]));
            }
        }
        List<Long> starts = new ArrayList<>();
        List<Long> ends = new ArrayList<>();
        for (long cut : cuts) {
            boolean before = rule.keeps(first.has(cut - 1), second.has(cut - 1));
            boolean after = rule.keeps(first.has(cut), second.has(cut));
            if (after && !before) {
                starts.add(cut);
            }
            if (before && !after) {
                ends.add(cut);
            }
        }
        if (starts.isEmpty()) {
            return rule.keeps(first.has(0), second.has(0)) ? List.of(new Arc(circle, 0, circle.ticks())) : List.of();
        }
        List<Arc> arcs = new ArrayList<>();
        for (long start : starts) {
            long end = ends.stream().filter(e -> e > start).findFirst().orElse(ends.get(0) + circle.ticks());
            arcs.add(new Arc(circle, start, end - start));
        }
        return arcs;
    }
}
