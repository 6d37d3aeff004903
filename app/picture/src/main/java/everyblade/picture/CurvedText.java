package everyblade.picture;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Polar;
import java.util.ArrayList;
import java.util.List;

/**
 * Words that run round a ring, upright as far as a ring allows: those of the lower half are turned over, and nothing is
 * ever mirrored.
 *
 * @param polar the ring
 * @param radius mm, of the middle of the letters
 * @param size of the font, mm
 */
record CurvedText(Polar polar, double radius, double size) {

    /** How far a straight word may leave the ring before its letters are set one by one, mm. */
    private static final double SAG = 0.12;

    /** Degrees of the ring that words take on each side of their middle. */
    double reach(String words) {
        return Lettering.length(words, size) / 2 / polar.scale(radius);
    }

    /** The words, their middle at a clock angle. */
    List<Item> at(double clock, String words, Ink ink) {
        double sheet = wrapped(polar.onSheet(clock));
        boolean turned = sheet > 90 && sheet < 270;
        double length = Lettering.length(words, size);
        List<Item> items = new ArrayList<>();
        if (length * length / 8 / radius < SAG) {
            items.add(letter(sheet, turned, words, ink));
            return items;
        }
        double done = 0;
        for (int i = 0; i < words.length(); i = words.offsetByCodePoints(i, 1)) {
            String letter = words.substring(i, words.offsetByCodePoints(i, 1));
            double advance = Lettering.length(letter, size);
            double offset = (done + advance / 2 - length / 2) / polar.scale(radius);
            if (!letter.isBlank()) {
                items.add(letter(sheet + (turned ? -offset : offset), turned, letter, ink));
            }
            done += advance;
        }
        return items;
    }

    private Item letter(double sheet, boolean turned, String words, Ink ink) {
        double middle = Lettering.CAPITAL * size / 2;
        Polar upright = new Polar(polar.centre(), false);
        return Item.of(
                new Text(
                        upright.at(sheet, turned ? radius + middle : radius - middle),
                        words,
                        size,
                        Anchor.MIDDLE,
                        turned ? sheet - 180 : sheet),
                ink);
    }

    /** The same direction, from 0 to a turn. */
    static double wrapped(double degrees) {
        double rest = degrees % 360;
        return rest < 0 ? rest + 360 : rest;
    }

    /** How far two directions lie apart, 0 to 180 degrees. */
    static double apart(double a, double b) {
        double difference = wrapped(a - b);
        return Math.min(difference, 360 - difference);
    }
}
