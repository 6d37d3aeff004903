package everyblade.picture.scene;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/**
 * How long words are in the picture's font, Liberation Sans, known without loading it.
 *
 * <p>Advance widths in thousandths of the font's size. Arial and Helvetica have the same ones.
 */
public final class Lettering {

    /** Height of a capital letter, as a share of the size. */
    public static final double CAPITAL = 0.69;

    /** How far a letter reaches below the base line, as a share of the size. */
    public static final double DESCENT = 0.22;

    /** How much longer words may come out where a reader lacks the font and takes a wider one. */
    public static final double SLACK = 1.16;

    /** From space to tilde. */
    private static final int[] ADVANCES = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    /** The widest letter in common use: what is not in the table is taken to be no wider. */
    private static final int OTHER = 1000;

    private Lettering() {}

    /** Length of a line of text in mm at a font size in mm; too much for letters that it does not know. */
    public static double length(String words, double size) {
        return size * words.codePoints().map(Lettering::advance).sum() / 1000;
    }

    /** Whether these words are in Latin letters, whose length is known. */
    public static boolean isKnown(String words) {
        return words.codePoints()
                .mapToObj(Character.UnicodeScript::of)
                .allMatch(script -> script == Character.UnicodeScript.LATIN
                        || script == Character.UnicodeScript.COMMON
                        || script == Character.UnicodeScript.INHERITED);
    }

    private static int advance(int letter) {
        return switch (letter) {
            case '°' -> 400;
            case '±' -> 549;
            case '–' -> 556;
            case '−' -> 584;
            case '·' -> 333;
            default -> {
                int plain = plain(letter);
                yield plain >= ' ' && plain <= '~' ? ADVANCES[plain - ' '] : OTHER;
            }
        };
    }

    /** The letter without its accents, which take no room. */
    private static int plain(int letter) {
        return letter <= '~'
                ? letter
                : Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFD)
                        .codePointAt(0);
    }

    /** The words, cut short with an ellipsis where they may come out longer than there is room. */
    public static String fitted(String words, double size, double width) {
        double room = width / SLACK;
        if (length(words, size) <= room) {
            return words;
        }
        int end = words.length();
        while (end > 0 && length(words.substring(0, end) + "…", size) > room) {
            end = words.offsetByCodePoints(end, -1);
        }
        return words.substring(0, end).stripTrailing() + "…";
    }

    /** The words on lines that fit a width; at most so many lines, the last one cut short if need be. */
    public static List<String> wrapped(String words, double size, double width, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || length(longer, size) <= width / SLACK || lines.size() == most - 1) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return lines.stream().map(each -> fitted(each, size, width)).toList();
    }
}
