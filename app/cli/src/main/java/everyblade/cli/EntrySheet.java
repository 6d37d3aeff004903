package everyblade.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Every entry on one sheet, as {@code everyblade log --help} shows it. */
final class EntrySheet {

    private EntrySheet() {}

    static String[] lines() {
        try (BufferedReader sheet = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(EntrySheet.class.getResourceAsStream("entries.txt")), StandardCharsets.UTF_8))) {
            return sheet.lines().toArray(String[]::new);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
