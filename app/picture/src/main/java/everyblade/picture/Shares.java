package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.turning.CountError;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

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

    /** Whole percent of all cells that are seen, or seen as far as they can be, rounded down. */
    static int donePercent(Tally tally) {
        return tally.cells() == 0 ? 0 : (int) (100L * (tally.seen() + tally.part()) / tally.cells());
    }

    /** Such as {@code 61 percent of all cells: 141 of 228}, and with those that are seen in part. */
    static String told(Tally tally) {
        return percent(tally) + " percent of all cells: " + tally.seen() + " of " + tally.cells()
                + (tally.part() == 0
                        ? ""
                        : "; " + donePercent(tally) + " percent with the " + tally.part()
                                + " seen as far as they can be");
    }

    /** The states of these rows that rest on the same. */
    static Tally tally(List<RowCoverage> rows, Basis basis) {
        return rows.stream()
                .filter(row -> row.basis() == basis)
                .map(Shares::tally)
                .reduce(Tally.NONE, Tally::plus);
    }

    /** What the picture of these rows says, for those who cannot see it. */
    static String summary(List<RowCoverage> rows) {
        return Arrays.stream(Basis.values())
                .filter(basis -> tally(rows, basis).cells() > 0)
                .map(basis -> (basis == Basis.COMPUTED ? "Computed: " : "Declared: ") + summary(tally(rows, basis)))
                .collect(Collectors.joining(" "));
    }

    private static String summary(Tally tally) {
        List<String> parts = new ArrayList<>();
        parts.add(tally.seen() + " cells inspected");
        parts.add(tally.part() + " inspected in part");
        parts.add(tally.maybe() + " maybe");
        parts.add(tally.unseen() + " not inspected, " + tally.noAccess() + " of them not accessible, " + tally.fast()
                + " in view too briefly, " + tally.stated() + " stated with a picture");
        return String.join("; ", parts) + ". " + tally.damaged() + " cells are damaged.";
    }

    /** Where the count was lost; empty if it was not. */
    static List<String> lost(Coverage coverage, MapWords words) {
        return coverage.situation().countErrors().stream()
                .filter(CountError::lost)
                .map(error -> words.say(
                        "lost",
                        error.airfoils(),
                        words.some(coverage.row(error.row()).row(), error.airfoils()),
                        error.row(),
                        error.since(),
                        error.entry()))
                .toList();
    }
}
