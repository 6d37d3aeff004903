package everyblade.core.sight;

import java.util.Arrays;

/**
 * A sorted list of disjoint closed intervals of numbers, in which light still comes through; used again and again by one
 * thread, so that nothing is made per test.
 */
final class IntervalSet {

    /** What is left between two shades that share an end is rounding, not light. */
    private static final double ROUNDING = 1e-11;

    private double[] ends = new double[32];
    private int size;

    int count() {
        return size / 2;
    }

    boolean isEmpty() {
        return size == 0;
    }

    double from(int i) {
        return ends[2 * i];
    }

    double to(int i) {
        return ends[2 * i + 1];
    }

    void clear() {
        size = 0;
    }

    /** The one interval. */
    void set(double from, double to) {
        size = 2;
        ends[0] = from;
        ends[1] = to;
    }

    void set(IntervalSet other) {
        room(other.size);
        System.arraycopy(other.ends, 0, ends, 0, other.size);
        size = other.size;
    }

    /** Adds an interval after all others; one that begins where the last ended goes on with it. */
    void append(double from, double to) {
        if (size > 0 && from <= ends[size - 1]) {
            ends[size - 1] = Math.max(ends[size - 1], to);
            return;
        }
        room(size + 2);
        ends[size++] = from;
        ends[size++] = to;
    }

    private void room(int needed) {
        if (needed > ends.length) {
            ends = Arrays.copyOf(ends, 2 * needed);
        }
    }

    /** Takes away what lies between the two. */
    void subtract(double from, double to) {
        int first = 0;
        while (first < size && ends[first + 1] <= from) {
            first += 2;
        }
        int last = first;
        while (last < size && ends[last] < to) {
            last += 2;
        }
        if (first == last) {
            return;
        }
        double low = ends[first];
        double high = ends[last - 1];
        boolean keepLow = from - low > ROUNDING;
        boolean keepHigh = high - to > ROUNDING;
        int kept = (keepLow ? 2 : 0) + (keepHigh ? 2 : 0);
        int change = kept - (last - first);
        room(size + Math.max(0, change));
        System.arraycopy(ends, last, ends, last + change, size - last);
        size += change;
        int at = first;
        if (keepLow) {
            ends[at++] = low;
            ends[at++] = from;
        }
        if (keepHigh) {
            ends[at++] = to;
            ends[at] = high;
        }
    }

    /** Takes away what lies outside the intervals of the other. */
    void intersect(IntervalSet other) {
        if (other.isEmpty()) {
            size = 0;
            return;
        }
        subtract(Double.NEGATIVE_INFINITY, other.ends[0]);
        for (int i = 1; i + 1 < other.size; i += 2) {
            subtract(other.ends[i], other.ends[i + 1]);
        }
        subtract(other.ends[other.size - 1], Double.POSITIVE_INFINITY);
    }

    double length() {
        double sum = 0;
        for (int i = 0; i < size; i += 2) {
            sum += ends[i + 1] - ends[i];
        }
        return sum;
    }
}
