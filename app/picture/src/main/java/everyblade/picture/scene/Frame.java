package everyblade.picture.scene;

/**
 * Coordinates in which the cells of a row are rectangles: along the row, and across it from root to tip.
 */
public sealed interface Frame permits Polar, Flat {

    /** Where a place of this frame lies on the sheet. */
    Point at(double along, double across);

    /** How many millimetres one unit along the row takes at this height across it. */
    double scale(double across);
}
