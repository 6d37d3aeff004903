package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import java.util.Arrays;

/** A set of cells of one row: one bit an airfoil and zone. Grows by runs of airfoils; copied before it is shared. */
final class CellBits {

    private final int airfoils;
    private final int words;
    private final long[] bits;

    private CellBits(int airfoils, long[] bits) {
        this.airfoils = airfoils;
        this.words = words(airfoils);
        this.bits = bits;
    }

    static CellBits none(int airfoils, int zones) {
        return new CellBits(airfoils, new long[zones * words(airfoils)]);
    }

    private static int words(int airfoils) {
        return (airfoils + Long.SIZE - 1) / Long.SIZE;
    }

    CellBits copy() {
        return new CellBits(airfoils, bits.clone());
    }

    /** Adds these zones of a run of airfoils. */
    void add(IndexRun run, ZoneSet zones) {
        int end = run.first() + run.length();
        addRange(run.first(), Math.min(end, airfoils), zones);
        addRange(0, end - airfoils, zones);
    }

    private void addRange(int from, int to, ZoneSet zones) {
        if (from >= to) {
            return;
        }
        for (int word = from / Long.SIZE; word * Long.SIZE < to; word++) {
            int low = Math.max(from - word * Long.SIZE, 0);
            int high = Math.min(to - word * Long.SIZE, Long.SIZE);
            long mask = -1L >>> (Long.SIZE - (high - low)) << low;
            for (long rest = zones.bits(); rest != 0; rest &= rest - 1) {
                bits[Long.numberOfTrailingZeros(rest) * words + word] |= mask;
            }
        }
    }

    /** Whether a zone of airfoil number n (from 1) belongs to it. */
    boolean contains(int n, int zone) {
        int index = n - 1;
        return (bits[zone * words + index / Long.SIZE] >>> index % Long.SIZE & 1) != 0;
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof CellBits other && airfoils == other.airfoils && Arrays.equals(bits, other.bits);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bits);
    }
}
