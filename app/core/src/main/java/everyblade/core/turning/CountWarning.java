package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;

/** What an entry does to the count, or does not do for it, that the person who made it should know. */
sealed interface CountWarning extends Fact {

    /**
     * A slip breaks the count from here on, and nothing tells that it did not begin during what was watched before.
     *
     * @param moves watched since the row was identified
     * @param first of their entries
     * @param last of their entries
     */
    record Slipped(long moves, int first, int last) implements CountWarning {}

    /** The angle may be off by half a pitch. */
    record DoubtfulNow(RowKind kind, String row) implements CountWarning {}

    /** The angle may be off by half a pitch after so many more moves like the last ones. */
    record DoubtfulSoon(RowKind kind, String row, int moves) implements CountWarning {}

    /** Watching gives nothing, since no airfoil of the row was identified. */
    record NoDatum(RowKind kind, String row) implements CountWarning {}

    /** Watching gives nothing, since the scope tip was put in among the blades and is not where its station says. */
    record NotFromStation(String station) implements CountWarning {}

    /**
     * What passed where a round began is only maybe seen.
     *
     * @param aim how exactly the airfoil was put to the reference, ± degrees
     * @param further degrees to turn on, as they are typed
     */
    record RoundTooShort(double aim, String further) implements CountWarning {}

    /** More than the stated errors allow for, and less than half a pitch; degrees. */
    record ErrorsTooSmall(double degrees) implements CountWarning {}

    /**
     * An airfoil stands elsewhere than the entry since which was counted leaves it, and none after it can hold the loss.
     *
     * @param degrees by how much
     * @param unsaid the entry that says the turning which nobody said
     */
    record TurnedUnlogged(RowKind kind, int airfoil, double degrees, int since, String unsaid)
            implements CountWarning {}

    /**
     * The count was lost.
     *
     * @param degrees by how much
     * @param airfoils by about how many
     */
    record CountLost(RowKind kind, double degrees, long airfoils, int since, int entry) implements CountWarning {}
}
