package everyblade.words;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.Set;

/**
 * A file of texts in UTF-8, in the syntax of {@link Properties} with a line for each text and {@code =} right after its key.
 * A command says a dozen of two thousand texts, and to understand all of them takes as long as the rest of it; so only
 * where each one stands is found out at once.
 */
final class TextFile extends ResourceBundle {

    /** Lines by their keys; a character for each byte. */
    private final Map<String, String> lines = new HashMap<>();

    TextFile(byte[] file) {
        String all = new String(file, StandardCharsets.ISO_8859_1); // nothing to decode
        int end;
        for (int from = 0; from < all.length(); from = end + 1) {
            end = all.indexOf('\n', from);
            end = end < 0 ? all.length() : end;
            int sign = all.charAt(from) == '#' ? -1 : all.indexOf('=', from);
            if (sign > 0 && sign < end) {
                lines.put(all.substring(from, sign), all.substring(from, end));
            }
        }
    }

    @Override
    protected Object handleGetObject(String key) {
        String line = lines.get(key);
        if (line == null) {
            return null;
        }
        Properties one = new Properties();
        try {
            one.load(new StringReader(new String(line.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8)));
        } catch (IOException impossible) {
            throw new UncheckedIOException("nothing is read but memory", impossible);
        }
        return one.getProperty(key);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keySet());
    }

    @Override
    protected Set<String> handleKeySet() {
        return lines.keySet();
    }
}
