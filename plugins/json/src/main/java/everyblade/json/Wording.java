package everyblade.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** How messages speak of what the author wrote: on one line, short, and with the nearest word that would be right. */
public final class Wording {

    private static final int LONGEST_QUOTE = 60;

    /** A known word of so many letters within a longer one is meant, as count is by bladeCount. */
    private static final int LEAST_WITHIN = 4;

    private Wording() {}

    /** The text in quotes, its control characters shown as question marks, cut short if it is long. */
    public static String quoted(String text) {
        return '"' + plain(text) + '"';
    }

    /** The same without quotes. */
    public static String plain(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().limit(LONGEST_QUOTE).forEach(point -> out.appendCodePoint(isPrintable(point) ? point : '?'));
        return out.length() < text.length() ? out + "…" : out.toString();
    }

    /** Whether a character can stand in a line of text. */
    static boolean isPrintable(int point) {
        int type = Character.getType(point);
        return !Character.isISOControl(point)
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }

    /**
     * The known word that is fewest changes of one letter away, among the first thousand; empty if none is so near that
     * it can have been meant.
     */
    static Optional<String> nearest(String word, Collection<String> known) {
        String cut = word.substring(0, Math.min(LONGEST_QUOTE, word.length())).toLowerCase(Locale.ROOT);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String candidate : known.stream().limit(1000).toList()) {
            int distance = distance(cut, candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        boolean within = best.length() >= LEAST_WITHIN && cut.contains(best.toLowerCase(Locale.ROOT));
        boolean near = within || least <= Math.max(1, Math.max(cut.length(), best.length()) / 3);
        return near ? Optional.of(best) : Optional.empty();
    }

    /** Levenshtein distance: the fewest letters put in, taken out or replaced. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
