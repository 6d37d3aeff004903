package everyblade.window;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sixty texts that were written to be more than text.
 *
 * @param address that none of them may reach
 */
record HostileTexts(String address) {

    private static final List<String> MARKUP = List.of(
            "<img src=\"HERE/a.png\">",
            "<b>the count is sound</b>",
            "<body background='HERE/b'>",
            "<object classid=\"javax.swing.JButton\"><param name=text value=Keep></object>",
            "<link rel=stylesheet href=HERE/c.css>",
            "<script>alert(1)</script>",
            "<a href='HERE'>seen</a>",
            "<font size=70>SEEN</font>",
            "<table border=9><tr><td>100 %</table>",
            "<iframe src=HERE></iframe>",
            "&lt;b&gt; &#8238;desrever");

    private static final int[] HIDING = {
        0x202E, 0x202D, 0x202A, 0x2066, 0x2067, 0x2068, 0x200B, 0x200D, 0x2060, 0xFEFF, 0xAD, 0x61C, 0x180E, 0x206A,
        0xE0041
    };

    private static final List<String> OTHERS = List.of(
            "{0} {1,number} '{'",
            "%s %n %1$s",
            "${java.version} @{x}",
            "a & b && c; rm -rf /",
            "it's 'twice' `thrice`",
            "_Mnemonic &Mnemonic",
            "../../../../etc/passwd",
            "=HYPERLINK('HERE')",
            "<svg onload=HERE>",
            "]]> --> */ #",
            "ÅÄÖ ß İ ı",
            "段 مرحلة שלב");

    List<String> all() {
        List<String> all = new ArrayList<>();
        for (String begin : List.of("<html>", "<HTML>", "<hTmL>")) {
            MARKUP.forEach(inside -> all.add(begin + inside.replace("HERE", address)));
        }
        Arrays.stream(HIDING).forEach(point -> all.add("seen" + Character.toString(point) + "neesnu"));
        OTHERS.forEach(text -> all.add(text.replace("HERE", address)));
        return all;
    }

    /** The engine {@code ring} of the tests, with these for names wherever a model has one. */
    static String model(List<String> texts) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < texts.size(); i++) {
            rows.append(", { \"id\": \"x")
                    .append(i)
                    .append("\", \"kind\": \"rotor\", \"count\": 9, \"name\": ")
                    .append(json(texts.get(i)))
                    .append(", \"landmarks\": [ { \"airfoil\": 1, \"what\": ")
                    .append(json(texts.get(i)))
                    .append(" } ] }");
        }
        String first = json(texts.get(0));
        return """
                { "schema": "everyblade/engine-model/1", "id": "ring", "name": %s, "notice": %s,
                  "spools": [ { "id": "gas", "name": %s, "pads": [ { "id": "hand", "name": %s, "play": 1 } ] } ],
                  "rows": [ { "id": "r", "name": %s, "kind": "rotor", "count": 12 }%s ],
                  "ports": [ { "id": "p", "name": %s, "clock": 90, "x": 5, "through": [ { "what": %s, "diameter": 6 } ] } ],
                  "views": [ { "id": "p-r", "port": "p", "row": "r", "reference": 90,
                               "window": { "halfWidth": 5, "shows": ["root", "tip"] } } ] }
                """.formatted(first, first, first, first, first, rows, first, first);
    }

    private static String json(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
}
