package everyblade.core.turning;

/**
 * What an angle may be off: a part that adds in quadrature and two that add up, one each way. A true angle is the
 * counted one plus an error between −{@link #below} and +{@link #above}, at 95 %.
 *
 * @param variance square of the ± half-widths that add in quadrature, degrees²
 * @param minus one-sided errors towards smaller angles, degrees, not negative
 * @param plus one-sided errors towards larger angles, degrees, not negative
 */
public record Uncertainty(double variance, double minus, double plus) {

    /** No error. */
    public static final Uncertainty EXACT = new Uncertainty(0, 0, 0);

    /** ± so many degrees. */
    static Uncertainty of(double plusMinus) {
        return new Uncertainty(plusMinus * plusMinus, 0, 0);
    }

    /** Both, independent of each other. */
    Uncertainty and(Uncertainty other) {
        return new Uncertainty(variance + other.variance, minus + other.minus, plus + other.plus);
    }

    /** What came on top of an earlier running total. */
    Uncertainty since(Uncertainty earlier) {
        return new Uncertainty(
                Math.max(0, variance - earlier.variance),
                Math.max(0, minus - earlier.minus),
                Math.max(0, plus - earlier.plus));
    }

    /** The same, told from the other end: what was too small there is too large here. */
    Uncertainty reversed() {
        return new Uncertainty(variance, plus, minus);
    }

    /** Largest error towards smaller angles, degrees. */
    public double below() {
        return Math.sqrt(variance) + minus;
    }

    /** Largest error towards larger angles, degrees. */
    public double above() {
        return Math.sqrt(variance) + plus;
    }

    /** Middle of the one-sided errors, degrees. */
    double middle() {
        return (plus - minus) / 2;
    }

    /** Half-width of the one-sided errors, degrees. */
    public double halfWidth() {
        return (plus + minus) / 2;
    }

    /** Whether this leaves less room than the other. */
    boolean tighterThan(Uncertainty other) {
        return below() + above() < other.below() + other.above();
    }
}
