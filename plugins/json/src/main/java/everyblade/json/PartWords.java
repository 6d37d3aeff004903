package everyblade.json;

import everyblade.spi.ChordBand;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads lists of words for parts of a row, as the entries {@code watch} and {@code ask} say them. */
final class PartWords {

    /** What goes by a second name, and the first one. */
    private static final Map<String, String> SAME = Map.of("concave", "pressure", "convex", "suction");

    private static final List<String> WORDS_OF_ANY = List.of(
            "all",
            "root",
            "tip",
            "outer",
            "inner",
            "s1",
            "s2",
            "s3",
            "s4",
            "s5",
            "s6",
            "s7",
            "s8",
            "s9",
            "s10",
            "pressure",
            "suction",
            "concave",
            "convex",
            "leading",
            "middle",
            "trailing",
            "forward",
            "aft");

    private PartWords() {}

    /**
     * The list that must stand under a key, each part by its first name; empty, and told, if it names nothing.
     *
     * @param row whose parts they are, if that is known
     * @param why it may not be empty
     * @param mend what to do about that
     */
    static List<String> read(Fields fields, String key, Optional<Located<Row>> row, String why, String mend) {
        fields.required(key);
        List<String> words =
                row.filter(Located::sound).map(there -> wordsOf(there.value())).orElse(WORDS_OF_ANY);
        List<String> named = fields.words(key, words, word -> word).orElse(List.of());
        List<String> plain =
                named.stream().map(word -> SAME.getOrDefault(word, word)).toList();
        if (plain.stream().distinct().count() < plain.size()) {
            refuse(fields, key, "both-names", "names one side by both its names", "once is enough");
        }
        if (plain.size() > 1 && plain.contains("all")) {
            refuse(fields, key, "all-and-more", "names more beside \"all\"", "all is everything");
        }
        fields.refuseEmpty(key, why, mend);
        return plain;
    }

    private static void refuse(Fields fields, String key, String code, String what, String why) {
        fields.log()
                .error(
                        code,
                        fields.place(key),
                        "\"" + key + "\" of " + fields.subject() + " " + what,
                        why,
                        key.equals("shows")
                                ? "name what it shows, or \"all\" alone"
                                : "name each part once, or \"all\" alone");
    }

    /** The words for parts of a row, as an entry would watch them. */
    private static List<String> wordsOf(Row row) {
        List<String> words = new ArrayList<>();
        if (row.spanBands() == 2) {
            words.addAll(row.kind() == RowKind.LINER ? List.of("outer", "inner") : List.of("root", "tip"));
        } else if (row.spanBands() > 2) {
            for (int band = 1; band <= row.spanBands(); band++) {
                words.add("s" + band);
            }
        }
        if (row.sides()) {
            words.addAll(List.of("pressure", "suction", "concave", "convex"));
        }
        row.chordBands().stream().map(ChordBand::word).forEach(words::add);
        words.add("all");
        return words;
    }
}
