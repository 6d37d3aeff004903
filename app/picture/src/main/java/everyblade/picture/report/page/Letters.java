package everyblade.picture.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one font of a document, Liberation Sans as pdfbox carries it, and how long words are in it. Only the letters in
 * use are embedded. Serves one document and one thread.
 */
final class Letters {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final float THOUSAND = 1000;

    private final PDType0Font font;
    private final Map<Integer, Float> widths = new HashMap<>();

    private Letters(PDType0Font font) {
        this.font = font;
    }

    static Letters in(PDDocument document) throws IOException {
        TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(resource()));
        // Joined letters would be found by no search for the words.
        file.setEnableGsub(false);
        return new Letters(PDType0Font.load(document, file, true));
    }

    /** The font's file. */
    static InputStream resource() {
        InputStream stream = PDFont.class.getResourceAsStream(FILE);
        if (stream == null) {
            throw new IllegalStateException("pdfbox no longer carries " + FILE);
        }
        return stream;
    }

    PDType0Font font() {
        return font;
    }

    /** The text with every space a plain one, and what the font lacks written as its code. */
    String writable(String text) {
        StringBuilder result = new StringBuilder();
        text.codePoints().forEach(letter -> {
            if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
                result.append(' ');
            } else if (width(letter) < 0) {
                result.append(String.format(java.util.Locale.ROOT, "[U+%04X]", letter));
            } else {
                result.appendCodePoint(letter);
            }
        });
        return result.toString();
    }

    /** Length of writable text at a size, points. */
    double length(String writable, double size) {
        return writable.codePoints()
                        .mapToDouble(letter -> Math.max(0, width(letter)))
                        .sum()
                * size
                / THOUSAND;
    }

    /** Width of a letter in thousandths of the size; negative if the font lacks it. */
    private float width(int letter) {
        return widths.computeIfAbsent(letter, this::measured);
    }

    private float measured(int letter) {
        if (Character.isISOControl(letter) || Character.getType(letter) == Character.FORMAT) {
            return -1;
        }
        try {
            return font.getStringWidth(Character.toString(letter));
        } catch (IllegalArgumentException lacking) {
            return -1;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The text on lines no longer than there is room; a word that is too long alone is broken. At least one line. */
    List<String> wrapped(String text, double size, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : writable(text).strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (length(longer, size) <= room) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (length(line, size) > room) {
                int fitting = fitting(line, size, room);
                lines.add(line.substring(0, fitting));
                line = line.substring(fitting);
            }
        }
        lines.add(line);
        return lines;
    }

    /** How many characters of the word there is room for; at least one letter. */
    private int fitting(String word, double size, double room) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length() && length(word.substring(0, word.offsetByCodePoints(end, 1)), size) <= room) {
            end = word.offsetByCodePoints(end, 1);
        }
        return end;
    }
}
