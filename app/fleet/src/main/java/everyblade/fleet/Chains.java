package everyblade.fleet;

import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.SealedLine;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The chains of a store. It takes a line only behind the one after which it was sealed, and the server sees to that by itself.
 *
 * @param store in which they are
 */
record Chains(Store store) {

    private static final String COLUMNS =
            "SELECT first, job, site, year, entries, head, model, serial, task, begun_by, begun FROM everyblade.chain ";

    /** Bytes that are sent as one: what is acknowledged with it need not be sent again. */
    private static final int PIECE = 8 << 20;

    private static final int PIECE_LINES = 2000;

    /** The chain that begins with a line of this hash; empty if there is none that the user may see. */
    Optional<KeptChain> find(String first) throws StoreRefusal {
        return store.ask(COLUMNS + "WHERE first = ?", Chains::read, first).stream()
                .findFirst();
    }

    /** The one job whose first hash begins so. */
    KeptChain job(String beginning) throws StoreRefusal {
        if (!beginning.matches("[0-9a-f]{4,64}")) {
            throw new StoreRefusal(Reason.NO_JOB, beginning);
        }
        List<KeptChain> found = store.ask(
                COLUMNS + "WHERE kind = 'journal' AND entries >= 0 AND starts_with(first, ?)", Chains::read, beginning);
        if (found.size() != 1) {
            throw new StoreRefusal(found.isEmpty() ? Reason.NO_JOB : Reason.SEVERAL_JOBS, beginning);
        }
        return found.get(0);
    }

    /** All jobs that the user may see, by site, engine and time. */
    List<KeptChain> jobs() throws StoreRefusal {
        return store.ask(
                COLUMNS + "WHERE kind = 'journal' AND entries >= 0 ORDER BY site, model, serial, begun, first",
                Chains::read);
    }

    /** The jobs that were taken off with their year, and when, by the hash of their first line. */
    Map<String, Instant> retired() throws StoreRefusal {
        Map<String, Instant> retired = new LinkedHashMap<>();
        store.ask(
                "SELECT first, retired FROM everyblade.chain WHERE kind = 'journal' AND retired IS NOT NULL ORDER BY first",
                row -> retired.put(row.getString(1), row.getTimestamp(2).toInstant()));
        return retired;
    }

    /** The review of a job, if anybody said anything. */
    Optional<KeptChain> review(String job) throws StoreRefusal {
        return store.ask(COLUMNS + "WHERE kind = 'review' AND job = ? AND entries >= 0", Chains::read, job).stream()
                .findFirst();
    }

    private static KeptChain read(ResultSet row) throws SQLException {
        Timestamp begun = row.getTimestamp("begun");
        return new KeptChain(
                row.getString("first"),
                row.getString("job"),
                row.getString("site"),
                row.getInt("year"),
                row.getInt("entries"),
                row.getString("head"),
                text(row, "model"),
                text(row, "serial"),
                text(row, "task"),
                text(row, "begun_by"),
                Optional.ofNullable(begun).map(Timestamp::toInstant));
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? "" : text;
    }

    /**
     * Opens a chain, to which lines can then be added.
     *
     * @param kind {@code journal} or {@code review}
     * @return whether it was new; not if somebody else was faster
     * @throws StoreRefusal if it is kept at a site that the user may not see
     */
    boolean open(String first, String kind, String job, String site, Instant begun) throws StoreRefusal {
        try {
            store.execute(
                    "INSERT INTO everyblade.chain (first, kind, job, site, year) VALUES (?, ?, ?, ?, ?)",
                    first,
                    kind,
                    job,
                    site,
                    begun.atZone(ZoneOffset.UTC).getYear());
            return true;
        } catch (SQLException failure) {
            if (!isTaken(failure)) {
                throw StoreRefusal.of(failure);
            }
            if (find(first).isEmpty()) {
                throw new StoreRefusal(Reason.ELSEWHERE, job);
            }
            return false;
        }
    }

    /** The hash of a line. */
    String hash(String chain, int n) throws StoreRefusal {
        return store
                .ask("SELECT hash FROM everyblade.line WHERE chain = ? AND n = ?", row -> row.getString(1), chain, n)
                .stream()
                .findFirst()
                .orElse("");
    }

    /** The bytes of the lines from this number on. */
    List<byte[]> lines(String chain, int from) throws StoreRefusal {
        return store.ask(
                "SELECT raw FROM everyblade.line WHERE chain = ? AND n >= ? ORDER BY n",
                row -> row.getBytes(1),
                chain,
                from);
    }

    /**
     * Adds lines, piece by piece.
     *
     * @return whether all were added; not if the chain no longer ended where they follow
     */
    boolean add(KeptChain onto, List<SealedLine> lines) throws StoreRefusal {
        int start = 0;
        while (start < lines.size()) {
            int end = start;
            long bytes = 0;
            while (end < lines.size() && end - start < PIECE_LINES && (end == start || bytes < PIECE)) {
                bytes += lines.get(end).bytes().length;
                end++;
            }
            if (!addPiece(onto, lines.subList(start, end))) {
                return false;
            }
            start = end;
        }
        return true;
    }

    private boolean addPiece(KeptChain onto, List<SealedLine> piece) throws StoreRefusal {
        try {
            store.execute(
                    "INSERT INTO everyblade.line (year, chain, n, raw, hash)"
                            + " SELECT ?, ?, n, raw, hash FROM unnest(?::int[], ?::bytea[], ?::text[]) AS sent (n, raw, hash)",
                    onto.year(),
                    onto.first(),
                    new Store.Filled("int4", piece.stream().map(SealedLine::n).toArray()),
                    new Store.Filled(
                            "bytea", piece.stream().map(SealedLine::bytes).toArray(byte[][]::new)),
                    new Store.Filled(
                            "text", piece.stream().map(SealedLine::hash).toArray()));
            return true;
        } catch (SQLException failure) {
            if (isTaken(failure) || "EB001".equals(failure.getSQLState())) {
                return false;
            }
            throw StoreRefusal.of(failure);
        }
    }

    /** Keeps that somebody goes on with a job in another way than the store has it, and where. */
    void parted(String chain, int at, SealedLine there, String by, String when, String place) throws StoreRefusal {
        try {
            store.execute(
                    "INSERT INTO everyblade.parting (chain, n, head, said_by, said_at, place) VALUES (?, ?, ?, ?, ?, ?)",
                    chain,
                    at,
                    there.hash(),
                    by,
                    when,
                    place);
        } catch (SQLException failure) {
            if (!isTaken(failure) && !"42501".equals(failure.getSQLState())) {
                throw StoreRefusal.of(failure);
            }
        }
    }

    /** Who said a line, when, who brought it to the store, to which site, and when. */
    String[] said(KeptChain chain, int n) throws StoreRefusal {
        return store.ask(
                        "SELECT said ->> 'by', said ->> 'at', kept_by, kept_at FROM (SELECT"
                                + " convert_from(raw, 'UTF8')::jsonb AS said, kept_by, kept_at FROM everyblade.line"
                                + " WHERE chain = ? AND n = ?) AS one",
                        row -> new String[] {
                            String.valueOf(row.getString(1)),
                            String.valueOf(row.getString(2)),
                            row.getString(3),
                            chain.site(),
                            row.getTimestamp(4)
                                    .toInstant()
                                    .truncatedTo(java.time.temporal.ChronoUnit.SECONDS)
                                    .toString()
                        },
                        chain.first(),
                        n)
                .get(0);
    }

    private static boolean isTaken(SQLException failure) {
        return "23505".equals(failure.getSQLState());
    }
}
