package everyblade.fleet;

import everyblade.record.FrozenFile;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The files that belong to jobs of a store: each content is kept once, by its hash, whatever it is called.
 *
 * @param store in which they are
 */
record Contents(Store store) {

    /** The files of a job: their hashes by their names. */
    Map<String, String> of(String job) throws StoreRefusal {
        Map<String, String> files = new TreeMap<>();
        store.ask(
                "SELECT name, hash FROM everyblade.file WHERE job = ?",
                row -> files.put(row.getString(1), row.getString(2)),
                job);
        return files;
    }

    /** The bytes of a content that the user may see. */
    byte[] bytes(String hash) throws StoreRefusal {
        return store.ask("SELECT bytes FROM everyblade.content WHERE hash = ?", row -> row.getBytes(1), hash).stream()
                .findFirst()
                .orElseThrow(() -> new StoreRefusal(StoreRefusal.Reason.UNSOUND, new StoreFlaw.NoContent(hash)));
    }

    /** Keeps a file of a job; one that is there stays, whoever brought it. */
    void keep(String job, String name, byte[] bytes) throws StoreRefusal {
        String hash = FrozenFile.of(bytes).hash();
        List<String> there = store.ask(
                "SELECT has FROM everyblade.has(?)",
                row -> row.getString(1),
                new Store.Filled("text", new Object[] {hash}));
        try {
            if (there.isEmpty()) {
                store.execute(
                        "INSERT INTO everyblade.content (hash, bytes) VALUES (?, ?) ON CONFLICT DO NOTHING",
                        hash,
                        bytes);
            }
            store.execute(
                    "INSERT INTO everyblade.file (job, name, hash) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                    job,
                    name,
                    hash);
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
        if (!hash.equals(of(job).get(name))) {
            throw new StoreRefusal(StoreRefusal.Reason.OTHER_FILE, name);
        }
    }
}
