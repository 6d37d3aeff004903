package everyblade.picture.section;

import everyblade.picture.scene.Point;

/**
 * The plane through the axis on the sheet: x to the right, r upward, both to one scale.
 *
 * @param field the part of the sheet
 * @param origin where x is 0 and r is {@code lowest}
 * @param lowest the radius at the lower edge, mm; 0 if the axis is shown
 * @param scale mm on the sheet for one of the engine
 * @param bounds what is shown
 */
record CutPlane(Box field, Point origin, double lowest, double scale, SectionBounds bounds) {

    /** @param toAxis the axis is shown if the least radius is below this share of the greatest */
    static CutPlane of(SectionBounds bounds, Box field, double toAxis) {
        double lowest = bounds.inner() < toAxis * bounds.outer() ? 0 : bounds.inner();
        double scale =
                Math.min(field.width() / (bounds.rear() - bounds.front()), field.height() / (bounds.outer() - lowest));
        double left = field.corner().x() + (field.width() - scale * (bounds.rear() - bounds.front())) / 2;
        return new CutPlane(field, new Point(left - scale * bounds.front(), field.bottom()), lowest, scale, bounds);
    }

    Point at(double x, double r) {
        return origin.plus(scale * x, -scale * (r - lowest));
    }

    boolean showsAxis() {
        return lowest == 0;
    }

    /** The radius of the casing at an x; of a model without a casing, the greatest radius of all. */
    double casingAt(double x) {
        return bounds.casing().map(casing -> casing.radiusAt(x)).orElse(bounds.outer());
    }
}
