package everyblade.json.jar;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The versions of the plugin interface that a plugin works with: half-open, never empty.
 *
 * @param from the first one
 * @param before the first one that it does not work with any more
 */
record SpiRange(Version from, Version before) {

    private static final Pattern INTERVAL = Pattern.compile("\\[([0-9.]{1,16}), ?([0-9.]{1,16})\\)");

    /** Reads {@code [1.0,3.0)}, or {@code 1.2}, which means {@code [1.2,2.0)}; empty if it is neither. */
    static Optional<SpiRange> of(String text) {
        Matcher interval = INTERVAL.matcher(text);
        if (interval.matches()) {
            return Version.of(interval.group(1))
                    .flatMap(from -> Version.of(interval.group(2))
                            .filter(before -> from.compareTo(before) < 0)
                            .map(before -> new SpiRange(from, before)));
        }
        return Version.of(text).map(from -> new SpiRange(from, new Version(from.major() + 1, 0)));
    }

    boolean isAbove(Version version) {
        return version.compareTo(from) < 0;
    }

    boolean isBelow(Version version) {
        return version.compareTo(before) >= 0;
    }

    @Override
    public String toString() {
        return "[" + from + "," + before + ")";
    }
}
