package everyblade.core.angle;

import java.math.BigDecimal;

/**
 * A clock angle: a position on the standard circle, clockwise from 12 o'clock as seen from aft looking forward.
 *
 * @param tick 0 ≤ tick &lt; a turn
 */
public record Clock(long tick) {

    public Clock {
        tick = Circle.STANDARD.wrap(tick);
    }

    /** To the nearest tick; any number of degrees that {@link Turn#ofDegrees(double)} takes. */
    public static Clock ofDegrees(double degrees) {
        return new Clock(Turn.ofDegrees(degrees).floorTicks());
    }

    /** Floored to the grid; any number of degrees. */
    public static Clock ofDegrees(BigDecimal degrees) {
        return of(Turn.ofDegrees(degrees));
    }

    /** Where an exact angle meets the grid. */
    static Clock of(Turn angle) {
        return new Clock(angle.floorTicks());
    }

    /** Degrees, 0 to 360. */
    public double degrees() {
        return (double) tick / Circle.TICKS_PER_DEGREE;
    }
}
