package everyblade.core.finding.closing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A reason that a person gave, read as another person would: whether it says anything at all, and whether it claims that
 * something cannot be seen.
 *
 * @param text as it was given
 */
public record ReasonGiven(String text) {

    private static final Pattern WORD = Pattern.compile("(?U)\\p{L}{3}.*");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("(?U)[^\\p{L}\\p{N}]+");

    /** Said by themselves these tell nobody who decided what; English and German. */
    private static final Set<String> EMPTY = Set.of(
            "okay",
            "oke",
            "yes",
            "yep",
            "nope",
            "none",
            "nothing",
            "fine",
            "good",
            "same",
            "test",
            "tbd",
            "todo",
            "because",
            "reason",
            "closed",
            "settled",
            "whatever",
            "noted",
            "see",
            "above",
            "also",
            "now",
            "the",
            "and",
            "well",
            "all",
            "that",
            "this",
            "was",
            "ist",
            "gut",
            "passt",
            "nein",
            "keine",
            "kein",
            "alles",
            "siehe",
            "oben",
            "xxx",
            "xyz",
            "asdf",
            "abc");

    private static final Pattern CANNOT_BE_SEEN = Pattern.compile("(?iU).*("
            + "\\b(no|not|nor|never|none|cannot|can't|cant|can not|isn't|isnt|without|out of|beyond)\\b.{0,40}"
            + "\\b(access|accessible|reach|reached|reachable|seen|see|show|shows|shown|visible|in sight|view|views|line of sight)\\b"
            + "|\\b(inaccessible|unreachable|invisible|hidden|obscured)\\b"
            + "|\\b(kein\\w*|nicht|nie)\\b.{0,40}\\b(sicht|sichtbar|einsehbar|erreichbar|zugänglich|zu sehen|zeigt|erreicht)\\b"
            + "|\\b(unzugänglich|unerreichbar|unsichtbar|verdeckt)\\b"
            + ").*");

    /** Whether it has a word in it that tells another person something. */
    public boolean says() {
        return Arrays.stream(BETWEEN_WORDS.split(text.toLowerCase(Locale.ROOT)))
                .anyMatch(word -> WORD.matcher(word).matches() && !EMPTY.contains(word));
    }

    /** Whether it claims that nothing can be seen there, which is for the engine model to say. */
    boolean claimsOutOfSight() {
        return CANNOT_BE_SEEN.matcher(text).matches();
    }
}
