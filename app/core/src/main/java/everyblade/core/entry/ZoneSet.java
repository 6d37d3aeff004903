package everyblade.core.entry;

/**
 * A set of zones of one row, one bit a zone in the order of {@link Zoning#names()}.
 *
 * @param bits bit z stands for zone z
 */
public record ZoneSet(long bits) {

    /** No zone. */
    public static final ZoneSet NONE = new ZoneSet(0);

    public ZoneSet union(ZoneSet other) {
        return new ZoneSet(bits | other.bits);
    }

    public ZoneSet intersection(ZoneSet other) {
        return new ZoneSet(bits & other.bits);
    }

    public ZoneSet minus(ZoneSet other) {
        return new ZoneSet(bits & ~other.bits);
    }

    public boolean contains(int zone) {
        return (bits >>> zone & 1) != 0;
    }

    public boolean isEmpty() {
        return bits == 0;
    }

    public int size() {
        return Long.bitCount(bits);
    }
}
