package everyblade.json.jar;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A version of the plugin interface; what is made for one works with every later minor of the same major.
 *
 * @param major not negative
 * @param minor not negative
 */
record Version(int major, int minor) implements Comparable<Version> {

    private static final Pattern TEXT = Pattern.compile("([0-9]{1,6})\\.([0-9]{1,6})");

    /** Reads {@code 1.0}; empty if it is not of that form. */
    static Optional<Version> of(String text) {
        Matcher matcher = TEXT.matcher(text);
        return matcher.matches()
                ? Optional.of(new Version(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }

    @Override
    public int compareTo(Version other) {
        return Comparator.comparingInt(Version::major)
                .thenComparingInt(Version::minor)
                .compare(this, other);
    }

    @Override
    public String toString() {
        return major + "." + minor;
    }
}
