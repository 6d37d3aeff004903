package everyblade.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;

/**
 * Why a text is no JSON, as its author would put it: the parser says where it stopped, and what stands there and just
 * before tells which of the usual slips it is.
 *
 * @param code of the problem
 * @param why what is wrong there
 * @param mend what to do
 */
record SyntaxFault(String code, String why, String mend) {

    private static final String WRONG_QUOTES = "'\u2018\u2019\u201C\u201D\u201E\u00B4`";

    /** The slip at which a parser stopped in this text. */
    static SyntaxFault of(String text, JsonProcessingException fault) {
        int at = offset(text, fault);
        char here = at < text.length() ? text.charAt(at) : 0;
        int beforeAt = before(text, at);
        char before = beforeAt < 0 ? 0 : text.charAt(beforeAt);
        String reason = String.valueOf(fault.getOriginalMessage());
        if (fault instanceof JsonEOFException) {
            return new SyntaxFault(
                    "unclosed",
                    "the file ends before everything in it is closed",
                    "close the bracket, brace or quote that is still open");
        }
        if (reason.contains("CTRL-CHAR")) {
            return new SyntaxFault(
                    "control-character",
                    "a line break or another control character stands in a quoted text",
                    "close the quote on its line; write \\n for a line break");
        }
        if (reason.contains("escape")) {
            return new SyntaxFault(
                    "bad-escape",
                    "a backslash stands before a letter that it cannot stand before",
                    "write a backslash twice, and forward slashes in paths");
        }
        if (WRONG_QUOTES.indexOf(here) >= 0) {
            return new SyntaxFault(
                    "wrong-quotes", "texts stand between straight double quotes only", "use straight double quotes");
        }
        if (here == '#' || here == '/' && at + 1 < text.length() && "/*".indexOf(text.charAt(at + 1)) >= 0) {
            return new SyntaxFault(
                    "comment", "JSON has no comments", "delete it and write it into a README beside the file");
        }
        if (reason.contains("close marker")) {
            return new SyntaxFault(
                    "wrong-bracket",
                    "a bracket is closed by one of another kind",
                    "see which bracket is opened last before here");
        }
        if (",]}".indexOf(here) >= 0 && ",[{".indexOf(before) >= 0) {
            return new SyntaxFault(
                    "extra-comma",
                    "a comma stands where nothing follows or precedes it",
                    "delete the comma that nothing follows or precedes");
        }
        return ofValue(text, here, before, beforeAt, at, fault);
    }

    private static SyntaxFault ofValue(
            String text, char here, char before, int beforeAt, int at, JsonProcessingException fault) {
        String reason = String.valueOf(fault.getOriginalMessage());
        boolean afterNumber = at > 0 && isDigit(text.charAt(at - 1));
        if (isDigit(here) && before == ',' && beforeAt > 0 && isDigit(text.charAt(beforeAt - 1))) {
            return new SyntaxFault(
                    "decimal-comma", "commas stand between values, not within numbers", "write a decimal point");
        }
        if (reason.contains("start field name")) {
            return new SyntaxFault("unquoted-key", "keys stand in double quotes", "put the key into double quotes");
        }
        if (reason.contains("colon to separate")) {
            return new SyntaxFault(
                    "missing-colon",
                    "nothing stands between a key and its value",
                    "put a colon between the key and its value");
        }
        if (reason.contains("umeric value")
                || ".+".indexOf(here) >= 0
                || afterNumber && reason.contains("comma")
                || afterNumber && here == '/') {
            return new SyntaxFault(
                    "bad-number",
                    "numbers are not written so in JSON",
                    "write it like 12, -0.5 or 1e3, without a unit, and a fraction in double quotes");
        }
        if (reason.contains("comma to separate")) {
            return new SyntaxFault(
                    "missing-comma",
                    "nothing stands between two values that follow each other",
                    "put a comma before it");
        }
        if (reason.startsWith("Unrecognized token") || reason.startsWith("Non-standard token")) {
            return new SyntaxFault(
                    "bare-word",
                    "a word stands without quotes",
                    "write true, false or null, or put the word into double quotes");
        }
        if (before == ':' && ",]}".indexOf(here) >= 0) {
            return new SyntaxFault(
                    "missing-value",
                    "nothing follows the colon after a key",
                    "write a value after the colon, or delete the key");
        }
        return new SyntaxFault("not-json", reason(fault), "correct the text here or just before");
    }

    /** The parser's reason, its first line only. */
    static String reason(IOException fault) {
        String message = fault instanceof JsonProcessingException json ? json.getOriginalMessage() : fault.getMessage();
        String first = String.valueOf(message).lines().findFirst().orElse("");
        StringBuilder reason = new StringBuilder("the reader found: ");
        first.codePoints()
                .limit(160)
                .forEach(point -> reason.appendCodePoint(Wording.isPrintable(point) ? point : '?'));
        return reason.toString();
    }

    private static int offset(String text, JsonProcessingException fault) {
        JsonLocation location = fault.getLocation();
        long at = location == null ? 0 : location.getCharOffset();
        return (int) Math.max(0, Math.min(text.length(), at));
    }

    private static int before(String text, int at) {
        int i = at - 1;
        while (i >= 0 && Character.isWhitespace(text.charAt(i))) {
            i--;
        }
        return i;
    }

    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }
}
