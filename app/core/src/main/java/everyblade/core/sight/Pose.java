package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;

/**
 * Where a scope tip stands, where it looks and how far it sees: {@code forward} and {@code up} are of unit length.
 * Lengths are mm, in the frame of the engine; headings have axial (aft), tangential (clockwise) and radial (outward)
 * parts at the pose's clock angle.
 *
 * @param x aft along the axis
 * @param r from the axis, not negative
 * @param clock angle at which it stands
 * @param forward the optical axis
 * @param up the top of the picture
 * @param cone full angle of the cone of view, above 0° and below 180°
 * @param near nearest distance at which it sees
 * @param far farthest distance at which it sees, not below {@code near}
 * @param pixels across the diameter of the picture, at least one
 */
public record Pose(
        double x, double r, Turn clock, Heading forward, Heading up, Turn cone, double near, double far, int pixels) {

    public Pose {
        require(Double.isFinite(x) && r >= 0 && Double.isFinite(r), "it stands at a place not within the axis");
        require(cone.signum() > 0 && cone.compareTo(Turn.ofFraction(1, 2)) < 0, "its cone is above 0° and below 180°");
        require(near >= 0 && far >= near && Double.isFinite(far), "it sees from near to far");
        require(pixels >= 1, "its picture has pixels");
        forward = unit(forward);
        up = unit(up);
    }

    /** The nominal pose of a station. */
    public static Pose of(Station station, ScopeTip tip) {
        return new Pose(
                station.x(),
                station.r(),
                Turn.ofDegrees(station.clock()),
                station.forward(),
                station.up(),
                Turn.ofDegrees(tip.cone()),
                tip.near(),
                tip.far(),
                tip.pixels());
    }

    private static Heading unit(Heading heading) {
        double length = Math.sqrt(heading.axial() * heading.axial()
                + heading.tangential() * heading.tangential()
                + heading.radial() * heading.radial());
        require(length > 0 && Double.isFinite(length), "a heading has a length");
        return new Heading(heading.axial() / length, heading.tangential() / length, heading.radial() / length);
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("not a pose of a scope tip: " + rule);
        }
    }
}
