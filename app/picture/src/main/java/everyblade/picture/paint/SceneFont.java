package everyblade.picture.paint;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The font of all pictures, Liberation Sans (SIL Open Font License), which comes with PDFBox: alike on every machine. */
public final class SceneFont {

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private SceneFont() {}

    /** For painting, one unit high. */
    public static Font font() {
        try (InputStream file = file()) {
            return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(1f);
        } catch (FontFormatException unreadable) {
            throw new IllegalStateException("the font in the PDFBox library cannot be read", unreadable);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Its file, to be closed by the caller. */
    static InputStream file() {
        InputStream file = SceneFont.class.getResourceAsStream(RESOURCE);
        if (file == null) {
            throw new IllegalStateException("the PDFBox library comes without " + RESOURCE);
        }
        return file;
    }
}
