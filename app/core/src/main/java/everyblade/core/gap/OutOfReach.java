package everyblade.core.gap;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Hindrance;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is asked for of a row and no move can reach, for one reason.
 *
 * @param zones of any of its airfoils
 * @param hindrance what mostly keeps them out of sight, where that is computed
 * @param cells how many of them, over all airfoils
 */
public record OutOfReach(Row row, ZoneSet zones, Why why, Optional<Hindrance> hindrance, int cells) {

    /** All of it, row by row. */
    public static List<OutOfReach> of(Coverage coverage) {
        List<OutOfReach> all = new ArrayList<>();
        for (RowCoverage row : coverage.rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                ZoneSet beyond = Gaps.beyond(row, n);
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    if (beyond.contains(zone)) {
                        Why why = row.why(n, zone).orElseThrow();
                        add(all, new OutOfReach(row.row(), new ZoneSet(1L << zone), why, row.hindrance(n, zone), 1));
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    private static void add(List<OutOfReach> all, OutOfReach cell) {
        for (int i = 0; i < all.size(); i++) {
            OutOfReach other = all.get(i);
            if (other.row().equals(cell.row())
                    && other.why() == cell.why()
                    && other.hindrance().equals(cell.hindrance())) {
                all.set(
                        i,
                        new OutOfReach(
                                cell.row(),
                                other.zones().union(cell.zones()),
                                cell.why(),
                                cell.hindrance(),
                                other.cells() + 1));
                return;
            }
        }
        all.add(cell);
    }
}
