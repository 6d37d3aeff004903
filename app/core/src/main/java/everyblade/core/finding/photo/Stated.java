package everyblade.core.finding.photo;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.OptionalInt;

/**
 * Airfoils that a person named with a picture.
 *
 * @param first or the only one
 * @param last of several
 */
public record Stated(RowKind row, int first, OptionalInt last) implements Fact {}
