package everyblade.core.coverage;

import java.util.function.LongConsumer;

/**
 * Airfoils of a word of {@link CellBits} in groups: those of a group were alike in all that they were told apart by. What is
 * added up for the first of each group is so for the others.
 */
final class Alike {

    private final long[] groups;
    private int count;

    /** All alike: so many airfoils. */
    Alike(int airfoils) {
        this.groups = new long[airfoils];
        this.groups[0] = -1L >>> (Long.SIZE - airfoils);
        this.count = 1;
    }

    /** Parts each group into airfoils of which this is true and others. */
    void tellApart(long airfoils) {
        for (int group = count - 1; group >= 0; group--) {
            long in = groups[group] & airfoils;
            if (in != 0 && in != groups[group]) {
                groups[group] ^= in;
                groups[count++] = in;
            }
        }
    }

    /** The first of each group. */
    long firsts() {
        long firsts = 0;
        for (int group = 0; group < count; group++) {
            firsts |= Long.lowestOneBit(groups[group]);
        }
        return firsts;
    }

    /** Each group. */
    void forEach(LongConsumer group) {
        for (int i = 0; i < count; i++) {
            group.accept(groups[i]);
        }
    }
}
