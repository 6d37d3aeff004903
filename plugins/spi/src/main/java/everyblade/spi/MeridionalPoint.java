package everyblade.spi;

/**
 * A point in the plane through the axis.
 *
 * @param x aft along the axis, mm
 * @param r radius, mm, not negative
 */
public record MeridionalPoint(double x, double r) {}
