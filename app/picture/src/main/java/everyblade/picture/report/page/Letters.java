package everyblade.picture.report.page;

import everyblade.picture.letter.ArabicForms;
import everyblade.picture.letter.FontsHere;
import everyblade.picture.letter.LineOrder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of a document, and how long words are in them: Liberation Sans, regular as pdfbox carries it and bold, and for
 * letters that they lack, fonts of this machine. Only the letters in use are embedded. Serves one document and one thread.
 */
final class Letters {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String BOLD = "LiberationSans-Bold.ttf";
    private static final float THOUSAND = 1000;

    private final PDDocument document;
    private final PDType0Font font;
    private final PDType0Font bold;
    private final FontsHere here = new FontsHere();
    private final ArabicForms arabic = new ArabicForms();
    private final Map<Path, Optional<PDType0Font>> others = new HashMap<>();
    private final Map<Integer, Shown> shown = new HashMap<>();
    private final Map<Integer, Shown> shownBold = new HashMap<>();

    /** How a letter is shown: in a font, so many thousandths of the size wide; negative where no font has it. */
    private record Shown(PDType0Font font, float width) {}

    private Letters(PDDocument document, PDType0Font font, PDType0Font bold) {
        this.document = document;
        this.font = font;
        this.bold = bold;
    }

    static Letters in(PDDocument document) throws IOException {
        return new Letters(
                document, loaded(document, resource()), loaded(document, Letters.class.getResourceAsStream(BOLD)));
    }

    private static PDType0Font loaded(PDDocument document, InputStream stream) throws IOException {
        TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(stream));
        // Joined letters would be found by no search for the words.
        file.setEnableGsub(false);
        return PDType0Font.load(document, file, true);
    }

    /** The font's file. */
    static InputStream resource() {
        InputStream stream = PDFont.class.getResourceAsStream(FILE);
        if (stream == null) {
            throw new IllegalStateException("pdfbox no longer carries " + FILE);
        }
        return stream;
    }

    /** The font of what needs no other. */
    PDType0Font font() {
        return font;
    }

    /**
     * Some signs of a line, all in one font.
     *
     * @param text in the order in which it stands, from left to right
     */
    record Run(PDType0Font font, String text) {}

    /** A line of writable text in the order in which it stands. */
    List<Run> runs(String writable, boolean isBold) {
        List<Run> runs = new ArrayList<>();
        LineOrder.standing(writable).codePoints().forEach(letter -> {
            PDType0Font its = shown(letter, isBold).font();
            String sign = Character.toString(letter);
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).font() == its) {
                runs.set(last, new Run(its, runs.get(last).text() + sign));
            } else {
                runs.add(new Run(its, sign));
            }
        });
        return runs;
    }

    /** The text with every space a plain one, Arabic letters joined, and what no font has written as its code. */
    String writable(String text) {
        StringBuilder result = new StringBuilder();
        (ArabicForms.concerns(text) ? arabic.joined(text) : text).codePoints().forEach(letter -> {
            if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
                result.append(' ');
            } else if (width(letter, false) < 0) {
                result.append(String.format(java.util.Locale.ROOT, "[U+%04X]", letter));
            } else {
                result.appendCodePoint(letter);
            }
        });
        return result.toString();
    }

    /** Length of writable text at a size, points. */
    double length(String writable, double size, boolean isBold) {
        return writable.codePoints()
                        .mapToDouble(letter -> Math.max(0, width(letter, isBold)))
                        .sum()
                * size
                / THOUSAND;
    }

    /** Width of a letter in thousandths of the size; negative if no font has it. */
    private float width(int letter, boolean isBold) {
        return shown(letter, isBold).width();
    }

    private Shown shown(int letter, boolean isBold) {
        Map<Integer, Shown> face = isBold ? shownBold : shown;
        Shown known = face.get(letter);
        if (known == null) {
            known = looked(letter, isBold ? bold : font);
            face.put(letter, known);
        }
        return known;
    }

    private Shown looked(int letter, PDType0Font face) {
        if (Character.isISOControl(letter) || Character.getType(letter) == Character.FORMAT) {
            return new Shown(face, -1);
        }
        float own = measured(face, letter);
        Optional<PDType0Font> other = own >= 0
                ? Optional.empty()
                : here.with(letter).flatMap(file -> others.computeIfAbsent(file, this::loaded));
        return other.map(its -> new Shown(its, measured(its, letter)))
                .filter(found -> found.width() >= 0)
                .orElse(new Shown(face, own));
    }

    private Optional<PDType0Font> loaded(Path file) {
        try {
            TrueTypeFont other = FontsHere.open(file);
            other.setEnableGsub(false);
            return Optional.of(PDType0Font.load(document, other, true));
        } catch (IOException | RuntimeException unusable) { // as if it were not there
            return Optional.empty();
        }
    }

    private static float measured(PDType0Font font, int letter) {
        try {
            return font.getStringWidth(Character.toString(letter));
        } catch (IllegalArgumentException lacking) {
            return -1;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The text on lines no longer than there is room; a word that is too long alone is broken. At least one line. */
    List<String> wrapped(String text, double size, boolean isBold, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : writable(text).strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (length(longer, size, isBold) <= room) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (length(line, size, isBold) > room) {
                int fitting = fitting(line, size, isBold, room);
                lines.add(line.substring(0, fitting));
                line = line.substring(fitting);
            }
        }
        lines.add(line);
        return lines;
    }

    /** How many characters of the word there is room for; at least one letter. */
    private int fitting(String word, double size, boolean isBold, double room) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()
                && length(word.substring(0, word.offsetByCodePoints(end, 1)), size, isBold) <= room) {
            end = word.offsetByCodePoints(end, 1);
        }
        return end;
    }
}
