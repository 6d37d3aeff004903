package everyblade.core.finding.compared;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cells of one row in two records. Seen is here what is seen, or seen as far as it can be.
 *
 * @param row in the first record
 * @param cells how many of them are seen by whom; they add up to the row's
 * @param airfoils that have a cell of each sort; bit i stands for airfoil i + 1
 */
public record ComparedRow(Row row, Map<By, Integer> cells, Map<By, BitSet> airfoils) {

    /** Which of two records shows a cell as seen. */
    public enum By {
        BOTH,
        FIRST,
        SECOND,
        NONE
    }

    public ComparedRow {
        cells = Map.copyOf(cells);
        airfoils = Map.copyOf(airfoils);
    }

    /** Cells that are seen by these. */
    public int count(By by) {
        return cells.get(by);
    }

    /** Who sees a cell. */
    static By by(RowCoverage first, RowCoverage second, int n, int zone) {
        boolean one = done(first, n, zone);
        boolean other = done(second, n, zone);
        return one && other ? By.BOTH : one ? By.FIRST : other ? By.SECOND : By.NONE;
    }

    private static boolean done(RowCoverage row, int n, int zone) {
        return row.state(n, zone).isDone();
    }

    /** A row of two records; empty if they do not divide it alike, so that its cells cannot be compared. */
    public static Optional<ComparedRow> of(RowCoverage first, RowCoverage second) {
        if (first.row().count() != second.row().count()
                || first.row().kind() != second.row().kind()
                || !first.zoning().equals(second.zoning())) {
            return Optional.empty();
        }
        Map<By, Integer> cells = new EnumMap<>(By.class);
        Map<By, BitSet> airfoils = new EnumMap<>(By.class);
        for (By by : By.values()) {
            cells.put(by, 0);
            airfoils.put(by, new BitSet());
        }
        for (int n = 1; n <= first.row().count(); n++) {
            for (int zone = 0; zone < first.zoning().size(); zone++) {
                By by = by(first, second, n, zone);
                cells.merge(by, 1, Integer::sum);
                airfoils.get(by).set(n - 1);
            }
        }
        return Optional.of(new ComparedRow(first.row(), cells, airfoils));
    }

    /** The rows that both records have and divide alike, in the order of the first. */
    public static List<ComparedRow> of(Coverage first, Coverage second) {
        List<ComparedRow> rows = new ArrayList<>();
        for (RowCoverage row : first.rows()) {
            second.rows().stream()
                    .filter(other -> other.row().id().equals(row.row().id()))
                    .findFirst()
                    .flatMap(other -> of(row, other))
                    .ifPresent(rows::add);
        }
        return rows;
    }
}
