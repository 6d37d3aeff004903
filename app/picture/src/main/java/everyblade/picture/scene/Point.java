package everyblade.picture.scene;

/**
 * A place on the sheet.
 *
 * @param x mm from the left edge
 * @param y mm from the top edge
 */
public record Point(double x, double y) {

    /** The place that lies so much further right and down. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
