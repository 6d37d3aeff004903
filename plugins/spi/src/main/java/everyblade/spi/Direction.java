package everyblade.spi;

/** A sense of turning or counting round the axis, as seen from aft looking forward. */
public enum Direction {
    /** Clockwise. */
    CW(1),
    /** Counter-clockwise. */
    CCW(-1);

    private final int sign;

    Direction(int sign) {
        this.sign = sign;
    }

    /** +1 for clockwise, −1 for counter-clockwise. */
    public int sign() {
        return sign;
    }

    /** The other one. */
    public Direction opposite() {
        return this == CW ? CCW : CW;
    }

    /** The word used in engine models and entries: {@code cw} or {@code ccw}. */
    public String word() {
        return this == CW ? "cw" : "ccw";
    }
}
