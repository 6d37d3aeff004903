package everyblade.picture;

/**
 * How a strip is looked at on a screen.
 *
 * @param width of the sheet, mm
 * @param height of the sheet, mm
 * @param fine mm below which a cell is too small for a pattern to be told
 * @param words in which it speaks
 */
public record StripView(double width, double height, double fine, MapWords words) {}
