package everyblade.picture.scene;

/**
 * A row unrolled: millimetres to the right along it, millimetres up across it.
 *
 * @param origin where both are zero
 */
public record Flat(Point origin) implements Frame {

    @Override
    public Point at(double along, double across) {
        return origin.plus(along, -across);
    }

    @Override
    public double along(Point place) {
        return place.x() - origin.x();
    }

    @Override
    public double across(Point place) {
        return origin.y() - place.y();
    }

    @Override
    public double scale(double across) {
        return 1;
    }
}
