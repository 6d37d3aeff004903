package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import java.util.Arrays;
import java.util.BitSet;

/**
 * A set of parts of the airfoils of one row, the parts being zones or facets: one bit an airfoil and part. Grows by runs of
 * airfoils; copied before it is shared.
 */
final class CellBits {

    private final int airfoils;
    private final int words;
    private final long[] bits;

    private CellBits(int airfoils, long[] bits) {
        this.airfoils = airfoils;
        this.words = words(airfoils);
        this.bits = bits;
    }

    static CellBits none(int airfoils, int parts) {
        return new CellBits(airfoils, new long[parts * words(airfoils)]);
    }

    /** In how many words of 64 airfoils each part is kept. */
    static int words(int airfoils) {
        return (airfoils + Long.SIZE - 1) / Long.SIZE;
    }

    CellBits copy() {
        return new CellBits(airfoils, bits.clone());
    }

    /** Of a set of one part, so many parts like it. */
    CellBits repeated(int parts) {
        long[] all = new long[parts * words];
        for (int part = 0; part < parts; part++) {
            System.arraycopy(bits, 0, all, part * words, words);
        }
        return new CellBits(airfoils, all);
    }

    /** Adds these zones of a run of airfoils. */
    void add(IndexRun run, ZoneSet zones) {
        for (long rest = zones.bits(); rest != 0; rest &= rest - 1) {
            add(run, Long.numberOfTrailingZeros(rest));
        }
    }

    /** Adds one part of a run of airfoils. */
    void add(IndexRun run, int part) {
        int end = run.first() + run.length();
        addRange(run.first(), Math.min(end, airfoils), part);
        addRange(0, end - airfoils, part);
    }

    private void addRange(int from, int to, int part) {
        if (from >= to) {
            return;
        }
        for (int word = from / Long.SIZE; word * Long.SIZE < to; word++) {
            int low = Math.max(from - word * Long.SIZE, 0);
            int high = Math.min(to - word * Long.SIZE, Long.SIZE);
            bits[part * words + word] |= -1L >>> (Long.SIZE - (high - low)) << low;
        }
    }

    /** Adds all that another set of the same row holds. */
    void add(CellBits other) {
        for (int i = 0; i < bits.length; i++) {
            bits[i] |= other.bits[i];
        }
    }

    /** Takes out all that another set of the same row does not hold. */
    void keep(CellBits other) {
        for (int i = 0; i < bits.length; i++) {
            bits[i] &= other.bits[i];
        }
    }

    /** The airfoils of a word to which a part belongs, the first one lowest; no bit beyond the last. */
    long word(int word, int part) {
        return bits[part * words + word];
    }

    /** Whether a part of airfoil number n (from 1) belongs to it. */
    boolean contains(int n, int part) {
        int index = n - 1;
        return (bits[part * words + index / Long.SIZE] >>> index % Long.SIZE & 1) != 0;
    }

    /** The parts of airfoil number n (from 1) that belong to it. */
    BitSet parts(int n) {
        BitSet own = new BitSet();
        for (int part = 0; part * words < bits.length; part++) {
            own.set(part, contains(n, part));
        }
        return own;
    }

    /** Whether a part of every airfoil belongs to it. */
    boolean isFull(int part) {
        for (int word = 0; word < words; word++) {
            int left = airfoils - word * Long.SIZE;
            long all = left < Long.SIZE ? (1L << left) - 1 : -1L;
            if (bits[part * words + word] != all) {
                return false;
            }
        }
        return true;
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
