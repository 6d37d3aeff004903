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
 */
record TurningArrow(boolean clockwise, String what) {

    static final double WIDTH = 54;
    static final double HEIGHT = 8.6;

    private static final double RADIUS = 3.3;
    private static final double REACH = 130;
    private static final double SIZE = 3;

    /** The arrow, its upper left corner at a place. */
    List<Item> at(Point corner) {
        Polar polar = new Polar(corner.plus(RADIUS + 1, HEIGHT / 2), !clockwise);
        List<Point> arc = new ArrayList<>();
        for (double degrees = -REACH; degrees <= REACH - 20; degrees += 10) {
            arc.add(polar.at(degrees, RADIUS));
        }
        double words = 2 * RADIUS + 4;
        return List.of(
                Item.of(new Strokes(List.of(arc)), Style.lined(Ink.LINE, 0.7)),
                Item.of(
                        new Polygon(List.of(
                                polar.at(REACH + 18, RADIUS),
                                polar.at(REACH - 22, RADIUS - 1.8),
                                polar.at(REACH - 22, RADIUS + 1.8))),
                        Style.filled(Ink.LINE)),
                word(corner.plus(words, HEIGHT / 2 - 0.5), clockwise ? "clockwise" : "counter-clockwise", Ink.LINE),
                word(corner.plus(words, HEIGHT / 2 + 3), what, Ink.FAINT));
    }

    private static Item word(Point at, String words, Ink ink) {
        double room = WIDTH - 2 * RADIUS - 4;
        return Item.of(Text.upright(at, Lettering.fitted(words, SIZE, room), SIZE, Anchor.START), ink);
    }
}
