package everyblade.core.entry;

import java.util.Locale;

/**
 * The readable characters of one typed line, by their index in code points from 0, so that a caret under the line
 * stands where the eye expects it. Trailing white space is not part of it; leading white space is, for it moves the
 * columns. Immutable.
 */
final class TypedText {

    /** The longest line that is read, in code points: longer ones were pasted by mistake. */
    static final int LONGEST = 2000;

    private static final String DASHES = "-\u2010\u2011\u2012\u2013\u2014\u2212";
    private static final String LINE_BREAKS = "\n\r\u000b\f\u0085\u2028\u2029";

    private final int[] points;
    private final int end;

    private TypedText(int[] points, int end) {
        this.points = points;
        this.end = end;
    }

    /** The text, if it is one line of readable characters and not too long. */
    static TypedText of(String line) throws Refusal {
        int[] points = line.codePoints().limit(LONGEST + 1L).toArray();
        if (points.length > LONGEST) {
            throw new Refusal(LONGEST + 1, new SyntaxProblem.LineTooLong(LONGEST));
        }
        TypedText text = new TypedText(points, points.length).trimmed(points.length);
        for (int index = text.spaceStop(0); index < text.end; index++) {
            refuseUnreadable(points[index], index + 1);
        }
        return text;
    }

    private static void refuseUnreadable(int point, int column) throws Refusal {
        if (LINE_BREAKS.indexOf(point) >= 0) {
            throw new Refusal(column, SyntaxProblem.Flaw.SEVERAL_LINES);
        }
        if (Character.isISOControl(point) && point != '\t' || Character.getType(point) == Character.SURROGATE) {
            throw new Refusal(column, new SyntaxProblem.Unreadable(String.format(Locale.ROOT, "U+%04X", point)));
        }
    }

    /** White space of any kind, with the no-break spaces and the mark that some editors put before a text. */
    static boolean isSpace(int point) {
        return Character.isWhitespace(point) || Character.isSpaceChar(point) || point == 0x85 || point == 0xFEFF;
    }

    /** Whether this is read as one word without quotes. */
    static boolean isOneWord(String word) {
        int[] points = word.codePoints().toArray();
        return points.length > 0
                && points[0] != '"'
                && points[0] != ','
                && new TypedText(points, points.length).wordStop(0) == points.length;
    }

    /** The index past the last character. */
    int end() {
        return end;
    }

    /** What stands before this index, without the white space at its end. */
    TypedText trimmed(int stop) {
        int last = stop;
        while (last > 0 && isSpace(points[last - 1])) {
            last--;
        }
        return new TypedText(points, last);
    }

    String slice(int from, int stop) {
        return new String(points, from, stop - from);
    }

    /** Whether white space or the end of the line stands here. */
    boolean isBreak(int index) {
        return index >= end || isSpace(points[index]);
    }

    boolean is(int index, int point) {
        return index < end && points[index] == point;
    }

    boolean isDigit(int index) {
        return index < end && points[index] >= '0' && points[index] <= '9';
    }

    /** Whether a dash of any length stands here. */
    boolean isDash(int index) {
        return index < end && DASHES.indexOf(points[index]) >= 0;
    }

    boolean isMinus(int index) {
        return is(index, '-') || is(index, '\u2212');
    }

    /** Whether a decimal point or comma stands here with a digit behind it. */
    boolean isDecimalMark(int index) {
        return (is(index, '.') || is(index, ',')) && isDigit(index + 1);
    }

    /** How many characters of a {@code ±} or {@code +-} stand here, 0 if none. */
    int plusMinusLength(int index) {
        if (is(index, '\u00b1')) {
            return 1;
        }
        return is(index, '+') && isMinus(index + 1) ? 2 : 0;
    }

    int spaceStop(int from) {
        int stop = from;
        while (stop < end && isSpace(points[stop])) {
            stop++;
        }
        return stop;
    }

    int digitsStop(int from) {
        int stop = from;
        while (isDigit(stop)) {
            stop++;
        }
        return stop;
    }

    /** Where the word from here stops: at white space, at ±, before a comma at its end, or behind a closing quote. */
    int wordStop(int from) {
        if (is(from, '"')) {
            int stop = quoteStop(from);
            return stop < 0 ? end : stop;
        }
        int stop = from;
        while (!isBreak(stop) && plusMinusLength(stop) == 0 && !(is(stop, ',') && isBreak(stop + 1))) {
            stop++;
        }
        return stop == from && is(from, ',') ? from + 1 : stop;
    }

    /** The index behind the double quote that closes the one here, or -1; two in a row stand for one inside. */
    int quoteStop(int from) {
        int index = from + 1;
        while (index < end) {
            if (!is(index, '"')) {
                index++;
            } else if (is(index + 1, '"')) {
                index += 2;
            } else {
                return index + 1;
            }
        }
        return -1;
    }
}
