package everyblade.json;

import everyblade.spi.ChordBand;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads views: by a declared window, or from stations. */
final class ViewReader {

    private static final Range HALF_WIDTH = Range.closed(0, 180);
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

    private ViewReader() {}

    static List<Located<View>> views(
            Fields model, References<Located<Row>> rows, References<ScopeTip> scopeTips, References<Port> ports) {
        Ids ids = new Ids("view", Set.of());
        List<Located<View>> views = new ArrayList<>();
        List<Fields> objects = model.objects(
                "views", "view", "id", "port", "row", "scopeTip", "reference", "aim", "window", "stations", "travels");
        for (Fields fields : objects) {
            long errors = fields.log().errorCount();
            String id = ids.required(fields);
            Optional<String> port = ports.ifStated(fields, "port");
            Optional<Located<Row>> row = rows.required(fields, "row");
            View view = new View(
                    id,
                    port,
                    row.map(there -> there.value().id()).orElse(""),
                    scopeTips.ifStated(fields, "scopeTip"),
                    fields.number("reference", 0, Range.ANGLE),
                    fields.number("aim", 0, Range.ANGLE_ERROR),
                    fields.objectIfStated("window", "window of " + fields.subject(), "halfWidth", "shows")
                            .map(window -> window(window, row)),
                    StationReader.stations(fields),
                    fields.flag("travels", false));
            views.add(new Located<>(view, fields.object(), fields.log().errorCount() == errors));
        }
        return views;
    }

    private static Window window(Fields window, Optional<Located<Row>> row) {
        double halfWidth = window.requiredNumber("halfWidth", HALF_WIDTH);
        window.required("shows");
        List<String> words =
                row.filter(Located::sound).map(there -> wordsOf(there.value())).orElse(WORDS_OF_ANY);
        List<String> shows = window.words("shows", words, word -> word).orElse(List.of());
        List<String> plain =
                shows.stream().map(word -> SAME.getOrDefault(word, word)).toList();
        if (plain.stream().distinct().count() < plain.size()) {
            refuse(window, "both-names", "names one side by both its names", "once is enough");
        }
        if (plain.size() > 1 && plain.contains("all")) {
            refuse(window, "all-and-more", "names more beside \"all\"", "all is everything");
        }
        window.refuseEmpty("shows", "a window that shows nothing is of no use", "name what it shows");
        return new Window(halfWidth, plain);
    }

    private static void refuse(Fields window, String code, String what, String why) {
        window.log()
                .error(
                        code,
                        window.place("shows"),
                        "\"shows\" of " + window.subject() + " " + what,
                        why,
                        "name what it shows, or \"all\" alone");
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
