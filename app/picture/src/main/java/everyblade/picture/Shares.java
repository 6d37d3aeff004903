package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.turning.CountError;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shares and warnings, in words. */
final class Shares {

    private Shares() {}

    /** All states of a row. */
    static Tally tally(RowCoverage row) {
        return row.tally(row.zoning().all());
    }

    /** The states of these rows that rest on the same. */
    static Tally tally(List<RowCoverage> rows, Basis basis) {
        return rows.stream()
                .filter(row -> row.basis() == basis)
                .map(Shares::tally)
                .reduce(Tally.NONE, Tally::plus);
    }

    /** The figures of these rows that rest on the same; empty if none does. */
    static Optional<ShareFigures> figures(List<RowCoverage> rows, Basis basis, MapWords words) {
        List<RowCoverage> alike =
                rows.stream().filter(row -> row.basis() == basis).toList();
        return alike.isEmpty() ? Optional.empty() : Optional.of(new ShareFigures(Headline.of(alike), words));
    }

    /** What the picture of these rows says, for those who cannot see it. */
    static String summary(List<RowCoverage> rows) {
        List<String> parts = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            figures(rows, basis, MapWords.ENGLISH)
                    .ifPresent(figures -> parts.add((basis == Basis.COMPUTED ? "Computed: " : "Declared: ")
                            + figures.line() + ". " + summary(tally(rows, basis))));
        }
        return String.join(" ", parts);
    }

    private static String summary(Tally tally) {
        List<String> parts = new ArrayList<>();
        parts.add(tally.seen() + " cells inspected");
        parts.add(tally.part() + " inspected in part, " + tally.glimpsed() + " of them only a glimpse");
        parts.add(tally.maybe() + " maybe");
        parts.add(tally.unseen() + " not inspected, " + tally.noAccess() + " of them shown by no view, "
                + tally.coarse() + " only too coarsely, " + tally.fast() + " in view too briefly, " + tally.stated()
                + " stated with a picture");
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
