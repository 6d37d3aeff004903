package everyblade.picture;

import java.util.Optional;

/**
 * How the map is looked at on a screen.
 *
 * @param style colours, and from where the engine is seen
 * @param enlarged id of the row that is drawn large round the others; empty for all alike
 * @param turning whether airfoils are drawn where they stand now; if not, airfoil 1 of each row that turns is drawn on
 *     top, and the clock goes round instead
 * @param width of the sheet, mm
 * @param height of the sheet, mm
 * @param fine mm below which a cell is too small for a pattern to be told
 * @param words in which it speaks
 */
public record ScreenView(
        MapStyle style,
        Optional<String> enlarged,
        boolean turning,
        double width,
        double height,
        double fine,
        MapWords words) {}
