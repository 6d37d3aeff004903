package everyblade.picture.sight;

import everyblade.core.sight.Hindrance;
import everyblade.picture.Pattern;
import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/** Draws facets: those in sight in the colour of their step with the degrees written in, the others in the pattern of the reason. */
final class FacetDrawing {

    private static final double HAIR = 0.08;
    private static final double SPACING = 1.3;
    private static final double SIZE = 2;
    private static final double SMALL = 1.6;

    /** Room for the borders of zones beside a number. */
    private static final double CLEAR = 0.8;

    private FacetDrawing() {}

    /**
     * A facet in sight.
     *
     * @param degrees of a turn over which it is in sight
     * @param always whether it is in sight from every place within the station's tolerance
     */
    static List<Item> inSight(DrawnShape shape, double degrees, boolean always) {
        InSight step = InSight.of(degrees);
        List<Item> items = new ArrayList<>();
        items.add(Item.of(shape, Style.both(step.fill(), Ink.FAINT, HAIR)));
        if (shape instanceof Patch patch) {
            String number = InSight.written(degrees);
            write(items, patch, always ? number : "(" + number + ")", step.text());
        }
        return items;
    }

    private static void write(List<Item> items, Patch patch, String words, Ink ink) {
        double upright = Lettering.length(words, SIZE) * Lettering.SLACK;
        double turned = Lettering.length(words, SMALL) * Lettering.SLACK;
        if (upright < patch.length() && SIZE < patch.height()) {
            var at = patch.middle().plus(0, Lettering.CAPITAL * SIZE / 2);
            items.add(Item.of(new Text(at, words, SIZE, Anchor.MIDDLE, 0), ink));
        } else if (turned < patch.height() && Lettering.CAPITAL * SMALL + CLEAR < patch.length()) {
            var at = patch.middle().plus(Lettering.CAPITAL * SMALL / 2, 0);
            items.add(Item.of(new Text(at, words, SMALL, Anchor.MIDDLE, -90), ink));
        }
    }

    /** A facet that is never in sight; only a rectangle has room for the pattern. */
    static List<Item> never(DrawnShape shape, Hindrance why) {
        WhyLook look = WhyLook.of(why);
        List<Item> items = new ArrayList<>();
        boolean flat = shape instanceof Patch;
        items.add(Item.of(shape, Style.both(look.wash(), flat ? Ink.FAINT : look.mark(), HAIR)));
        if (shape instanceof Patch patch) {
            double spacing = Math.min(SPACING, Math.min(patch.length(), patch.height()) / 1.5);
            Style style = look.pattern() == Pattern.DOTS ? Style.filled(look.mark()) : Style.lined(look.mark(), 0.16);
            look.pattern().on(patch, spacing).ifPresent(marks -> items.add(Item.of(marks, style)));
        }
        return items;
    }
}
