package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.compared.ComparedRow;
import everyblade.session.around.Failure;
import everyblade.words.Words;
import java.util.List;

/**
 * Two records held against each other.
 *
 * @param rows that both have and divide alike
 * @param leftOut ids of rows of the first that the second has not, or divides otherwise
 * @param growth what became of the findings of the first, one line each
 */
public record Comparison(List<ComparedRow> rows, List<String> leftOut, List<String> growth) {

    public Comparison {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
        growth = List.copyOf(growth);
    }

    /**
     * Compares them.
     *
     * @param first the earlier one
     * @param coverage of the first
     * @throws Failure if no row can be compared
     */
    public static Comparison of(OpenedJob first, Coverage coverage, OpenedJob second, Words words) {
        List<ComparedRow> rows = ComparedRow.of(coverage, second.coverage());
        if (rows.isEmpty()) {
            throw Failure.of(
                    "stopped.comparison.noneItsRowsDividedLike",
                    second.folder().path(),
                    first.folder().path());
        }
        List<String> leftOut = coverage.rows().stream()
                .map(row -> row.row().id())
                .filter(id -> rows.stream().noneMatch(row -> row.row().id().equals(id)))
                .toList();
        return new Comparison(rows, leftOut, GrowthText.of(second, first, words));
    }
}
