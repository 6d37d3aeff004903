package everyblade.picture;

import java.util.Optional;

/**
 * How cells are looked at on a screen.
 *
 * @param style colours, and from where the engine is seen
 * @param chosen id of the row that a person looks into; empty if none
 * @param width of the sheet, mm
 * @param height of the sheet, mm
 * @param fine mm below which a cell is too small for a pattern to be told
 * @param words in which it speaks
 * @param figures whether it tells how much is seen
 */
public record ScreenView(
        MapStyle style,
        Optional<String> chosen,
        double width,
        double height,
        double fine,
        MapWords words,
        boolean figures) {}
