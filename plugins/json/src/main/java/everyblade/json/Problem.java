package everyblade.json;

import java.util.List;
import java.util.Optional;

/**
 * One thing wrong in one place of a file, told so that its author can mend it, on one line when printed.
 *
 * @param code which kind of problem, in lower case with hyphens; stable from version to version, see {@link ProblemCode}
 * @param severity whether it refuses the file
 * @param file as the author knows it
 * @param line from 1
 * @param column from 1, in UTF-16 units; a tab is one
 * @param pointer JSON pointer (RFC 6901) of the value, or of what should hold it; empty for the whole file
 * @param what what is wrong
 * @param why why that is a problem
 * @param mend what to do
 * @param nearest the word most like the wrong one that could stand in its place; empty if no word is wrong
 */
public record Problem(
        String code,
        Severity severity,
        String file,
        int line,
        int column,
        String pointer,
        String what,
        String why,
        String mend,
        Optional<String> nearest) {

    /** How many problems a list of them holds before the rest is only counted. */
    public static final int MOST = 100;

    /** A problem in which no word is wrong. */
    public Problem(
            String code,
            Severity severity,
            String file,
            int line,
            int column,
            String pointer,
            String what,
            String why,
            String mend) {
        this(code, severity, file, line, column, pointer, what, why, mend, Optional.empty());
    }

    /** A problem of a file or folder as a whole. */
    public static Problem ofWhole(String code, String file, String what, String why, String mend) {
        return new Problem(code, Severity.ERROR, file, 1, 1, "", what, why, mend);
    }

    /** Whether any of these refuses the file. */
    public static boolean anyError(List<Problem> problems) {
        return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    /** {@code FILE:LINE:COLUMN: code: what, why, what to do}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + code + ": " + what + ", " + why + ", " + mend;
    }
}
