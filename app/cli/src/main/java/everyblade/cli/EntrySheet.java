package everyblade.cli;

import everyblade.words.Words;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every entry on one sheet, as {@code everyblade log --help} shows it. How an entry is typed stands in the sheet, since it
 * is the same in every language; what it means is named there, and said by the bundles.
 */
final class EntrySheet {

    private static final Pattern MEANING = Pattern.compile("(.*)\\{(\\w+)}");

    /** Where meanings begin, and where lines end, characters. */
    private static final int COLUMN = 34;

    private static final int WIDTH = 120;

    private EntrySheet() {}

    static String[] lines(Words words) {
        try (BufferedReader sheet = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(EntrySheet.class.getResourceAsStream("entries.txt")), StandardCharsets.UTF_8))) {
            return sheet.lines().flatMap(line -> told(line, words).stream()).toArray(String[]::new);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> told(String line, Words words) {
        Matcher meaning = MEANING.matcher(line);
        if (!meaning.matches()) {
            return List.of(line);
        }
        String typed = meaning.group(1);
        List<String> lines = new ArrayList<>();
        for (String part : words.say("sheet." + meaning.group(2)).split("\n")) {
            StringBuilder wrapped = new StringBuilder(lines.isEmpty() ? typed : " ".repeat(COLUMN));
            boolean first = true;
            for (String word : part.split(" ")) {
                if (!first && wrapped.length() + 1 + word.length() > WIDTH) {
                    lines.add(wrapped.toString());
                    wrapped = new StringBuilder(typed.isEmpty() ? "" : " ".repeat(COLUMN));
                    first = true;
                }
                wrapped.append(first ? "" : " ").append(word);
                first = false;
            }
            lines.add(wrapped.toString());
        }
        return lines;
    }
}
