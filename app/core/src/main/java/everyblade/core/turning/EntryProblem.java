package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.List;

/** Why an entry about an airfoil, about what is open, or about another entry cannot be. */
sealed interface EntryProblem extends Fact {

    /** What says all by itself. */
    enum Flaw implements EntryProblem {
        NOTHING_TO_VOID
    }

    /** @param count how many airfoils the row has */
    record NoAirfoil(String row, RowKind kind, int count, int said) implements EntryProblem {}

    /** Shut, and never said to be open. */
    record NotOpen(String thing, List<String> open) implements EntryProblem {}

    /** Back, and never said to be out or lost. */
    record NotOut(String tool, List<String> out) implements EntryProblem {}

    /** Settled, and not open. */
    record NothingToSettle(int entry, List<Integer> open) implements EntryProblem {}

    /** Void, and not there. */
    record NoEntry(int last, int said) implements EntryProblem {}

    /** Void, and void already. */
    record VoidAlready(int entry) implements EntryProblem {}

    /**
     * Void, and needed by one that was kept after it.
     *
     * @param needing entry
     * @param text of that entry
     * @param why that one could not be without
     */
    record Needed(int entry, int needing, String text, Fact why) implements EntryProblem {}
}
