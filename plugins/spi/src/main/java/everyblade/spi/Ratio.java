package everyblade.spi;

import java.math.BigInteger;

/**
 * An exact fraction in lowest terms, its denominator positive, its numerator never zero: shaft turns per turn of the
 * tool. Negative where the shaft turns against the tool.
 *
 * @param numerator shaft turns, not zero
 * @param denominator tool turns, above zero
 */
public record Ratio(long numerator, long denominator) {

    /** One turn of the shaft for one of the tool. */
    public static final Ratio ONE = new Ratio(1, 1);

    /** @throws IllegalArgumentException if a part is zero, or too large to be turned round in sign */
    public Ratio {
        if (numerator == 0 || denominator == 0) {
            throw new IllegalArgumentException("a ratio needs two numbers that are not zero");
        }
        BigInteger n = BigInteger.valueOf(numerator);
        BigInteger d = BigInteger.valueOf(denominator);
        BigInteger common = n.gcd(d).multiply(BigInteger.valueOf(d.signum()));
        numerator = n.divide(common).longValueExact();
        denominator = d.divide(common).longValueExact();
    }

    @Override
    public String toString() {
        return numerator + "/" + denominator;
    }
}
