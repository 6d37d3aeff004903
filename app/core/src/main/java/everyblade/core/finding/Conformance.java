package everyblade.core.finding;

/**
 * Decides whether a measured size keeps to its bounds, with the uncertainty of the measurement (ISO 14253-1:2017;
 * chances as in JCGM 106:2012 for a normal distribution about the measured value).
 */
final class Conformance {

    private static final double SURELY = 0.95;
    private static final double SURELY_NOT = 1 - SURELY;
    /** Beyond so many standard deviations a chance is 0 or 1 to the last digit of a double. */
    private static final double FAR = 8.5;

    private Conformance() {}

    /** Within, too close, beyond; not measured if no uncertainty is known. */
    static Verdict judge(Measured size, Bounds bounds, Guard guard) {
        if (size.plusMinus().isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        Length uncertainty = size.plusMinus().get();
        if (uncertainty.compareTo(Length.ZERO) == 0) {
            return bounds.margin(size.value()).compareTo(Length.ZERO) >= 0 ? Verdict.WITHIN : Verdict.BEYOND;
        }
        return guard == Guard.EXPANDED ? banded(size.value(), uncertainty, bounds) : chanced(size, bounds);
    }

    private static Verdict banded(Length value, Length guard, Bounds bounds) {
        Length margin = bounds.margin(value);
        if (margin.compareTo(guard) >= 0) {
            return Verdict.WITHIN;
        }
        return Length.ZERO.minus(margin).compareTo(guard) >= 0 ? Verdict.BEYOND : Verdict.CLOSE;
    }

    private static Verdict chanced(Measured size, Bounds bounds) {
        double chance = chance(size, bounds);
        return chance >= SURELY ? Verdict.WITHIN : chance <= SURELY_NOT ? Verdict.BEYOND : Verdict.CLOSE;
    }

    /** The chance that the true size keeps to its bounds, 0 to 1; a size without uncertainty has 0 or 1. */
    static double chance(Measured size, Bounds bounds) {
        double u = size.standardUncertainty();
        if (u == 0) {
            return bounds.margin(size.value()).compareTo(Length.ZERO) >= 0 ? 1 : 0;
        }
        double above = bounds.most()
                .map(most -> normal(-most.minus(size.value()).millimetres() / u))
                .orElse(0.0);
        double below = bounds.least()
                .map(least -> normal(least.minus(size.value()).millimetres() / u))
                .orElse(0.0);
        return Math.max(0, 1 - above - below);
    }

    /**
     * The standard normal distribution Φ(x), to about 1e-15 (G. Marsaglia, Evaluating the Normal Distribution, Journal
     * of Statistical Software 11(4), 2004).
     */
    static double normal(double x) {
        if (Math.abs(x) > FAR) {
            return x > 0 ? 1 : 0;
        }
        double term = x;
        double sum = x;
        double before = 0;
        for (int i = 3; sum != before; i += 2) {
            before = sum;
            term *= x * x / i;
            sum += term;
        }
        return 0.5 + sum * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }
}
