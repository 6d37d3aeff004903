package everyblade.cli;

import everyblade.core.entry.LineProblem;
import everyblade.core.entry.Refusal;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line that should be an entry, as it came: from an argument, a file or standard input.
 *
 * @param text the entry alone
 * @param column at which the entry begins in its line, from 1, in characters as the eye counts them
 * @param at the time written before it
 * @param number of its line in its file, from 1
 */
record TypedLine(String text, int column, Optional<Instant> at, int number) {

    private static final Pattern TIME =
            Pattern.compile("(\\s*)([0-9]{4}-[0-9]{2}-[0-9]{2}T\\S*)(\\s*)(.*)", Pattern.DOTALL);
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** A line given as an argument of its own. */
    static TypedLine ofArgument(String text) {
        return new TypedLine(text, 1, Optional.empty(), 1);
    }

    /**
     * The lines of a file; blank ones and those that begin with # are left out.
     *
     * @param name of the file, for messages
     */
    static List<TypedLine> ofFile(Object name, byte[] bytes) {
        List<TypedLine> lines = new ArrayList<>();
        int number = 1;
        int start = 0;
        for (int i = 0; i <= bytes.length; i++) {
            if (i == bytes.length || bytes[i] == '\n') {
                try {
                    of(ByteBuffer.wrap(bytes, start, i - start), number).ifPresent(lines::add);
                } catch (Refusal refusal) {
                    throw Failure.of(
                            "stopped.typedLine.refusedNothingBatchWasKept",
                            name,
                            number,
                            refusal.column(),
                            refusal.why());
                }
                number++;
                start = i + 1;
            }
        }
        return lines;
    }

    /**
     * One line of bytes without its newline; empty if it is blank or begins with #.
     *
     * @throws Refusal if it is not UTF-8, or the time before the entry cannot be read
     */
    static Optional<TypedLine> of(ByteBuffer bytes, int number) throws Refusal {
        String line = text(bytes);
        String read = number == 1 && line.startsWith(BYTE_ORDER_MARK) ? line.substring(1) : line;
        String bare = read.strip();
        if (bare.isEmpty() || bare.startsWith("#")) {
            return Optional.empty();
        }
        Matcher matcher = TIME.matcher(read);
        if (!matcher.matches()) {
            return Optional.of(new TypedLine(read, 1, Optional.empty(), number));
        }
        int column = read.codePointCount(0, matcher.start(4)) + 1;
        try {
            Instant at = OffsetDateTime.parse(matcher.group(2)).toInstant();
            return Optional.of(new TypedLine(matcher.group(4), column, Optional.of(at), number));
        } catch (DateTimeException unreadable) {
            throw new Refusal(matcher.end(1) + 1, new LineProblem.NoTime(OneLine.quoted(matcher.group(2))));
        }
    }

    private static String text(ByteBuffer bytes) throws Refusal {
        ByteBuffer rest = bytes.duplicate();
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(rest).toString();
        } catch (CharacterCodingException malformed) {
            // The decoder's position is lost; what could be read up to the fault tells the column.
            String lenient = StandardCharsets.UTF_8.decode(bytes.duplicate()).toString();
            int fault = Math.max(0, lenient.indexOf('\uFFFD'));
            throw new Refusal(lenient.codePointCount(0, fault) + 1, LineProblem.Flaw.NOT_UTF8);
        }
    }
}
