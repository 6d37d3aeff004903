package everyblade.picture.letter;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeCollection;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.autodetect.FontFileFinder;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;

/**
 * The fonts of this machine, asked for the letters that the pictures' own font lacks. Looks for them when it is first
 * asked, which takes a moment, and remembers which font has a letter. Plain upright fonts go first, so that a machine
 * answers alike each time. Safe for several threads.
 */
public final class FontsHere {

    /** Larger ones hold colours or pictures. */
    private static final long LARGEST = 64L << 20;

    private static final Set<String> NOT_PLAIN =
            Set.of("bold", "italic", "oblique", "mono", "serif", "light", "thin", "black", "condensed", "narrow");

    private final Map<Integer, Optional<Path>> known = new HashMap<>();
    private final Map<Path, Optional<CmapLookup>> read = new HashMap<>();
    private List<Path> files = List.of();
    private boolean looked;

    /** The file of a TrueType font, alone or the first of a collection, that has this letter and may be embedded. */
    public synchronized Optional<Path> with(int letter) {
        // What stands for a letter of private use, each font decides for itself.
        return Character.getType(letter) == Character.PRIVATE_USE
                ? Optional.empty()
                : known.computeIfAbsent(letter, this::found);
    }

    private Optional<Path> found(int letter) {
        if (!looked) {
            files = files();
            looked = true;
        }
        return files.stream()
                .filter(file -> read.computeIfAbsent(file, FontsHere::letters)
                        .filter(letters -> letters.getGlyphId(letter) > 0)
                        .isPresent())
                .findFirst();
    }

    private static List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (URI found : new FontFileFinder().find()) {
            Path file = Path.of(found);
            String name = name(file);
            try {
                if ((name.endsWith(".ttf") || name.endsWith(".ttc"))
                        && Files.isRegularFile(file)
                        && Files.size(file) <= LARGEST) {
                    files.add(file);
                }
            } catch (IOException unreadable) {
                // then it is none to us
            }
        }
        files.sort(Comparator.comparingLong((Path file) ->
                        NOT_PLAIN.stream().filter(name(file)::contains).count())
                .thenComparing(file -> file.toString()));
        return files;
    }

    private static String name(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT);
    }

    private static Optional<CmapLookup> letters(Path file) {
        try (TrueTypeFont font = open(file)) {
            boolean embedded = font.getOS2Windows() == null
                    || (font.getOS2Windows().getFsType() & 0xF) != 2
                            && (font.getOS2Windows().getFsType() & 0x300) == 0;
            return embedded && font.getGlyph() != null ? Optional.of(font.getUnicodeCmapLookup()) : Optional.empty();
        } catch (IOException | RuntimeException unusable) { // fonts are damaged in many ways
            return Optional.empty();
        }
    }

    /** To be closed by the caller. */
    public static TrueTypeFont open(Path file) throws IOException {
        File opened = file.toFile();
        if (!name(file).endsWith(".ttc")) {
            return new TTFParser().parse(new RandomAccessReadBufferedFile(opened));
        }
        TrueTypeFont[] first = new TrueTypeFont[1];
        TrueTypeCollection collection = new TrueTypeCollection(opened);
        collection.processAllFonts(font -> first[0] = first[0] == null ? font : first[0]);
        return first[0];
    }
}
