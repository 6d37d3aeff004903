package everyblade.picture.scene;

/**
 * Coordinates in which the cells of a row are rectangles: along the row, and across it from root to tip.
 */
public sealed interface Frame permits Polar, Flat {

    /** Where a place of this frame lies on the sheet. */
    Point at(double along, double across);

    /** How far along the row a place on the sheet lies; what {@link #at} was given, on a ring from 0 to a turn. */
    double along(Point place);

    /** How far across the row a place on the sheet lies. */
    double across(Point place);

    /** How many millimetres one unit along the row takes at this height across it. */
    double scale(double across);
}
