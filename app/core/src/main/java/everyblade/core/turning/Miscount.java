package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.Row;
import everyblade.spi.RowKind;

/** What a count error means to people. */
public sealed interface Miscount extends Fact {

    /** No more than the stated errors allow for. */
    record Within(Identified at, Difference off) implements Miscount {}

    /** More than the stated errors allow for. */
    record TooLarge(Identified at, Difference off) implements Miscount {}

    /** Turned without an entry, looking for the airfoil. */
    record Unlogged(Identified at, Difference off) implements Miscount {}

    /** @param airfoils by about how many the count was lost */
    record Lost(Identified at, Difference off, RowKind kind, long airfoils) implements Miscount {}

    /** The entry that identified an airfoil, and which one. */
    record Identified(int entry, RowKind kind, int airfoil, String row) implements Fact {}

    /**
     * How far what was counted and what was seen lie apart.
     *
     * @param degrees not negative
     * @param less whether less was counted than seen
     * @param since the entry from which was counted
     */
    record Difference(double degrees, boolean less, int since) implements Fact {}

    /**
     * What this one means.
     *
     * @param row of the airfoil that was identified
     */
    static Miscount of(CountError error, Row row) {
        Identified at = new Identified(error.entry(), row.kind(), error.airfoil(), row.id());
        Difference off = new Difference(Math.abs(error.degrees()), error.degrees() < 0, error.since());
        if (error.unlogged()) {
            return new Unlogged(at, off);
        }
        if (error.lost()) {
            return new Lost(at, off, row.kind(), error.airfoils());
        }
        return error.outside() ? new TooLarge(at, off) : new Within(at, off);
    }
}
