package everyblade.core.move;

import everyblade.core.angle.Turn;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Degrees as a person types them: rounded to a grid, never by less than was planned. */
final class TypedDegrees {

    static final double TURN = 360;
    static final double TENTH = 0.1;
    /** What an entry can say. */
    static final double FINEST = 1e-5;

    private static final double NOTHING = 1e-9;
    /** Share of a step that is taken for a slip of arithmetic. */
    private static final double ROUNDING = 1e-3;

    private TypedDegrees() {}

    /** Whole degrees where nothing is known closer than that anyway, else as fine as it must be. */
    static double grid(VisibilityWindow.Slack slack) {
        double doubt = slack.below() + slack.above();
        return doubt >= 1 ? 1 : doubt > 0 ? TENTH : FINEST;
    }

    static double nearest(double degrees, double grid) {
        return Math.rint(degrees / grid) * grid;
    }

    static double below(double degrees, double grid) {
        return Math.floor(degrees / grid + ROUNDING) * grid;
    }

    static double above(double degrees, double grid) {
        return Math.ceil(degrees / grid - ROUNDING) * grid;
    }

    /** From 0 to a turn. */
    static double wrapped(double degrees) {
        double once = degrees - TURN * Math.floor(degrees / TURN);
        return once > TURN - NOTHING ? 0 : once;
    }

    static Turn turn(double degrees) {
        return Turn.ofDegrees(BigDecimal.valueOf(degrees).setScale(5, RoundingMode.HALF_EVEN));
    }

    static BigDecimal number(double degrees) {
        BigDecimal number =
                BigDecimal.valueOf(degrees).setScale(5, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
