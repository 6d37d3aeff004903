package everyblade.core.gap;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.StationSight;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

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
        return ofEvery(
                sight,
                IntStream.range(0, sight.patches(facet)).filter(wanted),
                (kind, pose, patch) -> sight.reaches(kind, facet, patch)
                        ? of(
                                sight.arcs(kind, pose, facet, patch),
                                sight.startSlack(kind, pose, facet, patch),
                                sight.endSlack(kind, pose, facet, patch))
                        : List.of());
    }

    /**
     * The same for patches along an edge of sight to be shown as a whole.
     *
     * @param wanted of those that the station shows so
     */
    static List<Need> ofWhole(StationSight sight, int facet, IntPredicate wanted, int patches) {
        return ofEvery(
                sight,
                IntStream.range(0, patches).filter(wanted),
                (kind, pose, patch) -> of(sight.whole(kind, pose, facet, patch), 0, 0));
    }

    private interface OfPose {
        List<Need> of(int kind, int pose, int patch);
    }

    private static List<Need> ofEvery(StationSight sight, IntStream patches, OfPose each) {
        List<List<Need>> all = new ArrayList<>();
        patches.forEach(patch -> {
            for (int kind = 0; kind < sight.kinds(); kind++) {
                for (int pose = 0; pose < sight.poses(); pose++) {
                    all.add(each.of(kind, pose, patch));
                }
            }
        });
        return together(
                all.stream().filter(needs -> !needs.isEmpty()).distinct().toList());
    }

    private static List<Need> of(ArcSet arcs, long before, long after) {
        return arcs.arcs().stream()
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
