package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.fact.Fact;
import java.math.BigDecimal;

/**
 * A length as people read it.
 *
 * @param number rounded, without trailing zeros
 * @param unit of the number
 */
public record ShownLength(BigDecimal number, LengthUnit unit) implements Fact {}
