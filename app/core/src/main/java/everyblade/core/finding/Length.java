package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, exact in mm: an inch is 25.4 mm, so nothing is rounded on the way from one unit to the other.
 *
 * @param mm any number
 */
public record Length(BigDecimal mm) implements Comparable<Length> {

    /** No length. */
    public static final Length ZERO = new Length(BigDecimal.ZERO);

    public Length {
        mm = mm.signum() == 0 ? BigDecimal.ZERO : mm.stripTrailingZeros();
    }

    /** A number of a unit. */
    public static Length of(BigDecimal number, LengthUnit unit) {
        return new Length(number.multiply(unit.mm()));
    }

    /** The nearest length to so many mm that six decimals can say. */
    public static Length ofMillimetres(double mm) {
        return new Length(BigDecimal.valueOf(mm).setScale(6, RoundingMode.HALF_EVEN));
    }

    public Length minus(Length other) {
        return new Length(mm.subtract(other.mm));
    }

    /** The nearest double, mm. */
    public double millimetres() {
        return mm.doubleValue();
    }

    /** To at most so many decimals of the unit. */
    public ShownLength shown(LengthUnit unit, int decimals) {
        BigDecimal number = mm.divide(unit.mm(), decimals, RoundingMode.HALF_EVEN);
        return new ShownLength(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros(), unit);
    }

    @Override
    public int compareTo(Length other) {
        return mm.compareTo(other.mm);
    }
}
