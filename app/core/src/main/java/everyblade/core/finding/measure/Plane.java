package everyblade.core.finding.measure;

/**
 * A place of which the engine model and the pose tell where it lies and how it slants: the surface round a line is taken
 * as flat, and both points are carried along their lines of sight onto it.
 *
 * @param camera that took the picture
 * @param right component of the surface's unit normal to the right of the picture
 * @param down component downwards
 * @param towards component back towards the scope tip, above 0 for a place seen square-on
 * @param distance of the middle of the line from the scope tip, along its axis, mm, above 0
 * @param distanceError standard uncertainty of that, mm
 * @param tiltError standard uncertainty of the normal's direction, degrees, in any direction
 */
public record Plane(
        Camera camera,
        double right,
        double down,
        double towards,
        double distance,
        double distanceError,
        double tiltError)
        implements Seen {

    /**
     * A picture without distortion: straight lines stay straight.
     *
     * @param cone full angle across the picture, degrees, above 0 and below 180
     * @param pixels across the picture
     * @param middleX of the picture, pixels
     * @param middleY of the picture, pixels
     */
    public record Camera(double cone, double pixels, double middleX, double middleY) {

        /** Pixels for each unit of the tangent of the angle off the axis. */
        double scale() {
            return pixels / 2 / Math.tan(Math.toRadians(cone / 2));
        }

        private double[] sight(double x, double y) {
            return new double[] {(x - middleX) / scale(), (y - middleY) / scale(), 1};
        }
    }

    public Plane {
        if (!(distance > 0 && distanceError >= 0 && tiltError >= 0)) {
            throw new IllegalArgumentException("a surface is seen from in front of it, at a distance");
        }
    }

    /** At the middle of the picture. */
    @Override
    public double incidence() {
        return Math.toDegrees(Math.acos(Math.min(1, Math.abs(towards) / Math.hypot(Math.hypot(right, down), towards))));
    }

    @Override
    public Extension extension(PixelLine line) {
        double length = length(line, right, down, towards);
        double e = Math.toRadians(tiltError);
        double sideways = length(line, right + e * towards, down, towards - e * right) - length;
        double upwards = length(line, right, down + e * towards, towards - e * down) - length;
        return new Extension(
                scaled(length), distanceError / distance, Math.hypot(sideways, upwards) / Math.max(length, 1e-12));
    }

    /** In the unit that lines in a square-on place of {@link Slant} have: pixels times mm. */
    private double scaled(double length) {
        return length * camera.scale();
    }

    private double length(PixelLine line, double nx, double ny, double towardsTip) {
        double nz = -towardsTip;
        double[] middle = camera.sight((line.x1() + line.x2()) / 2, (line.y1() + line.y2()) / 2);
        double level = (nx * middle[0] + ny * middle[1] + nz) * distance;
        double[] a = carried(camera.sight(line.x1(), line.y1()), nx, ny, nz, level);
        double[] b = carried(camera.sight(line.x2(), line.y2()), nx, ny, nz, level);
        return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]) + (a[2] - b[2]) * (a[2] - b[2]));
    }

    private static double[] carried(double[] sight, double nx, double ny, double nz, double level) {
        double along = level / (nx * sight[0] + ny * sight[1] + nz * sight[2]);
        return new double[] {sight[0] * along, sight[1] * along, sight[2] * along};
    }
}
