package everyblade.picture.paint;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;

/**
 * Words that a font lacks letters of, laid out with the fonts of this machine: letters joined, and from right to left where
 * they are read so.
 *
 * @param outline from the left end of the base line
 * @param length of the line
 */
public record OutlinedWords(Shape outline, double length) {

    /** What a letter that no font has is replaced by. */
    private static final String UNKNOWN = "?";

    /** Whether a font lacks a letter of these words. */
    public static boolean areNeeded(String words, Font font) {
        return words.codePoints().anyMatch(letter -> letter > '~' && !font.canDisplay(letter));
    }

    /** The words at the size of a font, in it as far as it has their letters. */
    public static OutlinedWords of(String words, Font font) {
        Font other = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(font.getSize2D());
        StringBuilder shown = new StringBuilder();
        words.codePoints()
                .forEach(letter -> shown.append(
                        font.canDisplay(letter) || other.canDisplay(letter) ? Character.toString(letter) : UNKNOWN));
        AttributedString laid = new AttributedString(shown.toString());
        for (int i = 0; i < shown.length(); i = shown.offsetByCodePoints(i, 1)) {
            Font its = font.canDisplay(shown.codePointAt(i)) ? font : other;
            laid.addAttribute(TextAttribute.FONT, its, i, shown.offsetByCodePoints(i, 1));
        }
        TextLayout layout = new TextLayout(laid.getIterator(), new FontRenderContext(null, true, true));
        return new OutlinedWords(layout.getOutline(null), layout.getAdvance());
    }
}
