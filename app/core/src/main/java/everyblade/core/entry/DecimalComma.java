package everyblade.core.entry;

import everyblade.fact.Fact;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers with a comma that nobody can read for sure: {@code 1,250} is one and a quarter to some and more than a
 * thousand to others. A point is always decimal, and so is a comma after a whole part of 0 or before any other number
 * of digits than three.
 */
public final class DecimalComma {

    private static final Pattern UNSURE = Pattern.compile("([+\u2212-]?)(0*[1-9][0-9]*),([0-9]{3})");

    private DecimalComma() {}

    /**
     * A number that may be read in two ways.
     *
     * @param decimal how to write it if the comma is decimal
     * @param grouped how to write it if the comma groups digits
     */
    public record TwoWays(String typed, String decimal, String grouped) implements Fact {}

    /** Why a text that is such a number cannot be read, and what to write instead; empty of any other text. */
    public static Optional<TwoWays> doubt(String text) {
        Matcher matcher = UNSURE.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String whole = matcher.group(1) + matcher.group(2);
        return Optional.of(new TwoWays(matcher.group(), whole + "." + matcher.group(3), whole + matcher.group(3)));
    }
}
