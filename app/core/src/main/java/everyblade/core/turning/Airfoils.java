package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/** Some airfoils of a row, as a person would tell them: {@code blades 2–4, 7 and 9–11}. */
public sealed interface Airfoils extends Fact {

    /** The whole row. */
    record All(RowKind kind, int count) implements Airfoils {}

    /**
     * Some of it.
     *
     * @param count of airfoils
     * @param runs in the order of the row
     */
    record Some(RowKind kind, int count, List<Run> runs) implements Airfoils {

        public Some {
            runs = List.copyOf(runs);
        }
    }

    /**
     * Airfoils that follow each other; over the seam the last has the lower number.
     *
     * @param size how many
     */
    record Run(int first, int last, int size) implements Fact {}

    /** These of a row, in whatever order; runs over the seam are joined. */
    static Airfoils of(Row row, Collection<Integer> numbers) {
        BitSet bits = new BitSet();
        numbers.forEach(n -> bits.set(n - 1));
        return of(row, bits);
    }

    /** Those whose bits are set: bit i stands for airfoil i + 1. */
    static Airfoils of(Row row, BitSet airfoils) {
        int all = row.count();
        int count = airfoils.cardinality();
        if (count == all) {
            return new All(row.kind(), count);
        }
        List<Run> runs = new ArrayList<>();
        int start = airfoils.nextClearBit(0);
        for (int offset = 0; offset < all; offset++) {
            int at = (start + offset) % all;
            if (airfoils.get(at) && !airfoils.get((at + all - 1) % all)) {
                int size = 1;
                while (airfoils.get((at + size) % all)) {
                    size++;
                }
                runs.add(new Run(at + 1, (at + size - 1) % all + 1, size));
            }
        }
        return new Some(row.kind(), count, runs);
    }
}
