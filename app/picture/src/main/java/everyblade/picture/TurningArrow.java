package everyblade.picture;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Shape.Anchor;
import everyblade.picture.scene.Shape.Polygon;
import everyblade.picture.scene.Shape.Strokes;
import everyblade.picture.scene.Shape.Text;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * A round arrow with words beside it: which way something turns.
 *
 * @param clockwise as it is drawn
 * @param what turns, and how it is looked at
 * @param words in which its sense is told
 * @param size of the letters, mm
 * @param width of all of it, mm
 */
record TurningArrow(boolean clockwise, String what, MapWords words, double size, double width) {

    private static final double RADIUS = 3.3;
    private static final double REACH = 130;
    private static final double BESIDE = 2 * RADIUS + 4;

    double height() {
        return 2.5 * size + 1;
    }

    /** The arrow, its upper left corner at a place. */
    List<Item> at(Point corner) {
        double middle = height() / 2;
        Polar polar = new Polar(corner.plus(RADIUS + 1, middle), !clockwise);
        List<Point> arc = new ArrayList<>();
        for (double degrees = -REACH; degrees <= REACH - 20; degrees += 10) {
            arc.add(polar.at(degrees, RADIUS));
        }
        String sense = words.say(clockwise ? "turns.cw" : "turns.ccw");
        return List.of(
                Item.of(new Strokes(List.of(arc)), Style.lined(Ink.LINE, 0.7)),
                Item.of(
                        new Polygon(List.of(
                                polar.at(REACH + 18, RADIUS),
                                polar.at(REACH - 22, RADIUS - 1.8),
                                polar.at(REACH - 22, RADIUS + 1.8))),
                        Style.filled(Ink.LINE)),
                word(corner.plus(BESIDE, middle - 0.15 * size), sense, Ink.LINE),
                word(corner.plus(BESIDE, middle + size), what, Ink.FAINT));
    }

    private Item word(Point at, String said, Ink ink) {
        return Item.of(Text.upright(at, Lettering.fitted(said, size, width - BESIDE), size, Anchor.START), ink);
    }
}
