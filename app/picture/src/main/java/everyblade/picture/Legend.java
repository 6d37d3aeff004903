package everyblade.picture;

import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Anchor;
import everyblade.picture.scene.Shape.Patch;
import everyblade.picture.scene.Shape.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What each look means, in plain words. */
final class Legend {

    /** Height of one entry, mm. */
    static final double ENTRY = 6.9;

    /** Size of the legend that only names the looks, mm. */
    static final double NAMES_WIDTH = 42;

    static final double NAMES_HEIGHT = 4.7 * (Look.values().length + 1);

    private static final double SAMPLE_WIDTH = 9;
    private static final double SAMPLE_HEIGHT = 5.6;
    private static final double SAMPLE_SHARE = 0.6;

    private Legend() {}

    /** The legend in columns, its upper left corner at a place. */
    static Group at(Point corner, int columns, double columnWidth) {
        List<Item> items = new ArrayList<>();
        int entries = Look.values().length + 1;
        int rows = (entries + columns - 1) / columns;
        for (int i = 0; i < entries; i++) {
            Point at = corner.plus(i / rows * columnWidth, i % rows * ENTRY);
            Patch sample = new Patch(new Flat(at.plus(0, SAMPLE_HEIGHT)), 0, SAMPLE_WIDTH, 0, SAMPLE_HEIGHT);
            boolean damage = i == entries - 1;
            Look look = damage ? Look.UNSEEN : Look.values()[i];
            items.addAll(sample(look, damage, sample));
            Point words = at.plus(SAMPLE_WIDTH + 2, 2.4);
            items.add(Item.of(Text.upright(words, name(look, damage, MapWords.ENGLISH), 2.7, Anchor.START), Ink.LINE));
            items.add(Item.of(
                    Text.upright(
                            words.plus(0, 3),
                            damage ? MapWords.ENGLISH.say("meaning.damaged") : look.meaning(MapWords.ENGLISH),
                            1.9,
                            Anchor.START),
                    Ink.FAINT));
        }
        return new Group("Legend", items);
    }

    /** A column of samples with their names only, so many times as large as usual. */
    static List<Item> names(Point corner, double size, MapWords said) {
        List<Item> items = new ArrayList<>();
        int entries = Look.values().length + 1;
        double step = size * NAMES_HEIGHT / entries;
        for (int i = 0; i < entries; i++) {
            boolean damage = i == entries - 1;
            Look look = damage ? Look.UNSEEN : Look.values()[i];
            Point foot = corner.plus(0, (i + 1) * step - 0.6);
            items.addAll(sample(look, damage, new Patch(new Flat(foot), 0, 8 * size, 0, step - 1.2)));
            items.add(Item.of(
                    Text.upright(
                            foot.plus(10 * size, -0.5 * (step - 1.2) + 1.1 * size),
                            name(look, damage, said),
                            3.5 * size,
                            Anchor.START),
                    Ink.LINE));
        }
        return items;
    }

    private static String name(Look look, boolean damage, MapWords words) {
        return damage ? words.say("look.damaged") : look.words(words);
    }

    private static List<Item> sample(Look look, boolean damage, Patch patch) {
        List<Item> items =
                new ArrayList<>(AirfoilDrawing.cell(look, patch, OptionalDouble.of(SAMPLE_SHARE), Optional.empty()));
        if (damage) {
            items.addAll(AirfoilDrawing.damage(patch));
        }
        return items;
    }
}
