package everyblade.core.gap;

import everyblade.core.angle.Circle;
import everyblade.core.sight.StationSight;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Clock angles that an airfoil must pass for something to be surely shown: from at most {@code low} to at least {@code high}.
 * Where {@code high} is the lower, it may stand anywhere between them.
 *
 * @param low ticks
 * @param high ticks, within a turn of {@code low}
 */
record Need(long low, long high) {

    private static final Circle CIRCLE = Circle.STANDARD;

    /**
     * For these patches of a facet to be shown from every pose, as far as they can be, of airfoils of every kind. Any of these
     * will do; none if the station shows none of them.
     *
     * @param wanted patches, counted from the first of the facet
     */
    static List<Need> of(StationSight sight, int facet, IntPredicate wanted) {
        List<List<Need>> all = new ArrayList<>();
        for (int patch = 0; patch < sight.patches(facet); patch++) {
            for (int kind = 0; kind < sight.kinds() && wanted.test(patch); kind++) {
                for (int pose = 0; pose < sight.poses() && sight.reaches(kind, facet, patch); pose++) {
                    all.add(of(sight, kind, pose, facet, patch));
                }
            }
        }
        return together(all.stream().distinct().toList());
    }

    private static List<Need> of(StationSight sight, int kind, int pose, int facet, int patch) {
        long before = sight.startSlack(kind, pose, facet, patch);
        long after = sight.endSlack(kind, pose, facet, patch);
        return sight.arcs(kind, pose, facet, patch).arcs().stream()
                .map(arc -> new Need(arc.start() + arc.length() - 1 - after, arc.start() + before))
                .toList();
    }

    /** What meets one need of each of these, nothing that goes further than another. */
    private static List<Need> together(List<List<Need>> all) {
        if (all.size() == 1) {
            return all.get(0);
        }
        List<Need> together = all.stream()
                .flatMap(List::stream)
                .mapToLong(Need::low)
                .map(CIRCLE::wrap)
                .distinct()
                .mapToObj(low -> new Need(low, low + furthest(low, all)))
                .toList();
        return together.stream()
                .filter(need -> together.stream().noneMatch(other -> need != other && need.contains(other)))
                .toList();
    }

    /** How far clockwise from a tick a range must reach that begins there and meets one need of each of these. */
    static long furthest(long start, List<List<Need>> all) {
        long furthest = -CIRCLE.ticks();
        for (List<Need> needs : all) {
            long nearest = Long.MAX_VALUE;
            for (Need need : needs) {
                nearest = Math.min(nearest, CIRCLE.wrap(need.low - start) + need.high - need.low);
            }
            furthest = Math.max(furthest, nearest);
        }
        return furthest;
    }

    /** Whether whatever meets this meets the other. */
    private boolean contains(Need other) {
        long later = CIRCLE.wrap(other.low - low);
        return later + other.high - other.low <= high - low;
    }
}
