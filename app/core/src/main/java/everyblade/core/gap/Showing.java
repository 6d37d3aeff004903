package everyblade.core.gap;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.sight.StationSight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The shortest range of clock angles which an airfoil must pass so that a station shows some facets surely, wherever
 * within its tolerance the scope tip stands.
 *
 * <p>It begins where some facet is about to go out of sight: begun later it would miss that one, begun earlier it could
 * begin later (hitting intervals on a circle).
 *
 * @param from where it begins, clockwise
 * @param width how far it goes
 */
public record Showing(Turn from, Turn width) {

    /** So that a reading in tenths of a degree still does. */
    private static final Turn MARGIN = Turn.ofTicks(Circle.TICKS_PER_DEGREE);

    private static final Circle CIRCLE = Circle.STANDARD;

    /** An airfoil needs only to stand at a clock angle, degrees. */
    static Showing at(double clock) {
        return new Showing(Turn.ofDegrees(clock), Turn.ZERO);
    }

    /** The range for all of some facets. */
    public static Showing of(StationSight sight, BitSet facets) {
        return of(sight, facets, shown -> shown.cardinality() == facets.cardinality());
    }

    /**
     * The range for so many of some facets that it is enough.
     *
     * @param enough whether these facets are; if so, more are too, and all of them are
     */
    public static Showing of(StationSight sight, BitSet facets, Predicate<BitSet> enough) {
        int[] numbers = facets.stream().toArray();
        long[][][] wanted = new long[numbers.length][][];
        for (int i = 0; i < numbers.length; i++) {
            wanted[i] = wherePosesShow(sight, numbers[i]).stream()
                    .map(Showing::startsAndLengths)
                    .toArray(long[][]::new);
        }
        long best = 0;
        long least = CIRCLE.ticks();
        for (long start : lastTicks(wanted)) {
            long[] ahead = new long[numbers.length];
            for (int i = 0; i < numbers.length; i++) {
                for (long[] arcs : wanted[i]) {
                    ahead[i] = Math.max(ahead[i], until(start, arcs));
                }
            }
            if (enough.test(shown(numbers, ahead, least - 1))) {
                least = least(numbers, ahead, enough);
                best = start;
            }
        }
        return new Showing(Turn.ofTicks(best), Turn.ofTicks(least));
    }

    private static long[] startsAndLengths(ArcSet set) {
        return set.arcs().stream()
                .flatMapToLong(arc -> LongStream.of(arc.start(), arc.length()))
                .toArray();
    }

    private static long[] lastTicks(long[][][] wanted) {
        return Arrays.stream(wanted)
                .flatMap(Arrays::stream)
                .flatMapToLong(arcs -> IntStream.range(0, arcs.length / 2)
                        .mapToLong(arc -> CIRCLE.wrap(arcs[2 * arc] + arcs[2 * arc + 1] - 1)))
                .distinct()
                .toArray();
    }

    private static long least(int[] facets, long[] ahead, Predicate<BitSet> enough) {
        long[] sorted = Arrays.stream(ahead).sorted().distinct().toArray();
        int low = 0;
        int high = sorted.length - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (enough.test(shown(facets, ahead, sorted[middle]))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return sorted.length == 0 ? 0 : sorted[low];
    }

    private static BitSet shown(int[] facets, long[] ahead, long width) {
        BitSet shown = new BitSet();
        IntStream.range(0, facets.length).filter(i -> ahead[i] <= width).forEach(i -> shown.set(facets[i]));
        return shown;
    }

    /** A little wider at both ends. */
    Showing wider() {
        Turn wide = width.plus(MARGIN).plus(MARGIN);
        return new Showing(from.minus(MARGIN), wide.compareTo(Turn.FULL) > 0 ? Turn.FULL : wide);
    }

    /** Where every pose shows a facet; if there is no such angle, where each of them does. */
    private static List<ArcSet> wherePosesShow(StationSight sight, int facet) {
        ArcSet every = sight.arcs(0, facet);
        for (int pose = 1; pose < sight.poses() && !every.isEmpty(); pose++) {
            every = every.intersection(sight.arcs(pose, facet));
        }
        if (!every.isEmpty()) {
            return List.of(every);
        }
        List<ArcSet> each = new ArrayList<>();
        for (int pose = 0; pose < sight.poses(); pose++) {
            each.add(sight.arcs(pose, facet));
        }
        return each;
    }

    /** How far clockwise from a tick these arcs begin; 0 if it lies in one. */
    private static long until(long tick, long[] arcs) {
        long least = arcs.length == 0 ? 0 : CIRCLE.ticks();
        for (int arc = 0; arc < arcs.length; arc += 2) {
            long since = CIRCLE.wrap(tick - arcs[arc]);
            least = since < arcs[arc + 1] ? 0 : Math.min(least, CIRCLE.ticks() - since);
            if (least == 0) {
                return 0;
            }
        }
        return least;
    }
}
