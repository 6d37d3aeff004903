package everyblade.session.around;

/** Makes text that came from outside fit for one line of a message. */
public final class OneLine {

    private static final int LONGEST_QUOTE = 80;

    private OneLine() {}

    /** The text with every character that would break or disturb a line replaced: breaks by a space, others by ?. */
    public static String of(String text) {
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            switch (Character.getType(point)) {
                case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> line.append(' ');
                case Character.CONTROL -> line.append(point == '\n' || point == '\r' || point == '\t' ? ' ' : '?');
                case Character.SURROGATE -> line.append('?');
                default -> line.appendCodePoint(point);
            }
        });
        return line.toString();
    }

    /** The text in double quotes, cut off where it is long. */
    public static String quoted(String text) {
        int length = text.codePointCount(0, text.length());
        return length <= LONGEST_QUOTE
                ? '"' + text + '"'
                : '"' + text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) + "…\"";
    }
}
