package everyblade.picture.letter;

import everyblade.fact.Fact;
import everyblade.picture.paint.SceneFont;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells of words in which letters are that no page made on this machine can show. Safe for several threads. */
public final class ReadableLetters {

    /** All before it are in the pictures' own font. */
    private static final int FIRST_DOUBTFUL = 0x180;

    private static final int MOST_NAMED = 3;

    private final FontsHere fonts = new FontsHere();
    private Optional<Font> own = Optional.empty();

    /**
     * Letters that no font on this machine has.
     *
     * @param named the first of them, by their code points such as {@code U+E123}
     * @param more how many others
     */
    public record Lacking(List<String> named, int more) implements Fact {}

    /** The letters of a text that cannot be shown; empty if every letter can. */
    public synchronized Optional<Lacking> lacking(String words) {
        List<String> lacking = words.codePoints()
                .filter(letter -> letter >= FIRST_DOUBTFUL)
                .filter(letter -> !Character.isWhitespace(letter) && !Character.isSpaceChar(letter))
                .filter(letter -> Character.getType(letter) != Character.FORMAT)
                .distinct()
                .filter(letter ->
                        !own().canDisplay(letter) && fonts.with(letter).isEmpty())
                .mapToObj(letter -> String.format(Locale.ROOT, "U+%04X", letter))
                .toList();
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of(new Lacking(
                        lacking.subList(0, Math.min(MOST_NAMED, lacking.size())),
                        Math.max(0, lacking.size() - MOST_NAMED)));
    }

    private Font own() {
        if (own.isEmpty()) {
            own = Optional.of(SceneFont.font());
        }
        return own.get();
    }
}
