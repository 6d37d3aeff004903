package everyblade.core.sight;

import everyblade.spi.Station.Heading;

/**
 * How a scope tip's round field maps what it sees: the distance of a picture element from the middle is proportional to the
 * tangent of the angle from the optical axis, so straight edges stay straight; the rim is the edge of the cone. The pose's
 * {@code up} is at the top.
 *
 * <p>It computes with {@link StrictMath}, for a picture must not depend on the machine it was made on. Places are mm in the frame of the engine: x aft, y towards 3 o'clock, z towards 12 o'clock.
 */
public final class Lens {

    private final double[] eye;
    private final double[] forward;
    private final double[] up;
    private final double[] right;
    private final double radius;
    private final double scale;

    /**
     * The lens of a pose.
     *
     * @param size picture elements across the field
     */
    public Lens(Pose pose, int size) {
        double clock = Math.toRadians(pose.clock().degrees());
        eye = new double[] {pose.x(), pose.r() * StrictMath.sin(clock), pose.r() * StrictMath.cos(clock)};
        forward = unit(inEngine(pose.forward(), clock));
        up = unit(square(inEngine(pose.up(), clock), forward));
        right = cross(forward, up);
        radius = size / 2.0;
        scale = radius / StrictMath.tan(Math.toRadians(pose.cone().degrees()) / 2);
    }

    private static double[] inEngine(Heading heading, double clock) {
        double sine = StrictMath.sin(clock);
        double cosine = StrictMath.cos(clock);
        return new double[] {
            heading.axial(),
            heading.tangential() * cosine + heading.radial() * sine,
            heading.radial() * cosine - heading.tangential() * sine
        };
    }

    /** The part of one direction that is square to another; any such direction if they are parallel. */
    private static double[] square(double[] direction, double[] to) {
        double along = dot(direction, to);
        double[] part = new double[3];
        for (int i = 0; i < 3; i++) {
            part[i] = direction[i] - along * to[i];
        }
        boolean parallel = dot(part, part) < 1e-12;
        return parallel ? square(Math.abs(to[0]) > 0.5 ? new double[] {0, 0, 1} : new double[] {1, 0, 0}, to) : part;
    }

    private static double[] unit(double[] v) {
        double length = Math.sqrt(dot(v, v));
        return new double[] {v[0] / length, v[1] / length, v[2] / length};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** Where a place lies from the scope tip: to the right, up, and ahead, mm. */
    public double[] seen(double x, double y, double z) {
        double[] from = {x - eye[0], y - eye[1], z - eye[2]};
        return new double[] {dot(from, right), dot(from, up), dot(from, forward)};
    }

    /** How far right of the left edge something seen ahead lies, in picture elements; above 0 ahead. */
    public double across(double[] seen) {
        return radius + scale * seen[0] / seen[2];
    }

    /** How far below the top edge it lies. */
    public double down(double[] seen) {
        return radius - scale * seen[1] / seen[2];
    }

    /** The direction from the scope tip to the middle of a picture element: to the right, up, and 1 ahead. */
    public double[] towards(int column, int line) {
        return new double[] {(column + 0.5 - radius) / scale, (radius - line - 0.5) / scale, 1};
    }

    /** Whether the middle of a picture element lies in the cone. */
    public boolean holds(int column, int line) {
        double x = column + 0.5 - radius;
        double y = line + 0.5 - radius;
        return x * x + y * y <= radius * radius;
    }
}
