package everyblade.fact;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Shares in per cent as people read them, never rounded in our favour: of what is good 100 says that it is all, of what is
 * bad 0 says that there is none. What a sum of surfaces may be off by, a billionth, makes no difference.
 */
public final class Percent {

    private static final double ROUNDING = 1e-9;

    private Percent() {}

    /**
     * A share of something good, rounded down.
     *
     * @param share from 0 to 1; what is outside is taken for the nearer end
     * @param decimals how many are read
     */
    public static BigDecimal good(double share, int decimals) {
        return rounded(share + ROUNDING, decimals, RoundingMode.FLOOR);
    }

    /**
     * A share of something bad, rounded up.
     *
     * @param share from 0 to 1; what is outside is taken for the nearer end
     * @param decimals how many are read
     */
    public static BigDecimal bad(double share, int decimals) {
        return rounded(share - ROUNDING, decimals, RoundingMode.CEILING);
    }

    private static BigDecimal rounded(double share, int decimals, RoundingMode towards) {
        return BigDecimal.valueOf(Math.max(0, Math.min(1, share)))
                .movePointRight(2)
                .setScale(decimals, towards);
    }
}
