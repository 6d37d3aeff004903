package everyblade.core.entry;

import everyblade.fact.Fact;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Why a line cannot be read as an entry. What was found or said is cut short where it is long. */
sealed interface SyntaxProblem extends Fact {

    /** How a number that is expected must be. */
    enum Form {
        ANY,
        WHOLE,
        NOT_NEGATIVE,
        UNSIGNED
    }

    /** What says all by itself. */
    enum Flaw implements SyntaxProblem {
        SEVERAL_LINES,
        QUOTE_NOT_CLOSED,
        NO_SPACE_AFTER_QUOTE,
        EMPTY_QUOTES,
        NO_SPACE_AFTER_NUMBER,
        SECOND_POINT,
        SEVERAL_PLUS_MINUS
    }

    /**
     * Something else was expected.
     *
     * @param found what stands there, empty at the end of the line
     */
    record Unexpected(Expected expected, Form form, Optional<String> found) implements SyntaxProblem {}

    /** A number counted from 1 was expected, and 0 found. */
    record Zero(Expected expected) implements SyntaxProblem {}

    /** A number above 0 was expected, and 0 found. */
    record NotPositive(Expected expected) implements SyntaxProblem {}

    /** @param most code points of a line */
    record LineTooLong(int most) implements SyntaxProblem {}

    /** @param codePoint such as {@code U+0007} */
    record Unreadable(String codePoint) implements SyntaxProblem {}

    /** @param digits that a whole number may have */
    record WholeTooLong(int digits) implements SyntaxProblem {}

    /** @param digits that a number may have on either side of its decimal mark */
    record DecimalTooLong(int digits) implements SyntaxProblem {}

    /** @param near the verb that was most likely meant */
    record NoEntry(String found, Optional<String> near) implements SyntaxProblem {}

    /** @param near the kind of finding that was most likely meant */
    record NoKind(String found, Optional<String> near, List<String> kinds) implements SyntaxProblem {}

    /** A sign after a word that says the sense. */
    record NegativeAfter(String sense) implements SyntaxProblem {}

    /** A unit in which the scope tip is not moved. */
    record NoUnitOfDrawing(String unit) implements SyntaxProblem {}

    /** Another unit than degrees. */
    record NotDegrees(String unit) implements SyntaxProblem {}

    /** A dimension that was said before. */
    record SaidTwice(Expected dimension) implements SyntaxProblem {}

    /** A temperature that no metal has. */
    record TooCold(BigDecimal coldest, boolean fahrenheit) implements SyntaxProblem {}
}
