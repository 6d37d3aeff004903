package everyblade.fleet;

import everyblade.fleet.StoreRefusal.Reason;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.postgresql.PGConnection;

/**
 * Writes what is in a store as CSV, in folders by site and year, as programs for analysis read them:
 * {@code airfoil/site=north/year=2026/part.csv}. UTF-8, a head line, times as ISO 8601.
 *
 * @param store to be read, as far as the user may see it
 */
public record StoreExport(Store store) {

    private static final String DERIVED =
            " FROM everyblade.%s t JOIN everyblade.derived d ON d.id = t.derived JOIN everyblade.chain c ON c.first = d.chain"
                    + " AND c.head = d.head WHERE c.site = %s AND c.year = %d ORDER BY c.first, ";

    /** The tables, and how each is read. */
    private static Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put(
                "job",
                "SELECT first AS job, model, serial, task, begun_by, begun, entries, head FROM everyblade.chain c WHERE"
                        + " kind = 'journal' AND c.site = %2$s AND c.year = %3$d ORDER BY first");
        tables.put(
                "line",
                "SELECT c.first AS chain, c.kind, c.job, t.n, convert_from(t.raw, 'UTF8') AS raw, t.hash, t.kept_by,"
                        + " t.kept_at FROM everyblade.line t JOIN everyblade.chain c ON c.first = t.chain AND c.year ="
                        + " t.year WHERE c.site = %2$s AND c.year = %3$d ORDER BY c.first, t.n");
        derived(tables, "airfoil", "row_id, n, seen, part, maybe, unseen, no_view, accepted", "row_id, n");
        derived(tables, "blade_row", "row_id, basis, airfoils, array_to_string(zones, ' ') AS zones", "row_id");
        derived(tables, "finding", "entry, t.kind, row_id, airfoil, zones, length, depth, width", "entry");
        derived(tables, "gap", "number, row_id, airfoils, zones, why, view", "number");
        derived(tables, "view_used", "row_id, view, legs", "row_id, view");
        derived(tables, "open_item", "number, t.kind, entry, what, place, since", "number");
        derived(tables, "due", "entry, number, unit, since", "entry");
        return tables;
    }

    private static void derived(Map<String, String> tables, String name, String columns, String order) {
        tables.put(
                name,
                "SELECT c.first AS job, c.model, c.serial, c.begun, " + columns
                        + DERIVED.replace("%s t ", "%1$s t ")
                                .replace("= %s", "= %2$s")
                                .replace("%d", "%3$d") + order);
    }

    /**
     * Writes everything.
     *
     * @param folder one that is not there yet, or empty
     * @return how many files were written
     */
    public int into(Path folder) throws StoreRefusal {
        try {
            if (Files.exists(folder)) {
                try (var there = Files.list(folder)) {
                    if (there.findAny().isPresent()) {
                        throw new StoreRefusal(Reason.NOT_EMPTY, folder);
                    }
                }
            }
            int files = 0;
            for (Part part : parts()) {
                for (Map.Entry<String, String> table : tables().entrySet()) {
                    Path place = folder.resolve(table.getKey())
                            .resolve("site=" + part.site())
                            .resolve("year=" + part.year());
                    Files.createDirectories(place);
                    write(
                            place.resolve("part.csv"),
                            String.format(table.getValue(), table.getKey(), part.quoted(), part.year()));
                    files++;
                }
            }
            return files;
        } catch (IOException failure) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, folder + ": " + StoreRefusal.said(failure));
        }
    }

    /** A site and a year; the database lets no site be called anything but small letters, digits and hyphens. */
    private record Part(String site, int year) {

        String quoted() {
            return "'" + site.replace("'", "''") + "'";
        }
    }

    private List<Part> parts() throws StoreRefusal {
        return store.ask(
                "SELECT DISTINCT site, year FROM everyblade.chain ORDER BY 1, 2",
                row -> new Part(row.getString(1), row.getInt(2)));
    }

    private void write(Path file, String select) throws IOException, StoreRefusal {
        try (OutputStream out = Files.newOutputStream(file)) {
            store.execute("SET TimeZone TO 'UTC'");
            store.connection()
                    .unwrap(PGConnection.class)
                    .getCopyAPI()
                    .copyOut("COPY (" + select + ") TO STDOUT (FORMAT csv, HEADER true, ENCODING 'UTF8')", out);
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
    }
}
