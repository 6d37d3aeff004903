package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.fact.Percent;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;

/** Numbers and lines of words as the sheets of this package write them. */
final class SightWords {

    /** Height of the font of paragraphs, mm. */
    static final double SIZE = 2.5;

    /** From one of their lines to the next, mm. */
    static final double STEP = 3.7;

    private static final int MOST_LINES = 9;
    private static final int MOST_NOTICE = 3;

    private SightWords() {}

    /** An angle to a hundredth of a degree, without idle zeros. */
    static String degrees(Turn angle) {
        return number(angle.degrees()) + "°";
    }

    /** A share of what is out of sight in whole percent, rounded up. */
    static String badPercent(double share) {
        return Percent.bad(share, 0) + " %";
    }

    /** A number to hundredths, without idle zeros. */
    static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
    }

    /** A share in whole percent, rounded down; never 0 for something. */
    static String percent(double share, Words words) {
        return share > 0 && share < 0.01 ? words.say("vantage.underOne") : Percent.good(share, 0) + " %";
    }

    /** What must be shown wherever the engine model is used, on lines of a width; none if there is nothing of the kind. */
    static List<String> notice(Vantage vantage, double size, double width) {
        return vantage.engine()
                .model()
                .notice()
                .map(notice -> Lettering.wrapped(notice, size, width, MOST_NOTICE))
                .orElse(List.of());
    }

    /** Adds a line, cut short where there is no room. */
    static void addLine(List<Item> items, Point at, String words, double size, double width, Ink ink) {
        items.add(Item.of(Text.upright(at, Lettering.fitted(words, size, width), size, Anchor.START), ink));
    }

    /** Adds paragraphs and gives how far down the next one would begin. */
    static double addParagraphs(List<Item> items, Point at, double width, List<String> paragraphs, Ink ink) {
        double down = at.y();
        for (String paragraph : paragraphs) {
            for (String line : Lettering.wrapped(paragraph, SIZE, width, MOST_LINES)) {
                items.add(Item.of(Text.upright(new Point(at.x(), down), line, SIZE, Anchor.START), ink));
                down += STEP;
            }
        }
        return down;
    }
}
