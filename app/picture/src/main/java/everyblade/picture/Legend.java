package everyblade.picture;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What each look means, in plain words. */
public final class Legend {

    /** Height of one entry, mm. */
    static final double ENTRY = 6.9;

    private static final int ENTRIES = Look.values().length + 1;

    private static final double LINE = 5;
    private static final double LINE_SAMPLE = 4;
    private static final double LINE_LETTERS = 2.8;

    private static final double SAMPLE_WIDTH = 9;
    private static final double SAMPLE_HEIGHT = 5.6;

    private Legend() {}

    /** The legend in columns, its upper left corner at a place. */
    static Group at(Point corner, int columns, double columnWidth, MapWords said) {
        List<Item> items = new ArrayList<>();
        int rows = (ENTRIES + columns - 1) / columns;
        for (int i = 0; i < ENTRIES; i++) {
            Point at = corner.plus(i / rows * columnWidth, i % rows * ENTRY);
            Patch sample = new Patch(new Flat(at.plus(0, SAMPLE_HEIGHT)), 0, SAMPLE_WIDTH, 0, SAMPLE_HEIGHT);
            boolean damage = i == ENTRIES - 1;
            Look look = damage ? Look.UNSEEN : Look.values()[i];
            items.addAll(sample(look, damage, sample));
            Point words = at.plus(SAMPLE_WIDTH + 2, 2.4);
            items.add(Item.of(Text.upright(words, name(look, damage, said), 2.7, Anchor.START), Ink.LINE));
            items.add(Item.of(
                    Text.upright(
                            words.plus(0, 3),
                            damage ? said.say("meaning.damaged") : look.meaning(said),
                            1.9,
                            Anchor.START),
                    Ink.FAINT));
        }
        return new Group(said.say("group.legend"), items);
    }

    /** The names of the looks alone, on a sheet of this width, mm, and as high as it makes them. */
    public static Scene named(double width, MapWords said) {
        double high = linesHeight(width, said);
        return new Scene(
                width,
                high,
                said.say("group.legend"),
                String.join(", ", names(said)),
                List.of(lines(new Point(0, high), width, said)));
    }

    /** Height of the legend that only names the looks, on as many lines as its width makes it need, mm. */
    static double linesHeight(double width, MapWords said) {
        return (1 + breaks(width, said).size()) * LINE;
    }

    /** Samples with their names only, one after the other; the last line's foot at the corner. */
    static Group lines(Point lowerLeft, double width, MapWords said) {
        List<Item> items = new ArrayList<>();
        List<Integer> breaks = breaks(width, said);
        double y = lowerLeft.y() - (1 + breaks.size()) * LINE;
        double x = lowerLeft.x() + 1;
        List<String> names = names(said);
        for (int i = 0; i < names.size(); i++) {
            if (breaks.contains(i)) {
                x = lowerLeft.x() + 1;
                y += LINE;
            }
            Patch patch = new Patch(new Flat(new Point(x, y + LINE - 1)), 0, LINE_SAMPLE, 0, LINE - 2);
            boolean damage = i == ENTRIES - 1;
            if (i < ENTRIES) {
                items.addAll(sample(damage ? Look.UNSEEN : Look.values()[i], damage, patch));
            } else {
                items.add(AirfoilDrawing.begun(patch));
            }
            Point words = new Point(x + LINE_SAMPLE + 1, y + LINE / 2 + Lettering.CAPITAL * LINE_LETTERS / 2);
            items.add(Item.of(Text.upright(words, names.get(i), LINE_LETTERS, Anchor.START), Ink.LINE));
            x += entryWidth(names.get(i));
        }
        return Group.of(items);
    }

    private static double entryWidth(String name) {
        return LINE_SAMPLE + 1 + Lettering.length(name, LINE_LETTERS) * Lettering.SLACK + 2;
    }

    /** What the lines name: all looks, damage, and that some of a cell was seen. */
    private static List<String> names(MapWords said) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < ENTRIES; i++) {
            boolean damage = i == ENTRIES - 1;
            names.add(name(damage ? Look.UNSEEN : Look.values()[i], damage, said));
        }
        names.add(said.say("look.begun"));
        return names;
    }

    /** The entries with which a line begins, but for the first. */
    private static List<Integer> breaks(double width, MapWords said) {
        List<Integer> breaks = new ArrayList<>();
        double x = 1;
        List<String> names = names(said);
        for (int i = 0; i < names.size(); i++) {
            double wide = entryWidth(names.get(i));
            if (x > 1 && x + wide > width) {
                breaks.add(i);
                x = 1;
            }
            x += wide;
        }
        return breaks;
    }

    private static String name(Look look, boolean damage, MapWords words) {
        return damage ? words.say("look.damaged") : look.words(words);
    }

    private static List<Item> sample(Look look, boolean damage, Patch patch) {
        List<Item> items = new ArrayList<>(AirfoilDrawing.cell(look, patch, Optional.empty()));
        if (damage) {
            items.add(AirfoilDrawing.damage(patch.middle(), 0.45 * patch.height()));
        }
        return items;
    }
}
