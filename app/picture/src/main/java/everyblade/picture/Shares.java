package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.turning.CountError;
import java.util.ArrayList;
import java.util.List;

/** Shares and warnings, in words. A share is never rounded up. */
final class Shares {

    private Shares() {}

    /** Whole percent of all cells that are seen, rounded down. */
    static int percent(Tally tally) {
        return tally.cells() == 0 ? 0 : (int) (100L * tally.seen() / tally.cells());
    }

    /** All states of a row. */
    static Tally tally(RowCoverage row) {
        return row.tally(row.zoning().all());
    }

    /** Such as {@code 61 percent of all cells: 141 of 228}. */
    static String told(Tally tally) {
        return percent(tally) + " percent of all cells: " + tally.seen() + " of " + tally.cells();
    }

    /** What the picture says, for those who cannot see it. */
    static String summary(Tally tally) {
        List<String> parts = new ArrayList<>();
        parts.add(tally.seen() + " cells inspected");
        parts.add(tally.part() + " inspected in part");
        parts.add(tally.maybe() + " maybe");
        parts.add(tally.unseen() + " not inspected, " + tally.noAccess() + " of them not accessible, " + tally.fast()
                + " in view too briefly, " + tally.stated() + " stated with a picture");
        return String.join("; ", parts) + ". " + tally.damaged() + " cells are damaged.";
    }

    /** Where the count was lost; empty if it was not. */
    static List<String> lost(Coverage coverage) {
        return coverage.situation().countErrors().stream()
                .filter(CountError::lost)
                .map(error -> "Count lost by " + error.airfoils() + " "
                        + coverage.row(error.row()).row().kind().airfoil() + (error.airfoils() == 1 ? "" : "s") + " of "
                        + error.row() + " between entries "
                        + error.since() + " and " + error.entry() + ": what was watched between them is only maybe.")
                .toList();
    }
}
