package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;

/**
 * Where a count was lost, and what that means for what was watched there.
 *
 * @param airfoils by how many it was off, at least one
 * @param kind of the row
 * @param row whose airfoil was identified
 * @param since the identification from which was counted
 * @param entry the identification that showed it
 */
public record LostCount(long airfoils, RowKind kind, String row, int since, int entry) implements Fact {

    /** What came of an error by which the count was lost. */
    public static LostCount of(CountError error, RowKind kind) {
        return new LostCount(error.airfoils(), kind, error.row(), error.since(), error.entry());
    }
}
