package everyblade.core.angle;

/**
 * A half-open arc: the ticks from {@code start} on, {@code length} of them. The empty and the full arc start at zero, so
 * equal arcs are equal records.
 *
 * @param circle what it lies on
 * @param start 0 ≤ start &lt; a turn
 * @param length from 0 (empty) to a turn (full)
 */
public record Arc(Circle circle, long start, long length) {

    public Arc {
        if (length < 0 || length > circle.ticks()) {
            throw new IllegalArgumentException("an arc is from nothing to a turn long, not " + length + " ticks");
        }
        start = length == 0 || length == circle.ticks() ? 0 : circle.wrap(start);
    }

    /** The closed range from one tick to another not before it, unrolled; at most a turn. */
    public static Arc closed(Circle circle, long from, long to) {
        if (to < from) {
            throw new IllegalArgumentException("a closed range ends before it begins");
        }
        long between = Math.subtractExact(to, from);
        return new Arc(circle, from, Math.min(between, circle.ticks() - 1) + 1);
    }

    public boolean isEmpty() {
        return length == 0;
    }

    public boolean isFull() {
        return length == circle.ticks();
    }

    public boolean contains(long tick) {
        return circle.wrap(circle.wrap(tick) - start) < length;
    }

    /** Whether the two, of one circle, have a tick in common. */
    public boolean meets(Arc other) {
        circle.requireSame(other.circle);
        return !isEmpty() && !other.isEmpty() && (contains(other.start) || other.contains(start));
    }
}
