package everyblade.core.finding.closing;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.math.BigDecimal;

/** What is in doubt about a count. */
sealed interface CountProblem extends Fact {

    /**
     * @param airfoils about how many it was off
     * @param since entry after which that may have happened
     * @param entry that showed it
     */
    record Lost(long airfoils, RowKind row, int since, int entry) implements CountProblem {}

    /**
     * It was taken for an error within what was stated.
     *
     * @param degrees between counted and seen
     */
    record SharedOut(BigDecimal degrees, long airfoils, RowKind row, int since, int entry) implements CountProblem {}

    /**
     * Uncertainties within which it cannot be told which airfoil is in view.
     *
     * @param plusMinus of the first entry, degrees
     * @param id of the row
     * @param pitch of the row, degrees
     */
    record TooUnsure(
            EntryNumbers entries, EntryLine first, BigDecimal plusMinus, RowKind row, String id, BigDecimal pitch)
            implements CountProblem {}
}
