package everyblade.picture.letter;

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

    /** What to tell a person, a sentence; empty if every letter can be shown. */
    public synchronized Optional<String> lacking(String words) {
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
                : Optional.of("no font on this machine has "
                        + String.join(", ", lacking.subList(0, Math.min(MOST_NAMED, lacking.size())))
                        + (lacking.size() > MOST_NAMED ? " and " + (lacking.size() - MOST_NAMED) + " more letters" : "")
                        + ", so its pages show codes in their place; install a font for them, such as those of Noto");
    }

    private Font own() {
        if (own.isEmpty()) {
            own = Optional.of(SceneFont.font());
        }
        return own.get();
    }
}
