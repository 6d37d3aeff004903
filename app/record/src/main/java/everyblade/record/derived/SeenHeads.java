package everyblade.record.derived;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which heads of journals this user's program has seen, and after how many entries. A hash alone does not tell whether a
 * journal that lacks it was cut short or written anew; with the number of its entry it does.
 *
 * @param files where that is remembered, whatever the version of the program
 */
public record SeenHeads(DerivedFiles files) {

    private static final String KIND = "heads";

    /** How many are remembered of one job; the oldest are forgotten. */
    private static final int MOST = 500;

    /** Remembers the head of a journal, which begins with this hash, after so many entries. */
    public void saw(String first, int entries, String head) {
        List<String> lines = new ArrayList<>(lines(first));
        String line = entries + " " + head;
        if (!lines.contains(line)) {
            lines.add(line);
            List<String> newest = lines.subList(Math.max(0, lines.size() - MOST), lines.size());
            files.keep(KIND, first, String.join("\n", newest).getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** Of which entry of a journal a hash was the head; empty if it was not seen. */
    public OptionalInt entry(String first, String head) {
        return lines(first).stream()
                .filter(line -> line.endsWith(" " + head))
                .mapToInt(line -> Integer.parseInt(line.substring(0, line.indexOf(' '))))
                .findFirst();
    }

    private List<String> lines(String first) {
        return files.find(KIND, first)
                .map(content ->
                        new String(content, StandardCharsets.US_ASCII).lines().toList())
                .orElse(List.of());
    }
}
