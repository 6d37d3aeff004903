package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Explanation;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is known of one cell, and of all together, in words. */
public final class CellTelling {

    private CellTelling() {}

    /** What was seen of everything, counted. */
    public static String summary(Coverage coverage) {
        return Shares.summary(coverage.rows());
    }

    /** In one line, such as {@code blade 14 of c1, tip/pressure/leading: not inspected}. */
    public static String line(Coverage coverage, Cell cell) {
        return AirfoilWords.of(coverage.row(cell.row()), cell.airfoil(), cell.zone());
    }

    /** At length: that line, where the airfoil stands, and why the cell has its state, pass by pass. */
    public static List<String> lines(Coverage coverage, Cell cell) {
        RowCoverage row = coverage.row(cell.row());
        List<String> lines = new ArrayList<>();
        lines.add(line(coverage, cell));
        lines.add(Look.of(row, cell.airfoil(), cell.zone()).meaning());
        Standing standing = Standing.of(coverage.situation(), row.row());
        lines.add(
                standing.doubt().isEmpty()
                        ? String.format(
                                Locale.ROOT,
                                "stands at clock %.1f° now, from aft looking forward",
                                standing.clock(cell.airfoil()))
                        : "where it stands is not known: " + standing.doubt());
        lines.addAll(Explanation.of(coverage, cell.row(), cell.airfoil(), cell.zone()));
        return lines;
    }
}
