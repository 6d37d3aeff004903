package everyblade.core.finding;

import everyblade.core.entry.Entry.Interval;
import everyblade.fact.Fact;
import java.math.BigDecimal;
import java.util.Locale;

/**
 * A repeat inspection that the limits ask for.
 *
 * @param number after how many at the latest, above 0
 * @param interval cycles, hours or days
 */
public record Repeat(BigDecimal number, Interval interval) implements Fact {

    /** As an entry says it, such as {@code 25 cycles}. */
    public String text() {
        return number.stripTrailingZeros().toPlainString() + " "
                + interval.name().toLowerCase(Locale.ROOT);
    }

    /** Whether an interval that was entered is as short as this asks. */
    public boolean metBy(BigDecimal entered, Interval in) {
        return in == interval && entered.compareTo(number) <= 0;
    }
}
