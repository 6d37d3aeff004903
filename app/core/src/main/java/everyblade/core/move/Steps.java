package everyblade.core.move;

import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import java.math.BigDecimal;

/** Angles of planned moves: whole steps of 0.00001°, the finest that is typed; whole ticks of the standard circle. */
final class Steps {

    private static final int DECIMALS = 5;
    private static final long PER_DEGREE = 100_000;
    private static final long TICKS = Circle.TICKS_PER_DEGREE / PER_DEGREE;

    /** A turn. */
    static final long TURN = 360 * PER_DEGREE;

    private Steps() {}

    static long floor(Turn angle) {
        return Math.floorDiv(angle.floorTicks(), TICKS);
    }

    static Turn turn(long steps) {
        return Turn.ofTicks(steps * TICKS);
    }

    static BigDecimal degrees(long steps) {
        BigDecimal degrees = BigDecimal.valueOf(steps, DECIMALS).stripTrailingZeros();
        return degrees.scale() < 0 ? degrees.setScale(0) : degrees;
    }
}
