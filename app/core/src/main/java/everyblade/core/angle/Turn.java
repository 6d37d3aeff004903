package everyblade.core.angle;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;

/**
 * An exact, signed amount of turning: whole ticks of the standard circle and a proper fraction of one, in lowest terms.
 * Positive is clockwise as seen from aft looking forward.
 *
 * <p>Adding is integer arithmetic on longs. Denominators come from gear ratios and airfoil counts and stay small; a sum
 * whose common denominator leaves the range of a long is an {@link ArithmeticException}, never a rounded value.
 */
public final class Turn implements Comparable<Turn> {

    private static final BigInteger TICKS = BigInteger.valueOf(Circle.STANDARD.ticks());

    /** No turning. */
    public static final Turn ZERO = new Turn(0, 0, 1);

    /** One full turn. */
    public static final Turn FULL = new Turn(Circle.STANDARD.ticks(), 0, 1);

    private final long ticks;
    private final long numerator;
    private final long denominator;

    private Turn(long ticks, long numerator, long denominator) {
        this.ticks = ticks;
        this.numerator = numerator;
        this.denominator = denominator;
    }

    /**
     * So many ticks of the standard circle, and a fraction of one.
     *
     * @param numerator at least 0, less than the denominator, and without a common factor
     */
    public static Turn of(long ticks, long numerator, long denominator) {
        if (numerator < 0 || numerator >= denominator || gcd(numerator, denominator) != 1) {
            throw new IllegalArgumentException(numerator + "/" + denominator + " is no fraction in lowest terms");
        }
        return new Turn(ticks, numerator, denominator);
    }

    /** So many ticks of the standard circle. */
    public static Turn ofTicks(long ticks) {
        return new Turn(ticks, 0, 1);
    }

    /** So many degrees, exactly. */
    public static Turn ofDegrees(BigDecimal degrees) {
        return ofTicks(Circle.TICKS_PER_DEGREE).times(degrees);
    }

    /**
     * So many degrees, to the nearest tick.
     *
     * @throws IllegalArgumentException if it is no number, or too large to count in ticks
     */
    public static Turn ofDegrees(double degrees) {
        double inTicks = degrees * Circle.TICKS_PER_DEGREE;
        if (!(Math.abs(inTicks) < Long.MAX_VALUE)) {
            throw new IllegalArgumentException(degrees + " degrees are no amount of turning");
        }
        return ofTicks(Math.round(inTicks));
    }

    /** A fraction of a full turn. */
    public static Turn ofFraction(long numerator, long denominator) {
        return FULL.times(numerator, denominator);
    }

    private static Turn exact(BigInteger numerator, BigInteger denominator) {
        BigInteger common = numerator.gcd(denominator).multiply(BigInteger.valueOf(denominator.signum()));
        BigInteger below = denominator.divide(common);
        BigInteger[] parts = numerator.divide(common).divideAndRemainder(below);
        boolean negative = parts[1].signum() < 0;
        return new Turn(
                (negative ? parts[0].subtract(BigInteger.ONE) : parts[0]).longValueExact(),
                (negative ? parts[1].add(below) : parts[1]).longValueExact(),
                below.longValueExact());
    }

    public Turn plus(Turn other) {
        long whole = Math.addExact(ticks, other.ticks);
        if (denominator == 1 && other.denominator == 1) {
            return new Turn(whole, 0, 1);
        }
        long common = gcd(denominator, other.denominator);
        long left = other.denominator / common;
        long right = denominator / common;
        long below = Math.multiplyExact(denominator, left);
        // Both fractions are proper, so neither product can pass the common denominator; their sum may pass a long.
        long room = below - other.numerator * right;
        long above = numerator * left;
        if (above >= room) {
            above -= room;
            whole = Math.addExact(whole, 1);
        } else {
            above += below - room;
        }
        long reduced = gcd(above, below);
        return new Turn(whole, above / reduced, below / reduced);
    }

    public Turn minus(Turn other) {
        return plus(other.negated());
    }

    public Turn negated() {
        return numerator == 0
                ? new Turn(Math.negateExact(ticks), 0, 1)
                : new Turn(-1 - ticks, denominator - numerator, denominator);
    }

    public Turn abs() {
        return signum() < 0 ? negated() : this;
    }

