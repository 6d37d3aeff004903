package everyblade.picture.letter;

import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The order in which the signs of a line stand from left to right, where some of them are read from right to left: the
 * Unicode Bidirectional Algorithm (UAX #9), by the class library, with brackets turned round where it asks for that.
 */
public final class LineOrder {

    private static final Map<Integer, Integer> MIRRORED = mirrored();

    private LineOrder() {}

    /** A line as it is read, in the order in which it stands. */
    public static String standing(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Integer[] order = new Integer[runs];
        for (int run = 0; run < runs; run++) {
            levels[run] = (byte) bidi.getRunLevel(run);
            order[run] = run;
        }
        Bidi.reorderVisually(levels, 0, order, 0, runs);
        StringBuilder standing = new StringBuilder();
        for (int run : order) {
            String words = line.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            standing.append(levels[run] % 2 == 0 ? words : backwards(words));
        }
        return standing.toString();
    }

    /** Marks stay behind the letter that they stand on. */
    private static String backwards(String words) {
        StringBuilder result = new StringBuilder();
        int[] signs = words.codePoints().toArray();
        int end = signs.length;
        for (int i = signs.length - 1; i >= 0; i--) {
            if (i == 0 || Character.getType(signs[i]) != Character.NON_SPACING_MARK) {
                IntStream.range(i, end)
                        .map(at -> signs[at])
                        .forEach(sign -> result.appendCodePoint(MIRRORED.getOrDefault(sign, sign)));
                end = i;
            }
        }
        return result.toString();
    }

    private static Map<Integer, Integer> mirrored() {
        String pairs = "()[]{}<>«»‹›≤≥⟨⟩（）［］「」『』【】";
        Map<Integer, Integer> mirrored = new HashMap<>();
        for (int i = 0; i < pairs.length(); i += 2) {
            mirrored.put((int) pairs.charAt(i), (int) pairs.charAt(i + 1));
            mirrored.put((int) pairs.charAt(i + 1), (int) pairs.charAt(i));
        }
        return Map.copyOf(mirrored);
    }
}
