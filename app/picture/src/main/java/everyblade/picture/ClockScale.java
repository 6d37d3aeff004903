package everyblade.picture;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Shape.Strokes;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * The clock angles round a wheel: a mark every 10 degrees, told every 30.
 *
 * @param polar the wheel
 * @param radius at which the marks begin, mm; they take {@link Wheel#MARGIN}
 * @param noon where on the wheel 12 o'clock is, degrees
 * @param words in which that is told
 * @param size of the letters, mm
 */
record ClockScale(Polar polar, double radius, double noon, MapWords words, double size) {

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        List<List<Point>> marks = new ArrayList<>();
        ArcText text = new ArcText(polar, radius + 5, size);
        for (int degrees = 0; degrees < 360; degrees += 10) {
            boolean told = degrees % 30 == 0;
            double at = noon + degrees;
            marks.add(List.of(polar.at(at, radius + 0.6), polar.at(at, radius + (told ? 3 : 1.8))));
            if (told) {
                items.addAll(text.at(at, degrees == 0 ? words.say("noon") : degrees + "°", Ink.LINE));
            }
        }
        items.add(Item.of(new Strokes(marks), Style.lined(Ink.LINE, 0.18)));
        return items;
    }
}
