package everyblade.picture;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * The clock round a wheel, as angles or as hours.
 *
 * @param polar the wheel
 * @param radius at which the marks begin, mm
 * @param words in which that is told
 * @param size of the letters, mm
 */
record ClockScale(Polar polar, double radius, MapWords words, double size) {

    /** A mark every 10 degrees, told every 30; takes {@link Wheel#MARGIN}. */
    List<Item> angles() {
        List<Item> items = new ArrayList<>();
        List<List<Point>> marks = new ArrayList<>();
        CurvedText text = new CurvedText(polar, radius + 5, size);
        for (int degrees = 0; degrees < 360; degrees += 10) {
            boolean told = degrees % 30 == 0;
            marks.add(List.of(polar.at(degrees, radius + 0.6), polar.at(degrees, radius + (told ? 3 : 1.8))));
            if (told) {
                items.addAll(text.at(degrees, degrees == 0 ? words.say("noon") : degrees + "°", Ink.LINE));
            }
        }
        items.add(Item.of(new Strokes(marks), Style.lined(Ink.LINE, 0.18)));
        return items;
    }

    /** 12, 3, 6 and 9, upright, where the hands of a clock stand; takes as much as its letters. */
    List<Item> hours() {
        List<Item> items = new ArrayList<>();
        for (int hour = 3; hour <= 12; hour += 3) {
            Point at = polar.at(30.0 * hour, radius + 0.2 + size / 2).plus(0, Lettering.CAPITAL * size / 2);
            items.add(Item.of(Text.upright(at, Integer.toString(hour), size, Anchor.MIDDLE), Ink.FAINT));
        }
        return items;
    }
}
