package everyblade.cli;

import everyblade.session.around.Failure;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as comma-separated values by RFC 4180: lines end with CR LF, the first one names the columns. Programs for tables
 * take a text that begins like a formula for one, and run it; such a text gets an apostrophe before it.
 */
final class Csv {

    private static final String BEGINS_A_FORMULA = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";

    private final StringBuilder text = new StringBuilder();
    private final int columns;

    Csv(String... columns) {
        this.columns = columns.length;
        add((Object[]) columns);
    }

    /** Refuses two forms at once. */
    static void requireOnly(boolean both) {
        if (both) {
            throw Failure.of("stopped.csv.thereTooAndOnlyOne");
        }
    }

    /** A line; texts are what people said, anything else stands as it is. */
    void add(Object... values) {
        if (values.length != columns) {
            throw new IllegalArgumentException(values.length + " values for " + columns + " columns");
        }
        text.append(List.of(values).stream().map(Csv::field).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    private static String field(Object value) {
        String field = value.toString();
        boolean formula = value instanceof String && !field.isEmpty() && BEGINS_A_FORMULA.indexOf(field.charAt(0)) >= 0;
        String safe = formula ? "'" + field : field;
        return safe.matches("[^\",\r\n]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
