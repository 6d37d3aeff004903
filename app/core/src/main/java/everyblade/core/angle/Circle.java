package everyblade.core.angle;

/**
 * A circle divided into a whole number of ticks. How fine it is, is decided once, here; everything on it is integer.
 *
 * @param ticks how many make a turn, at least one
 */
public record Circle(long ticks) {

    /** A thousandth of an arc second: degrees to five decimals, and many pitches, are whole ticks. */
    public static final Circle STANDARD = new Circle(1_296_000_000L);

    /** Ticks of the standard circle that make one degree. */
    public static final long TICKS_PER_DEGREE = 3_600_000L;

    public Circle {
        if (ticks < 1 || ticks > Long.MAX_VALUE / 4) {
            throw new IllegalArgumentException("a circle needs from 1 to 2^61 ticks, not " + ticks);
        }
    }

    /** Refuses another circle with an {@link IllegalArgumentException}: ticks of different circles do not compare. */
    void requireSame(Circle other) {
        if (ticks != other.ticks) {
            throw new IllegalArgumentException("arcs of different circles do not mix");
        }
    }

    /** The same position, 0 ≤ tick &lt; a turn. */
    public long wrap(long tick) {
        return Math.floorMod(tick, ticks);
    }

    /** From one position to another the shorter way, below 0 if that is back; half a turn is on. */
    public long apart(long from, long to) {
        long on = wrap(to - from);
        return on > ticks / 2 ? on - ticks : on;
    }
}