    /**
     * This amount times a fraction, exactly.
     *
     * @throws ArithmeticException if the denominator is zero
     */
    public Turn times(long above, long below) {
        return times(BigInteger.valueOf(above), BigInteger.valueOf(below));
    }

    /** This amount times a decimal number, exactly. */
    public Turn times(BigDecimal factor) {
        return factor.scale() <= 0
                ? times(factor.toBigIntegerExact(), BigInteger.ONE)
                : times(factor.unscaledValue(), BigInteger.TEN.pow(factor.scale()));
    }

    private Turn times(BigInteger above, BigInteger below) {
        BigInteger d = BigInteger.valueOf(denominator);
        BigInteger n = BigInteger.valueOf(ticks).multiply(d).add(BigInteger.valueOf(numerator));
        return exact(n.multiply(above), d.multiply(below));
    }

    /** Of the fraction of a tick beyond {@link #floorTicks}. */
    public long numerator() {
        return numerator;
    }

    /** Of the fraction of a tick beyond {@link #floorTicks}; 1 if there is none. */
    public long denominator() {
        return denominator;
    }

    /** −1, 0 or 1. */
    public int signum() {
        return ticks < 0 ? -1 : ticks > 0 || numerator > 0 ? 1 : 0;
    }

    /** The same position on the circle, 0 ≤ result &lt; a full turn. */
    public Turn wrapped() {
        return new Turn(Circle.STANDARD.wrap(ticks), numerator, denominator);
    }

    /** The largest whole number of ticks that is not larger. */
    public long floorTicks() {
        return ticks;
    }

    /** The smallest whole number of ticks that is not smaller. */
    public long ceilTicks() {
        return numerator == 0 ? ticks : Math.incrementExact(ticks);
    }

    /** In degrees, off by less than 1e-15 of the angle or, where that is more, of a tick. */
    public double degrees() {
        return (ticks + (double) numerator / denominator) / Circle.TICKS_PER_DEGREE;
    }

    /** How many pitches of a full turn over {@code count} reach from another amount to this one, rounded up. */
    long ceilPitchesFrom(Turn other, int count) {
        long fits = Long.MAX_VALUE / count / 4;
        long whole = ticks - other.ticks;
        boolean small = -fits < ticks && ticks < fits && -fits < other.ticks && other.ticks < fits;
        if (denominator != 1 || other.denominator > fits || !small) {
            return minus(other).ceilPitches(count);
        }
        // Of whole numbers, those that reach m − f are those that reach m − ⌊f⌋.
        long less = whole * count - other.numerator * count / other.denominator;
        return -Math.floorDiv(-less, Circle.STANDARD.ticks());
    }

    /** This amount divided by a full turn over {@code count}, rounded up: how many pitches reach it. */
    long ceilPitches(int count) {
        long fits = Long.MAX_VALUE / count;
        if (denominator == 1 && -fits <= ticks && ticks <= fits) {
            return -Math.floorDiv(-(ticks * count), Circle.STANDARD.ticks());
        }
        BigInteger d = BigInteger.valueOf(denominator);
        BigInteger n = BigInteger.valueOf(ticks).multiply(d).add(BigInteger.valueOf(numerator));
        BigInteger[] parts = n.multiply(BigInteger.valueOf(count)).divideAndRemainder(d.multiply(TICKS));
        return (parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0]).longValueExact();
    }

    private static long gcd(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }

    @Override
    public int compareTo(Turn other) {
        if (ticks != other.ticks) {
            return Long.compare(ticks, other.ticks);
        }
        if (denominator == other.denominator) {
            return Long.compare(numerator, other.numerator);
        }
        return BigInteger.valueOf(numerator)
                .multiply(BigInteger.valueOf(other.denominator))
                .compareTo(BigInteger.valueOf(other.numerator).multiply(BigInteger.valueOf(denominator)));
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Turn other
                && ticks == other.ticks
                && numerator == other.numerator
                && denominator == other.denominator;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(new long[] {ticks, numerator, denominator});
    }

    /** Degrees for people, such as {@code 38°}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(Math.rint(degrees() * 1e5) / 1e5)
                        .stripTrailingZeros()
                        .toPlainString() + "°";
    }
}
