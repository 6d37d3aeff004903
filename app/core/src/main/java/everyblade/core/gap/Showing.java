package everyblade.core.gap;

import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The shortest range of clock angles which an airfoil must pass so that a station shows all of some facets, a little wider at
 * both ends.
 *
 * @param from where it begins, clockwise
 * @param width how far it goes
 */
public record Showing(Turn from, Turn width) {

    /** So that a reading in tenths of a degree still does. */
    private static final long MARGIN = Circle.TICKS_PER_DEGREE;

    private static final Circle CIRCLE = Circle.STANDARD;

    /** An airfoil needs only to stand at a clock angle, degrees. */
    static Showing at(double clock) {
        return new Showing(Turn.ofDegrees(clock), Turn.ZERO);
    }

    /** The range for what the station surely shows of these facets. */
    public static Showing of(StationSight sight, BitSet facets) {
        return of(facets.stream().mapToObj(facet -> Need.of(sight, facet, patch -> true)));
    }

    /**
     * The range for what the station surely shows of these patches.
     *
     * @param whole patches that it is to show as a whole, and does
     */
    public static Showing of(StationSight sight, Patches patches, BitSet parts, BitSet whole) {
        return of(Stream.concat(
                facets(patches, parts)
                        .mapToObj(facet -> Need.of(sight, facet, patch -> parts.get(patches.first(facet) + patch))),
                facets(patches, whole)
                        .mapToObj(facet -> Need.ofWhole(
                                sight,
                                facet,
                                patch -> whole.get(patches.first(facet) + patch),
                                patches.count(facet)))));
    }

    private static IntStream facets(Patches patches, BitSet parts) {
        return parts.stream().map(patches::facet).distinct();
    }

    private static Showing of(Stream<List<Need>> needs) {
        List<List<Need>> wanted = needs.filter(any -> !any.isEmpty()).distinct().toList();
        long best = 0;
        long least = CIRCLE.ticks();
        for (List<Need> facet : wanted) {
            for (Need need : facet) {
                long start = CIRCLE.wrap(need.low());
                long width = Math.max(0, Need.furthest(start, wanted));
                if (width < least) {
                    least = width;
                    best = start;
                }
            }
        }
        return new Showing(Turn.ofTicks(best - MARGIN), Turn.ofTicks(Math.min(CIRCLE.ticks(), least + 2 * MARGIN)));
    }
}
