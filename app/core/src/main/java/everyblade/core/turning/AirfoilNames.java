package everyblade.core.turning;

import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Sets of airfoils told as a person would: {@code blades 2–4, 7 and 9–11}. */
public final class AirfoilNames {

    private AirfoilNames() {}

    /** The airfoils of a row whose bits are set (bit i stands for airfoil i + 1); runs over the seam are joined. */
    public static String of(Row row, BitSet airfoils) {
        List<String> runs = new ArrayList<>();
        int count = airfoils.cardinality();
        if (count == row.count()) {
            return "all " + count + " " + row.kind().airfoil() + "s";
        }
        int start = airfoils.nextClearBit(0);
        for (int offset = 0; offset < row.count(); offset++) {
            int at = (start + offset) % row.count();
            int before = (at + row.count() - 1) % row.count();
            if (airfoils.get(at) && !airfoils.get(before)) {
                int length = 1;
                while (airfoils.get((at + length) % row.count())) {
                    length++;
                }
                int last = (at + length - 1) % row.count() + 1;
                runs.add(length == 1 ? "" + (at + 1) : length == 2 ? (at + 1) + ", " + last : (at + 1) + "–" + last);
            }
        }
        String names = runs.isEmpty()
                ? "none"
                : runs.size() == 1
                        ? runs.get(0)
                        : String.join(", ", runs.subList(0, runs.size() - 1)) + " and " + runs.get(runs.size() - 1);
        return (count == 1 ? row.kind().airfoil() : row.kind().airfoil() + "s") + " " + names;
    }
}
