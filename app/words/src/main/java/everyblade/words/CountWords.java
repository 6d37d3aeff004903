package everyblade.words;

import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;

/** Airfoils of a row in the person's language. */
public final class CountWords {

    private CountWords() {}

    /** What one airfoil of the row is called. */
    public static String airfoil(Words words, Row row) {
        return words.airfoil(row);
    }

    /** What several are called. */
    public static String airfoils(Words words, Row row) {
        return words.airfoils(row);
    }

    /** A run of airfoils in the order of the row, such as {@code blades 4–9}. */
    public static String run(Words words, Row row, List<Integer> airfoils) {
        if (airfoils.size() == row.count()) {
            return words.say("run.all", row.count(), airfoils(words, row));
        }
        if (airfoils.size() == 1) {
            return airfoil(words, row) + " " + airfoils.get(0);
        }
        return airfoils(words, row) + " " + airfoils.get(0) + "–" + airfoils.get(airfoils.size() - 1);
    }

    /** Some airfoils, as runs. */
    public static String some(Words words, Row row, List<Integer> airfoils) {
        if (airfoils.size() == 1 || airfoils.size() == row.count()) {
            return run(words, row, airfoils);
        }
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < airfoils.size(); i++) {
            int from = airfoils.get(i);
            while (i + 1 < airfoils.size() && airfoils.get(i + 1) == airfoils.get(i) + 1) {
                i++;
            }
            runs.add(from == airfoils.get(i) ? "" + from : from + "–" + airfoils.get(i));
        }
        return airfoils(words, row) + " " + String.join(", ", runs);
    }
}
