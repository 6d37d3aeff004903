package everyblade.window.map;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * How a sheet lies on a component: {@link #view} is the one transform by which it is painted and by which the mouse is
 * understood. Millimetres of the sheet to the component's own units, which are 1/96 inch.
 *
 * @param fit units a millimetre takes where the whole sheet fills the component
 * @param zoom how much larger than that, from 1
 * @param x where the sheet's left edge lies, units
 * @param y where its top edge lies, units
 */
record Lens(double fit, double zoom, double x, double y) {

    /** Units a millimetre takes on a screen of 96 dots an inch. */
    static final double NATURAL = 96 / 25.4;

    static final double MOST = 32;

    /** Share of a component on each side in which something may be hidden by words in its corners. */
    private static final double ASIDE = 0.3;

    /** The whole sheet. */
    static Lens whole(double fit) {
        return new Lens(fit, 1, 0, 0);
    }

    double scale() {
        return fit * zoom;
    }

    AffineTransform view() {
        return new AffineTransform(scale(), 0, 0, scale(), x, y);
    }

    /** The place on the sheet under a point of the component. */
    Point2D onSheet(double px, double py) {
        return new Point2D.Double((px - x) / scale(), (py - y) / scale());
    }

    /** So many times larger, about a point of the component that stays; at most {@link #MOST} times, at least whole. */
    Lens zoomed(double factor, double px, double py) {
        double next = Math.max(1, Math.min(MOST, zoom * factor));
        double by = next / zoom;
        return new Lens(fit, next, px - by * (px - x), py - by * (py - y));
    }

    /** Moved by so much. */
    Lens moved(double dx, double dy) {
        return new Lens(fit, zoom, x + dx, y + dy);
    }

    /** Moved so that a sheet of this size leaves no part of the component free that it could fill. */
    Lens within(double width, double height) {
        double least = 1 - zoom;
        return new Lens(
                fit,
                zoom,
                Math.max(least * width * fit, Math.min(0, x)),
                Math.max(least * height * fit, Math.min(0, y)));
    }

    /** Moved as little as brings a place of a component of this size into its middle, which nothing hides. */
    Lens showing(Rectangle2D place, double width, double height) {
        return moved(
                into(place.getCenterX(), ASIDE * width, (1 - ASIDE) * width),
                into(place.getCenterY(), ASIDE * height, (1 - ASIDE) * height));
    }

    private static double into(double place, double from, double to) {
        return Math.max(from, Math.min(to, place)) - place;
    }
}
