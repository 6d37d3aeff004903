package everyblade.core.gap;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.sight.StationSight;
import java.util.BitSet;
import java.util.List;

/**
 * The shortest range of clock angles which an airfoil must pass so that a station shows all of some facets, a little wider at
 * both ends.
 *
 * @param from where it begins, clockwise
 * @param width how far it goes
 */
record Showing(Turn from, Turn width) {

    /** So that a reading in tenths of a degree still does. */
    private static final long MARGIN = Circle.TICKS_PER_DEGREE;

    private static final Circle CIRCLE = Circle.STANDARD;

    /** An airfoil needs only to stand at a clock angle, degrees. */
    static Showing at(double clock) {
        return new Showing(Turn.ofDegrees(clock), Turn.ZERO);
    }

    /** The range for facets each of which the station shows from every pose. */
    static Showing of(StationSight sight, BitSet facets) {
        List<ArcSet> wanted =
                facets.stream().mapToObj(facet -> common(sight, facet)).toList();
        long best = 0;
        long least = CIRCLE.ticks();
        for (ArcSet facet : wanted) {
            for (Arc arc : facet.arcs()) {
                long start = CIRCLE.wrap(arc.start() + arc.length() - 1);
                long width = wanted.stream()
                        .mapToLong(other -> until(start, other))
                        .max()
                        .orElse(0);
                if (width < least) {
                    least = width;
                    best = start;
                }
            }
        }
        return new Showing(Turn.ofTicks(best - MARGIN), Turn.ofTicks(Math.min(CIRCLE.ticks(), least + 2 * MARGIN)));
    }

    /** Where every pose shows a facet of all airfoils; if there is no such angle, where the nominal one does. */
    private static ArcSet common(StationSight sight, int facet) {
        ArcSet every = sight.arcs(0, facet);
        for (int kind = 0; kind < sight.kinds(); kind++) {
            for (int pose = 0; pose < sight.poses() && !every.isEmpty(); pose++) {
                every = every.intersection(sight.arcs(kind, pose, facet));
            }
        }
        return every.isEmpty() ? sight.arcs(0, facet) : every;
    }

    /** How far clockwise from a tick these arcs begin; 0 if it lies in one. */
    private static long until(long tick, ArcSet arcs) {
        if (arcs.contains(tick)) {
            return 0;
        }
        return arcs.arcs().stream()
                .mapToLong(arc -> CIRCLE.wrap(arc.start() - tick))
                .min()
                .orElse(0);
    }
}
