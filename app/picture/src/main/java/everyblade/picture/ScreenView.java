package everyblade.picture;

import everyblade.picture.scene.Group;
import everyblade.picture.scene.Point;
import java.util.List;
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
 * @param legend whether it names what the looks mean; else that stands elsewhere
 */
public record ScreenView(
        MapStyle style,
        Optional<String> chosen,
        double width,
        double height,
        double fine,
        MapWords words,
        boolean figures,
        boolean legend) {

    /** Height that the legend takes at the foot of the sheet, mm. */
    double foot() {
        return legend ? Legend.linesHeight(width, words) : 0;
    }

    /** The legend at the foot of the sheet; nothing where it stands elsewhere. */
    Group legendAtFoot() {
        return legend ? Legend.lines(new Point(0, height), width, words) : Group.of(List.of());
    }
}
