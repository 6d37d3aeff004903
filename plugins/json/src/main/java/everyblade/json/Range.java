package everyblade.json;

/**
 * What a number may be.
 *
 * @param least smallest value
 * @param most greatest value
 * @param open whether the ends themselves are excluded
 * @param words the same for people, to follow "must be"
 */
public record Range(double least, double most, boolean open, String words) {

    /** Any angle that makes sense to write, degrees. */
    public static final Range ANGLE = closed(-3600, 3600);
    /** An error of an angle, degrees. */
    public static final Range ANGLE_ERROR = closed(0, 3600);
    /** A place along the axis, mm. */
    public static final Range AXIAL = closed(-100_000, 100_000);
    /** A radius, a distance or an error of place, mm. */
    public static final Range LENGTH = closed(0, 100_000);
    /** A size that cannot be nothing, mm. */
    public static final Range SIZE = new Range(0, 100_000, true, "above 0 and below 100000");
    /** A share of something. */
    public static final Range SHARE = closed(0, 1);
    /** A part of a direction. */
    public static final Range HEADING = closed(-1_000_000, 1_000_000);

    public static Range closed(int least, int most) {
        return new Range(least, most, false, "from " + least + " to " + most);
    }

    boolean contains(double value) {
        return open ? value > least && value < most : value >= least && value <= most;
    }
}
