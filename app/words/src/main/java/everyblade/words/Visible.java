package everyblade.words;

import java.util.Locale;

/** Text for people's eyes: what would show nothing, or turn what stands beside it round, is written out as a number. */
public final class Visible {

    private Visible() {}

    /**
     * The same text with every control character but line breaks and tabs, every character of no width, and everything that turns the
     * direction of writing replaced by its code point, such as ⟨U+202E⟩.
     */
    public static String text(String text) {
        if (text.codePoints().noneMatch(Visible::hidden)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (hidden(point)) {
                shown.append(String.format(Locale.ROOT, "⟨U+%04X⟩", point));
            } else {
                shown.appendCodePoint(point);
            }
        });
        return shown.toString();
    }

    private static boolean hidden(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL -> point != '\n' && point != '\t';
            case Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
            default -> false;
        };
    }
}
