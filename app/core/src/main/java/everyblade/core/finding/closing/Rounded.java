package everyblade.core.finding.closing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as exact as a person wants to read them. */
final class Rounded {

    private Rounded() {}

    /** To one decimal. */
    static BigDecimal tenths(double number) {
        return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
    }
}
