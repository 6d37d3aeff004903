package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.turning.CountError;
import everyblade.core.turning.LostCount;
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
    static String summary(List<RowCoverage> rows, MapWords words) {
        List<String> parts = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            figures(rows, basis, words)
                    .ifPresent(figures -> parts.add(summary(basis, figures, tally(rows, basis), words)));
        }
        return String.join(" ", parts);
    }

    private static String summary(Basis basis, ShareFigures figures, Tally tally, MapWords words) {
        return words.say(
                "summary",
                basis,
                figures.line(),
                tally.seen(),
                tally.part(),
                tally.glimpsed(),
                tally.maybe(),
                tally.unseen(),
                tally.noAccess(),
                tally.coarse(),
                tally.fast(),
                tally.stated(),
                tally.damaged());
    }

    /** Where the count was lost; empty if it was not. */
    static List<String> lost(Coverage coverage, MapWords words) {
        return coverage.situation().countErrors().stream()
                .filter(CountError::lost)
                .map(error -> words.say(
                        LostCount.of(error, coverage.row(error.row()).row().kind())))
                .toList();
    }
}
