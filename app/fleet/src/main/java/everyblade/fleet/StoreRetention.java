package everyblade.fleet;

import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.Disk;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Torn;
import everyblade.record.JobFolder.Verification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;

/**
 * Takes a year of jobs off a store. All of them are brought into folders and verified there first, and nothing is taken off if
 * anybody went on with one of them meanwhile. Their lines stand in a table apart until whoever runs the server drops it.
 *
 * @param store as a superuser of the server reaches it
 * @param disk on which the folders come
 */
public record StoreRetention(Store store, Disk disk) {

    private static final int SHORT = 12;

    /**
     * What came of it.
     *
     * @param jobs how many were brought and taken off
     * @param table of the server in which their lines stand now
     */
    public record Done(int jobs, String table) {}

    /**
     * Brings the jobs that began in this year, UTC, into folders below this one, and takes them off.
     *
     * @param folder one that is not there yet, or empty
     * @throws StoreRefusal if there are none, one is not sound or was gone on with, or the user may not; then all is as it was
     */
    public Done retire(int year, Path folder) throws StoreRefusal {
        if (!store.ask("SELECT rolsuper FROM pg_roles WHERE rolname = current_user", row -> row.getBoolean(1))
                .get(0)) {
            throw new StoreRefusal(
                    Reason.NOT_ALLOWED,
                    new StoreFlaw.NoSuperuser(store.address().user()));
        }
        requireEmpty(folder);
        List<KeptChain> jobs = new Chains(store)
                .jobs().stream().filter(job -> job.year() == year).toList();
        if (jobs.isEmpty()) {
            throw new StoreRefusal(Reason.NO_YEAR, year);
        }
        String before = state(year);
        for (KeptChain job : jobs) {
            bring(job, folder);
        }
        return new Done(jobs.size(), takeOff(year, before));
    }

    private static void requireEmpty(Path folder) throws StoreRefusal {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isPresent()) {
                throw new StoreRefusal(Reason.NOT_EMPTY, folder);
            }
        } catch (IOException unreadable) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, folder + ": " + StoreRefusal.said(unreadable));
        }
    }

    private void bring(KeptChain job, Path folder) throws StoreRefusal {
        Path place = folder.resolve((job.model() + "-" + job.serial()).replaceAll("[^\\p{L}\\p{N}-]+", "-") + "-"
                + job.first().substring(0, SHORT));
        Verification found = new StoreArrival(store).into(new JobFolder(disk, place), job);
        if (found instanceof Sound) {
            return;
        }
        throw new StoreRefusal(
                Reason.UNSOUND, found instanceof Broken broken ? broken.problem() : ((Torn) found).problem());
    }

    /** All that is kept of a year's jobs, as one hash. */
    private static final String STATE =
            "SELECT encode(sha256(convert_to(coalesce(string_agg(what, ' ' ORDER BY what), ''),"
                    + " 'UTF8')), 'hex') FROM (SELECT first || head AS what FROM everyblade.chain WHERE year = %1$d UNION ALL"
                    + " SELECT f.job || f.hash || f.name FROM everyblade.file f JOIN everyblade.chain c ON c.first = f.job"
                    + " WHERE c.year = %1$d) AS kept";

    private String state(int year) throws StoreRefusal {
        return store.ask(STATE.formatted(year), row -> row.getString(1)).get(0);
    }

    private String takeOff(int year, String before) throws StoreRefusal {
        String name = "retired_" + year + "_"
                + (store.ask(
                                        "SELECT count(*) FROM pg_tables WHERE schemaname = 'everyblade' AND tablename LIKE ?",
                                        row -> row.getInt(1),
                                        "retired\\_" + year + "\\_%")
                                .get(0)
                        + 1);
        store.together(() -> {
            // From here on nobody goes on with any job until this is done.
            store.execute("LOCK TABLE everyblade.chain, everyblade.file IN EXCLUSIVE MODE");
            requireUnchanged(year, before);
            store.execute(
                    "DELETE FROM everyblade.derived WHERE chain IN (SELECT first FROM everyblade.chain WHERE year = ?)",
                    year);
            store.execute(
                    "WITH gone AS (DELETE FROM everyblade.file WHERE job IN (SELECT first FROM everyblade.chain WHERE year = ?)"
                            + " RETURNING job, hash) DELETE FROM everyblade.content WHERE hash IN (SELECT hash FROM gone) AND hash"
                            + " NOT IN (SELECT f.hash FROM everyblade.file f JOIN everyblade.chain c ON c.first = f.job WHERE"
                            + " c.year <> ?)",
                    year,
                    year);
            store.execute("ALTER TABLE everyblade.line DETACH PARTITION everyblade.line_" + year);
            store.execute("ALTER TABLE everyblade.line_" + year + " RENAME TO " + name);
            store.execute(
                    "UPDATE everyblade.chain SET retired = now(), entries = -1 WHERE year = ? AND retired IS NULL",
                    year);
        });
        return "everyblade." + name;
    }

    private void requireUnchanged(int year, String before) throws SQLException {
        try {
            if (!state(year).equals(before)) {
                throw new SQLException("a job of " + year + " was gone on with meanwhile", StoreRefusal.WENT_ON);
            }
        } catch (StoreRefusal refusal) {
            throw new SQLException(refusal.getMessage(), refusal);
        }
    }
}
