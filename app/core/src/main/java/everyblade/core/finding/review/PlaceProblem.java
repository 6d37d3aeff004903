package everyblade.core.finding.review;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.List;

/** Why words say no place of an engine. */
sealed interface PlaceProblem extends Fact {

    /** What says all by itself. */
    enum Flaw implements PlaceProblem {
        NO_PLACE
    }

    /** @param there ids of all rows */
    record NoRow(String row, List<String> there) implements PlaceProblem {}

    /** @param count how many airfoils the row has */
    record NoAirfoil(String row, RowKind kind, int count) implements PlaceProblem {}
}
