package everyblade.window.author;

import everyblade.json.Problem;

/**
 * The place of a message in a text, as offsets into it: {@code lineStart <= start <= end <= lineEnd}, all within the text.
 *
 * @param lineStart where the line begins
 * @param lineEnd where it ends, before its line feed
 * @param start where the value, key or sign begins
 * @param end where it ends
 */
public record TextMark(int lineStart, int lineEnd, int start, int end) {

    private static final String ENDS = ",:{}[]\" \t";

    /** The place that a message names; of one beyond the end of the text, the end. */
    public static TextMark of(String text, Problem problem) {
        int lineStart = 0;
        for (int line = 1; line < problem.line(); line++) {
            int next = text.indexOf('\n', lineStart);
            if (next < 0) {
                break;
            }
            lineStart = next + 1;
        }
        int feed = text.indexOf('\n', lineStart);
        int lineEnd = feed < 0 ? text.length() : feed;
        int start = Math.min(lineEnd, lineStart + Math.max(0, problem.column() - 1));
        return new TextMark(lineStart, lineEnd, start, end(text, start, lineEnd));
    }

    /** A text in quotes to its second quote, a number or word to its end, else one sign. */
    private static int end(String text, int start, int lineEnd) {
        if (start == lineEnd) {
            return start;
        }
        int at = start + 1;
        if (text.charAt(start) == '"') {
            while (at < lineEnd && text.charAt(at) != '"') {
                at += text.charAt(at) == '\\' ? 2 : 1;
            }
            return Math.min(lineEnd, at + 1);
        }
        if (ENDS.indexOf(text.charAt(start)) < 0) {
            while (at < lineEnd && ENDS.indexOf(text.charAt(at)) < 0) {
                at++;
            }
        }
        return at;
    }
}
