package everyblade.core.entry;

import everyblade.core.entry.SyntaxProblem.Flaw;
import everyblade.core.entry.SyntaxProblem.Form;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One typed line, read from left to right: what is before the cursor is understood, what follows is not yet.
 *
 * <p>Columns are counted from 1 in code points of the line as typed. White space of any kind separates words. Every
 * reading method either moves the cursor past what it gives, or throws a {@link Refusal} that points at what is wrong.
 */
final class Line {

    private static final int MOST_DIGITS = 9;
    private static final int LONGEST_QUOTE = 24;

    private TypedText typed;
    private int at;

    private Line(TypedText typed) {
        this.typed = typed;
    }

    /** The line with the cursor before it. */
    static Line of(String line) throws Refusal {
        return new Line(TypedText.of(line));
    }

    /** The column of what comes next, white space skipped; past the last word if nothing does. */
    int column() {
        return next() + 1;
    }

    boolean atEnd() {
        return next() == typed.end();
    }

    /** The refusal of what comes next, because this was expected. */
    Refusal expected(Expected what) {
        return expected(what, Form.ANY);
    }

    private Refusal expected(Expected what, Form form) {
        Optional<String> found = atEnd() ? Optional.empty() : Optional.of(found());
        return new Refusal(column(), new SyntaxProblem.Unexpected(what, form, found));
    }

    /** Refuses whatever is left. */
    void end() throws Refusal {
        if (!atEnd()) {
            throw expected(Expected.END);
        }
    }

    /** Refuses whatever is left after a name, of which it may be the rest. */
    void endAfterName() throws Refusal {
        if (!atEnd()) {
            throw expected(Expected.END_AFTER_NAME);
        }
    }

    /** What comes next up to white space, cut short for a message. */
    String found() {
        int from = next();
        int stop = from;
        while (!typed.isBreak(stop)) {
            stop++;
        }
        return stop - from <= LONGEST_QUOTE
                ? typed.slice(from, stop)
                : typed.slice(from, from + LONGEST_QUOTE) + "\u2026";
    }

    /** The next word in lower case, without moving; empty at the end. Words in double quotes keep their quotes. */
    String peek() {
        return peek(0);
    }

    /** The word after this many others, as {@link #peek()}. */
    String peek(int words) {
        int from = next();
        for (int word = 0; word < words; word++) {
            from = typed.spaceStop(typed.wordStop(from));
        }
        return typed.slice(from, typed.wordStop(from)).toLowerCase(Locale.ROOT);
    }

    /** Moves past this word if it comes next, in upper or lower case. */
    boolean take(String word) {
        if (!peek().equals(word)) {
            return false;
        }
        at = typed.wordStop(next());
        return true;
    }

    /** Moves past {@code ±} or {@code +-} if it comes next. */
    boolean takePlusMinus() {
        int length = typed.plusMinusLength(next());
        at += length;
        return length > 0;
    }

    /** Moves past a comma if it comes next. */
    void takeComma() {
        if (typed.is(next(), ',')) {
            at++;
        }
    }

    /** Moves past a dash of any length if it follows without white space. */
    boolean takeDash() {
        boolean dash = typed.isDash(at);
        at += dash ? 1 : 0;
        return dash;
    }

    /** Cuts this word off the end of the line if it is the last one there and not the next. */
    boolean takeLast(String word) {
        int from = typed.end();
        while (from > at && !typed.isBreak(from - 1)) {
            from--;
        }
        if (from == next()
                || !typed.slice(from, typed.end()).toLowerCase(Locale.ROOT).equals(word)) {
            return false;
        }
        typed = typed.trimmed(from);
        return true;
    }

    /** One word, or several in double quotes, in which {@code ""} stands for a double quote. */
    Said<String> name(Expected expected) throws Refusal {
        int from = next();
        if (typed.is(from, '"')) {
            return quoted(from);
        }
        int stop = typed.wordStop(from);
        if (stop == from || typed.is(from, ',') && stop == from + 1) {
            throw expected(expected);
        }
        at = stop;
        return new Said<>(typed.slice(from, stop), from + 1);
    }

    private Said<String> quoted(int from) throws Refusal {
        int stop = typed.quoteStop(from);
        if (stop < 0) {
            throw new Refusal(from + 1, Flaw.QUOTE_NOT_CLOSED);
        }
        if (!typed.isBreak(stop)) {
            throw new Refusal(stop + 1, Flaw.NO_SPACE_AFTER_QUOTE);
        }
        String value = typed.slice(from + 1, stop - 1).replace("\"\"", "\"");
        if (value.codePoints().allMatch(TypedText::isSpace)) {
            throw new Refusal(from + 1, Flaw.EMPTY_QUOTES);
        }
        at = stop;
        return new Said<>(value, from + 1);
    }

