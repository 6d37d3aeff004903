package everyblade.core.angle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

/**
 * A set of ticks on a circle as sorted, disjoint, maximal arcs: no two of them touch, so equal sets are equal objects.
 * Immutable.
 *
 * <p>Kept as boundaries of [0, turn): ticks at which membership changes, in rising order, beginning with the first tick
 * that belongs to the set. An arc over the seam is two of these runs and one of {@link #arcs()}. Operations are merges
 * in the number of arcs.
 */
public final class ArcSet {

    private final Circle circle;
    /** From, to, from, to, … with 0 ≤ from &lt; to ≤ turn, strictly rising. */
    private final long[] bounds;
    /** Whether the last run and the first are one arc. */
    private final boolean overSeam;

    private ArcSet(Circle circle, long[] bounds) {
        this.circle = circle;
        this.bounds = bounds;
        this.overSeam = bounds.length > 2 && bounds[0] == 0 && bounds[bounds.length - 1] == circle.ticks();
    }

    /** The set without ticks. */
    public static ArcSet empty(Circle circle) {
        return new ArcSet(circle, new long[0]);
    }

    /** All ticks. */
    static ArcSet full(Circle circle) {
        return new ArcSet(circle, new long[] {0, circle.ticks()});
    }

    /** The union of these arcs, at least one. */
    public static ArcSet of(Arc first, Arc... more) {
        List<Arc> arcs = new ArrayList<>(List.of(more));
        arcs.add(first);
        return of(first.circle(), arcs);
    }

    /** The union of these arcs. */
    public static ArcSet of(Circle circle, Collection<Arc> arcs) {
        long[] starts = new long[arcs.size() * 2];
        long[] ends = new long[arcs.size() * 2];
        int count = 0;
        for (Arc arc : arcs) {
            circle.requireSame(arc.circle());
            long end = arc.start() + arc.length();
            if (end > circle.ticks()) {
                starts[count] = 0;
                ends[count++] = end - circle.ticks();
                end = circle.ticks();
            }
            if (arc.start() < end) {
                starts[count] = arc.start();
                ends[count++] = end;
            }
        }
        // Sorted apart: a run ends where as many have ended as have begun, and the next begins later.
        Arrays.sort(starts, 0, count);
        Arrays.sort(ends, 0, count);
        long[] bounds = new long[count * 2];
        int used = 0;
        for (int i = 0; i < count; i++) {
            if (i == 0 || starts[i] > ends[i - 1]) {
                bounds[used++] = starts[i];
            }
            if (i == count - 1 || starts[i + 1] > ends[i]) {
                bounds[used++] = ends[i];
            }
        }
        return new ArcSet(circle, Arrays.copyOf(bounds, used));
    }

    public Circle circle() {
        return circle;
    }

    /** The maximal arcs in order of their starts; one over the seam comes last. */
    public List<Arc> arcs() {
        int size = size();
        if (size == 0) {
            return List.of();
        }
        List<Arc> arcs = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            arcs.add(new Arc(circle, from(i), to(i) - from(i)));
        }
        return arcs;
    }

    /** Those of its arcs that are at least so many ticks long. */
    public ArcSet withoutShorter(long least) {
        boolean wide = true;
        for (int i = 0; i < bounds.length && wide; i += 2) {
            wide = bounds[i + 1] - bounds[i] >= least;
        }
        return wide
                ? this
                : of(
                        circle,
                        arcs().stream().filter(arc -> arc.length() >= least).toList());
    }

    /** How many maximal arcs there are. */
    public int size() {
        return bounds.length / 2 - (overSeam ? 1 : 0);
    }

    /** The tick with which one of the maximal arcs begins, in their order. */
    public long from(int arc) {
        return bounds[2 * (overSeam ? arc + 1 : arc)];
    }

    /** The tick after the last one of a maximal arc; more than a turn where it lies over the seam. */
    public long to(int arc) {
        int run = overSeam ? arc + 1 : arc;
        return bounds[2 * run + 1] + (overSeam && run == bounds.length / 2 - 1 ? bounds[1] : 0);
    }

    public boolean isEmpty() {
        return bounds.length == 0;
    }

    public boolean isFull() {
        return bounds.length == 2 && bounds[0] == 0 && bounds[1] == circle.ticks();
    }

    /** How many ticks belong to it. */
    public long measure() {
        long sum = 0;
        for (int i = 0; i < bounds.length; i += 2) {
            sum += bounds[i + 1] - bounds[i];
        }
        return sum;
    }

    public boolean contains(long tick) {
        int at = Arrays.binarySearch(bounds, circle.wrap(tick));
        return at >= 0 ? at % 2 == 0 : (-at - 1) % 2 == 1;
    }

    /** Whether the set and the arc have a tick in common. */
    public boolean meets(Arc arc) {
        return !intersection(of(arc)).isEmpty();
    }

    public ArcSet union(ArcSet other) {
        return merged(other, true, true, true);
    }

    public ArcSet intersection(ArcSet other) {
        return merged(other, true, false, false);
    }

    /** What belongs to this set and not to the other. */
    public ArcSet difference(ArcSet other) {
        return merged(other, false, true, false);
    }

    /** What does not belong to it. */
    public ArcSet complement() {
        ArcSet rest = full(circle).difference(this);
        if (rest.measure() + measure() != circle.ticks()) {
            throw new IllegalStateException("a set and its complement do not make a turn: " + this);
        }
        return rest;
    }

    /** The set turned by so many ticks, either way. */
    public ArcSet shift(long ticks) {
        return of(
                circle,
                arcs().stream()
                        .map(arc -> new Arc(circle, arc.start() + circle.wrap(ticks), arc.length()))
                        .toList());
    }

    /** Every tick within the radius of a tick of the set. */
    public ArcSet grow(long radius) {
        if (radius < 0) {
            throw new IllegalArgumentException("a radius is not negative");
        }
        long reach = Math.min(radius, circle.ticks());
        return of(
                circle,
                arcs().stream()
                        .map(arc -> new Arc(
                                circle, arc.start() - reach, Math.min(circle.ticks(), arc.length() + 2 * reach)))
                        .toList());
    }

    /** Every tick whose whole neighbourhood of that radius belongs to the set. */
    public ArcSet shrink(long radius) {
        return complement().grow(radius).complement();
    }

    /** Walks both sets once; a tick belongs to the result by its membership in both, this only, or the other only. */
    private ArcSet merged(ArcSet other, boolean both, boolean thisOnly, boolean otherOnly) {
        circle.requireSame(other.circle);
        long[] result = new long[bounds.length + other.bounds.length];
        int used = 0;
        int i = 0;
        int j = 0;
        boolean in = false;
        while (i < bounds.length || j < other.bounds.length) {
            long a = i < bounds.length ? bounds[i] : Long.MAX_VALUE;
            long b = j < other.bounds.length ? other.bounds[j] : Long.MAX_VALUE;
            i += a <= b ? 1 : 0;
            j += b <= a ? 1 : 0;
            boolean inThis = i % 2 == 1;
            boolean inOther = j % 2 == 1;
            boolean now = inThis ? inOther ? both : thisOnly : inOther && otherOnly;
            if (now != in) {
                result[used++] = Math.min(a, b);
                in = now;
            }
        }
        return new ArcSet(circle, Arrays.copyOf(result, used));
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof ArcSet other && circle.equals(other.circle) && Arrays.equals(bounds, other.bounds);
    }

    @Override
    public int hashCode() {
        return Objects.hash(circle, Arrays.hashCode(bounds));
    }

    /** The text notation of {@link ArcText}. */
    @Override
    public String toString() {
        return ArcText.of(this);
    }
}
