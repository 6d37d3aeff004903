package everyblade.core.finding.measure;

/**
 * Two points set in a picture, in pixels; x to the right, y downwards.
 *
 * @param x1 of the first point
 * @param y1 of the first point
 * @param x2 of the second point
 * @param y2 of the second point
 */
public record PixelLine(double x1, double y1, double x2, double y2) {

    public PixelLine {
        if (!(Math.hypot(x2 - x1, y2 - y1) > 0)) {
            throw new IllegalArgumentException("two points of a line differ, and are finite");
        }
    }

    /** Distance of the points, pixels. */
    public double length() {
        return Math.hypot(x2 - x1, y2 - y1);
    }
}