    /** Everything left of the line, which may be nothing. */
    Said<String> text() {
        int from = next();
        at = typed.end();
        return new Said<>(typed.slice(from, at), from + 1);
    }

    /** Everything left of the line, which must not be nothing. */
    Said<String> text(Expected expected) throws Refusal {
        if (atEnd()) {
            throw expected(expected);
        }
        return text();
    }

    /** A name that runs to the end of the line, or stands in double quotes. */
    Said<String> nameToEnd(Expected expected) throws Refusal {
        return peek().startsWith("\"") ? name(expected) : text(expected);
    }

    /** Names up to the end of the line, one at least. */
    List<Said<String>> names(Expected expected) throws Refusal {
        List<Said<String>> names = new ArrayList<>();
        do {
            names.add(name(expected));
        } while (!atEnd());
        return List.copyOf(names);
    }

    /** The reason in {@code because TEXT}; a comma may stand before it. */
    String because() throws Refusal {
        takeComma();
        if (!take("because")) {
            throw expected(Expected.BECAUSE_AND_REASON);
        }
        return text(Expected.REASON).value();
    }

    /** A whole number from 1, before white space, ±, a comma or a dash. */
    Said<Integer> whole(Expected expected) throws Refusal {
        int from = next();
        int stop = typed.digitsStop(from);
        if (stop == from || typed.isDecimalMark(stop)) {
            throw expected(expected, Form.WHOLE);
        }
        if (stop - from > MOST_DIGITS) {
            throw new Refusal(from + 1, new SyntaxProblem.WholeTooLong(MOST_DIGITS));
        }
        int value = Integer.parseInt(typed.slice(from, stop));
        if (value == 0) {
            throw new Refusal(from + 1, new SyntaxProblem.Zero(expected));
        }
        if (!typed.isBreak(stop) && typed.plusMinusLength(stop) == 0 && !typed.is(stop, ',') && !typed.isDash(stop)) {
            throw new Refusal(stop + 1, Flaw.NO_SPACE_AFTER_NUMBER);
        }
        at = stop;
        return new Said<>(value, from + 1);
    }

    /** A whole number from 1, before white space only: what is glued to it would else be taken for what follows. */
    Said<Integer> wholeAlone(Expected expected) throws Refusal {
        Said<Integer> number = whole(expected);
        if (!typed.isBreak(at)) {
            throw expected(Expected.SPACE_AFTER_NUMBER);
        }
        return number;
    }

    /** A number that is not negative and has no sign. */
    Said<BigDecimal> unsigned(Expected expected) throws Refusal {
        int from = next();
        if (typed.isMinus(from) && typed.isDigit(from + 1)) {
            throw expected(expected, Form.NOT_NEGATIVE);
        }
        if (typed.is(from, '+')) {
            throw expected(expected, Form.UNSIGNED);
        }
        return signed(expected);
    }

    /** A number above zero without a sign. */
    Said<BigDecimal> positive(Expected expected) throws Refusal {
        Said<BigDecimal> number = unsigned(expected);
        if (number.value().signum() == 0) {
            throw new Refusal(number.column(), new SyntaxProblem.NotPositive(expected));
        }
        return number;
    }

    /** A number with or without a sign, with a decimal point or a comma that cannot be taken for another mark. */
    Said<BigDecimal> signed(Expected expected) throws Refusal {
        int from = next();
        boolean negative = typed.isMinus(from);
        int first = negative || typed.is(from, '+') ? from + 1 : from;
        int mark = typed.digitsStop(first);
        if (mark == first) {
            throw expected(expected);
        }
        boolean hasDecimals = typed.isDecimalMark(mark);
        int stop = hasDecimals ? typed.digitsStop(mark + 1) : mark;
        if (mark - first > MOST_DIGITS || stop - mark - 1 > MOST_DIGITS) {
            throw new Refusal(from + 1, new SyntaxProblem.DecimalTooLong(MOST_DIGITS));
        }
        Optional<DecimalComma.TwoWays> doubt = DecimalComma.doubt(typed.slice(from, stop));
        if (doubt.isPresent()) {
            throw new Refusal(from + 1, doubt.get());
        }
        if (typed.is(stop, '.')) {
            throw new Refusal(stop + 1, Flaw.SECOND_POINT);
        }
        at = stop;
        String digits = typed.slice(first, mark);
        BigDecimal value = new BigDecimal(hasDecimals ? digits + '.' + typed.slice(mark + 1, stop) : digits);
        return new Said<>(negative ? value.negate() : value, from + 1);
    }

    private int next() {
        at = typed.spaceStop(at);
        return at;
    }
}
