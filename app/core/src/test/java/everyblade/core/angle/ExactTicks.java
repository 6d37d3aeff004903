package everyblade.core.angle;

import java.math.BigInteger;
import java.util.SplittableRandom;

/**
 * The naive model of an amount of turning: a fraction of ticks in BigIntegers, never reduced.
 *
 * @param below positive
 */
record ExactTicks(BigInteger above, BigInteger below) implements Comparable<ExactTicks> {

    static final ExactTicks TURN = whole(Circle.STANDARD.ticks());

    static ExactTicks whole(long ticks) {
        return new ExactTicks(BigInteger.valueOf(ticks), BigInteger.ONE);
    }

    static ExactTicks ofTurns(long above, long below) {
        return TURN.times(above, below);
    }

    ExactTicks plus(ExactTicks other) {
        return new ExactTicks(
                above.multiply(other.below).add(other.above.multiply(below)), below.multiply(other.below));
    }

    ExactTicks minus(ExactTicks other) {
        return plus(other.times(-1, 1));
    }

    ExactTicks times(long a, long b) {
        BigInteger sign = BigInteger.valueOf(Long.signum(b));
        return new ExactTicks(
                above.multiply(BigInteger.valueOf(a)).multiply(sign),
                below.multiply(BigInteger.valueOf(b)).multiply(sign));
    }

    BigInteger floor() {
        BigInteger[] parts = above.divideAndRemainder(below);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    BigInteger ceil() {
        return times(-1, 1).floor().negate();
    }

    ExactTicks wrapped() {
        BigInteger turns = times(1, Circle.STANDARD.ticks()).floor();
        return minus(new ExactTicks(turns.multiply(TURN.above), BigInteger.ONE));
    }

    /** The same amount as the code under test has it, by its one way in that takes fractions. */
    Turn turn() {
        BigInteger common = above.gcd(below);
        return Turn.ofTicks(1)
                .times(
                        above.divide(common).longValueExact(),
                        below.divide(common).longValueExact());
    }

    /** Some turns more or less, on the grid, on a pitch, on a gear ratio, or a little beside one of them. */
    static ExactTicks any(SplittableRandom random) {
        ExactTicks some = ofTurns(random.nextInt(-300, 301), 1 + random.nextInt(120));
        return switch (random.nextInt(4)) {
            case 0 -> whole(random.nextLong(-3 * Circle.STANDARD.ticks(), 3 * Circle.STANDARD.ticks()));
            case 1 -> some.plus(whole(random.nextInt(-2, 3)));
            case 2 ->
                some.plus(new ExactTicks(
                        BigInteger.valueOf(random.nextInt(-5, 6)), BigInteger.valueOf(1 + random.nextInt(40))));
            default -> some;
        };
    }

    @Override
    public int compareTo(ExactTicks other) {
        return above.multiply(other.below).compareTo(other.above.multiply(below));
    }
}
