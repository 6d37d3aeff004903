package everyblade.fleet;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * What the store answers to a question.
 *
 * @param columns their names
 * @param rows of each the values of these columns: a {@link String}, a {@link Number}, or null where nothing is known
 */
public record FleetAnswer(List<String> columns, List<List<Object>> rows) {

    /** Asks. */
    public static FleetAnswer of(Store store, FleetQuestion question) throws StoreRefusal {
        return of(store, question.sql());
    }

    /** All jobs, by site, engine and time. */
    public static FleetAnswer jobs(Store store) throws StoreRefusal {
        return of(
                store,
                "SELECT left(first, 12) AS job, site, model, serial, begun, begun_by AS by, task, entries, head"
                        + " FROM everyblade.chain WHERE kind = 'journal' AND entries >= 0"
                        + " ORDER BY site, model, serial, begun, first");
    }

    static FleetAnswer of(Store store, String sql, Object... values) throws StoreRefusal {
        List<String> columns = new ArrayList<>();
        List<List<Object>> rows = store.ask(
                sql,
                row -> {
                    if (columns.isEmpty()) {
                        columns.addAll(columns(row));
                    }
                    return values(row);
                },
                values);
        return new FleetAnswer(columns, rows);
    }

    private static List<String> columns(ResultSet row) throws SQLException {
        ResultSetMetaData facts = row.getMetaData();
        List<String> columns = new ArrayList<>();
        for (int i = 1; i <= facts.getColumnCount(); i++) {
            columns.add(facts.getColumnLabel(i));
        }
        return columns;
    }

    private static List<Object> values(ResultSet row) throws SQLException {
        List<Object> values = new ArrayList<>();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            Object value = row.getObject(i);
            if (value instanceof Timestamp time) {
                values.add(time.toInstant().truncatedTo(ChronoUnit.SECONDS).toString());
            } else {
                values.add(value == null || value instanceof Number ? value : value.toString());
            }
        }
        return values;
    }
}
