package everyblade.fleet;

import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What was computed of the jobs of a store. It counts while it is of the journal's head; anything else is as if it were not
 * there.
 *
 * @param store in which it is
 * @param program version of the program that computes
 */
public record DerivedTables(Store store, String program) {

    /** Jobs of which nothing is computed that counts, or by another version of the program. */
    public List<KeptChain> behind() throws StoreRefusal {
        List<String> computed = store.ask(
                "SELECT d.chain FROM everyblade.derived d JOIN everyblade.chain c ON c.first = d.chain AND c.head = d.head"
                        + " WHERE d.program = ?",
                row -> row.getString(1),
                program);
        return new Chains(store)
                .jobs().stream().filter(job -> !computed.contains(job.first())).toList();
    }

    /** How many jobs are in no answer, since nothing is computed of them as they stand. */
    public static int missing(Store store) throws StoreRefusal {
        return store.ask(
                        "SELECT count(*) FROM everyblade.chain c WHERE kind = 'journal' AND entries >= 0 AND NOT EXISTS"
                                + " (SELECT FROM everyblade.derived d WHERE d.chain = c.first AND d.head = c.head)",
                        row -> row.getInt(1))
                .get(0);
    }

    /** Whether what is computed of a job is of this head and by this version. */
    public boolean has(String job, String head) throws StoreRefusal {
        return !store.ask(
                        "SELECT 1 FROM everyblade.derived WHERE chain = ? AND head = ? AND program = ?",
                        row -> row.getInt(1),
                        job,
                        head,
                        program)
                .isEmpty();
    }

    /**
     * Keeps what was computed of a job, instead of what was before.
     *
     * @return whether it counts; not if the journal has gone on since
     */
    public boolean keep(String job, JobFacts facts) throws StoreRefusal {
        boolean[] counts = {true};
        store.together(() -> {
            try {
                store.execute(
                        "INSERT INTO everyblade.derived (chain, head, program, cycles, hours) VALUES (?, ?, ?, ?, ?)",
                        job,
                        facts.head(),
                        program,
                        facts.usage().cycles().orElse(null),
                        facts.usage().hours().orElse(null));
            } catch (SQLException failure) {
                if (!"EB004".equals(failure.getSQLState())) {
                    throw failure;
                }
                counts[0] = false;
                return;
            }
            parts(job, facts);
        });
        return counts[0];
    }

    private void parts(String job, JobFacts facts) throws SQLException {
        insert(
                job,
                "blade_row",
                facts.rows(),
                List.of(
                        Column.of("row_id", "text", JobFacts.BladeRow::id),
                        Column.of("basis", "text", JobFacts.BladeRow::basis),
                        Column.of("airfoils", "int4", JobFacts.BladeRow::airfoils),
                        Column.of("zones", "text", row -> String.join(",", row.zones()))));
        insert(
                job,
                "airfoil",
                facts.airfoils(),
                List.of(
                        Column.of("row_id", "text", JobFacts.Airfoil::row),
                        Column.of("n", "int4", JobFacts.Airfoil::n),
                        Column.of("seen", "int8", JobFacts.Airfoil::seen),
                        Column.of("part", "int8", JobFacts.Airfoil::part),
                        Column.of("maybe", "int8", JobFacts.Airfoil::maybe),
                        Column.of("unseen", "int8", JobFacts.Airfoil::unseen),
                        Column.of("no_view", "int8", JobFacts.Airfoil::noView),
                        Column.of("accepted", "int8", JobFacts.Airfoil::accepted)));
        insert(
                job,
                "finding",
                facts.findings(),
                List.of(
                        Column.of("entry", "int4", JobFacts.Found::entry),
                        Column.of("kind", "text", JobFacts.Found::kind),
                        Column.of("row_id", "text", JobFacts.Found::row),
                        Column.of("airfoil", "int4", JobFacts.Found::airfoil),
                        Column.of("zones", "int8", JobFacts.Found::zones),
                        Column.of("length", "numeric", found -> found.length().orElse(null)),
                        Column.of("depth", "numeric", found -> found.depth().orElse(null)),
                        Column.of("width", "numeric", found -> found.width().orElse(null))));
        insert(
                job,
                "gap",
                numbered(facts.gaps()),
                List.of(
                        Column.of("number", "int4", Numbered::number),
                        Column.of("row_id", "text", gap -> gap.of().row()),
                        Column.of("airfoils", "int4", gap -> gap.of().airfoils()),
                        Column.of("zones", "int8", gap -> gap.of().zones()),
                        Column.of("why", "text", gap -> gap.of().why()),
                        Column.of("view", "text", gap -> gap.of().view().orElse(null))));
        insert(
                job,
                "view_used",
                facts.views(),
                List.of(
                        Column.of("row_id", "text", JobFacts.Used::row),
                        Column.of("view", "text", JobFacts.Used::view),
                        Column.of("legs", "int4", JobFacts.Used::legs)));
        insert(
                job,
                "open_item",
                numbered(facts.open()),
                List.of(
                        Column.of("number", "int4", Numbered::number),
                        Column.of("kind", "text", item -> item.of().kind()),
                        Column.of("entry", "int4", item -> item.of().entry().orElse(null)),
                        Column.of("what", "text", item -> item.of().what()),
                        Column.of("place", "text", item -> item.of().place()),
                        Column.of("since", "timestamptz", item -> time(item.of().since()))));
        insert(
                job,
                "due",
                facts.due(),
                List.of(
                        Column.of("entry", "int4", JobFacts.Due::entry),
                        Column.of("number", "numeric", JobFacts.Due::number),
                        Column.of("unit", "text", JobFacts.Due::unit),
                        Column.of("since", "timestamptz", due -> time(Optional.of(due.since())))));
    }

    private static Timestamp time(Optional<Instant> at) {
        return at.map(Timestamp::from).orElse(null);
    }

    /** One of a list, with its place in it from 1. */
    private record Numbered<T>(int number, T of) {}

    private static <T> List<Numbered<T>> numbered(List<T> all) {
        return IntStream.range(0, all.size())
                .mapToObj(i -> new Numbered<>(i + 1, all.get(i)))
                .toList();
    }

    /** A column of a table, and what goes into it. */
    private record Column<T>(String name, String type, Function<T, Object> value) {

        static <T> Column<T> of(String name, String type, Function<T, Object> value) {
            return new Column<>(name, type, value);
        }
    }

    /** All rows in one statement: each column is an array. */
    private <T> void insert(String job, String table, List<T> rows, List<Column<T>> columns) throws SQLException {
        if (rows.isEmpty()) {
            return;
        }
        List<String> names = columns.stream().map(Column::name).toList();
        String arrays = String.join(
                ", ",
                columns.stream().map(column -> "?::" + column.type() + "[]").toList());
        String selected = String.join(
                ", ",
                columns.stream()
                        .map(column ->
                                table.equals("blade_row") && column.name().equals("zones")
                                        ? "string_to_array(zones, ',')"
                                        : column.name())
                        .toList());
        Object[] values = new Object[columns.size() + 1];
        for (int i = 0; i < columns.size(); i++) {
            Function<T, Object> value = columns.get(i).value();
            values[i] = new Store.Filled(
                    columns.get(i).type(), rows.stream().map(value).toArray());
        }
        values[columns.size()] = job;
        store.execute(
                "INSERT INTO everyblade." + table + " (derived, " + String.join(", ", names) + ") SELECT d.id, "
                        + selected
                        + " FROM unnest(" + arrays + ") AS sent (" + String.join(", ", names)
                        + "), everyblade.derived d WHERE d.chain = ?",
                values);
    }
}
