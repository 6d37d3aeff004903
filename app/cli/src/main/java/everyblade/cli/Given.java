package everyblade.cli;

import everyblade.core.entry.DecimalComma;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the values of options. */
final class Given {

    private static final Pattern NUMBER = Pattern.compile("([+-]?[0-9]{1,9}(?:[.,][0-9]{1,9})?) ?([a-z]*)");

    private Given() {}

    /** A number with a decimal point or comma, to which its unit may be written. */
    static BigDecimal number(String option, String text, String unit) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.matches()
                || !matcher.group(2).isEmpty() && !matcher.group(2).equals(unit)) {
            throw Failure.of(
                    "stopped.given.noNumberWriteLike",
                    option,
                    OneLine.quoted(text),
                    Optional.of(unit).filter(known -> !known.isEmpty()));
        }
        Optional<DecimalComma.TwoWays> doubt = DecimalComma.doubt(matcher.group(1));
        if (doubt.isPresent()) {
            throw Failure.of("stopped.given.twoWays", option, doubt.get());
        }
        return new BigDecimal(matcher.group(1).replace(',', '.'));
    }

    /** A moment; one without its difference from UTC would mean another moment on another machine. */
    static Instant time(String where, String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException unreadable) {
            throw Failure.of("stopped.given.noTimeThatCanBe", where, OneLine.quoted(text));
        }
    }

    /** Words for the record: not nothing, and on one line. */
    static String words(String option, String text) {
        String words = text.strip();
        if (words.isEmpty()) {
            throw Failure.of("stopped.given.thereNothingInSayIn", option);
        }
        if (!OneLine.of(words).equals(words)) {
            throw Failure.of("stopped.given.hasCharactersThatDoNot", option);
        }
        return words;
    }
}
