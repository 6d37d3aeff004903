package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.fleet.FleetAnswer;
import everyblade.session.around.OneLine;
import java.math.BigDecimal;
import java.util.List;

/** A list from the store, for people or for programs; its columns are called the same in each. */
final class FleetTable {

    /** How it is told. */
    enum Form {
        TEXT,
        CSV,
        JSON
    }

    private FleetTable() {}

    /**
     * The whole text, ending with a newline unless there is nothing to say.
     *
     * @param name of the list in JSON
     * @param nothing what is said to people where the list is empty
     */
    static String of(String name, FleetAnswer answer, Form form, String nothing) {
        return switch (form) {
            case TEXT -> answer.rows().isEmpty() ? nothing + "\n" : text(answer);
            case CSV -> csv(answer);
            case JSON -> json(name, answer);
        };
    }

    private static String text(FleetAnswer answer) {
        Table table = new Table().row(answer.columns().toArray(String[]::new));
        for (List<Object> row : answer.rows()) {
            table.row(row.stream()
                    .map(value -> value == null ? "" : OneLine.of(text(value)))
                    .toArray(String[]::new));
        }
        return String.join("\n", table.lines()) + "\n";
    }

    private static String csv(FleetAnswer answer) {
        Csv csv = new Csv(answer.columns().toArray(String[]::new));
        for (List<Object> row : answer.rows()) {
            csv.add(row.stream().map(value -> value == null ? "" : value).toArray());
        }
        return csv.toString();
    }

    private static String json(String name, FleetAnswer answer) {
        ObjectNode json = JsonText.object();
        ArrayNode list = json.putArray(name);
        for (List<Object> row : answer.rows()) {
            ObjectNode one = list.addObject();
            for (int column = 0; column < row.size(); column++) {
                put(one, answer.columns().get(column), row.get(column));
            }
        }
        return JsonText.of(json) + "\n";
    }

    private static void put(ObjectNode one, String column, Object value) {
        if (value instanceof Number number) {
            one.put(column, new BigDecimal(number.toString()));
        } else {
            one.put(column, value == null ? null : value.toString());
        }
    }

    private static String text(Object value) {
        return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
    }
}
