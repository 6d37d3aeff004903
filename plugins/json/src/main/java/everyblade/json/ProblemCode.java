package everyblade.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What one code of a {@link Problem} means. The table of all of them is the text {@code problem-codes.md} beside this
 * class, which people read as well.
 *
 * @param code in lower case with hyphens
 * @param severity {@code error}, {@code warning}, or both
 * @param found {@code read} if it is found whenever a model is read, {@code checked} if surfaces are needed for it,
 *     {@code limits} if it is of a file of limits, {@code jar} if it is of a jar
 * @param meaning what is wrong, a sentence
 * @param mend what to do, a sentence
 */
public record ProblemCode(String code, String severity, String found, String meaning, String mend) {

    private static final String TABLE = "problem-codes.md";
    private static final Pattern LINE =
            Pattern.compile("\\| `([a-z0-9-]+)` \\| ([a-z ]+) \\| (read|checked|limits|jar) \\| (.+) \\| (.+) \\|");

    /** All codes, in the order of the table. */
    public static List<ProblemCode> all() {
        return table().lines()
                .map(LINE::matcher)
                .filter(Matcher::matches)
                .map(line -> new ProblemCode(line.group(1), line.group(2), line.group(3), line.group(4), line.group(5)))
                .toList();
    }

    /** What a code means; empty if there is no such code. */
    public static Optional<ProblemCode> of(String code) {
        return all().stream().filter(one -> one.code().equals(code)).findFirst();
    }

    /** The table as people read it, Markdown. */
    public static String table() {
        try (InputStream in = ProblemCode.class.getResourceAsStream(TABLE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
