package everyblade.core.finding.photo;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;

/** Which airfoil a picture shows by the time at which it was taken. */
public sealed interface Likely extends Fact {

    /**
     * One that was counted.
     *
     * @param off by how many it may be off
     * @param lost whether the count was lost about then
     */
    record About(RowKind row, int airfoil, int off, boolean lost) implements Likely {}

    enum Nothing implements Likely {
        COUNTED
    }
}
