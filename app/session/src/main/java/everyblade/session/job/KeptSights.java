package everyblade.session.job;

import everyblade.core.sight.SightStore;
import everyblade.record.derived.DerivedFiles;
import java.util.Optional;

/**
 * Computed sight or what was seen by it, kept among what this user's program derived.
 *
 * @param kind of what is kept, a plain word
 */
record KeptSights(DerivedFiles files, String kind) implements SightStore {

    /** What stations show. */
    static KeptSights ofStations(DerivedFiles files) {
        return new KeptSights(files, "sight");
    }

    /** What was seen of rows. */
    static KeptSights ofCells(DerivedFiles files) {
        return new KeptSights(files, "cells");
    }

    @Override
    public Optional<byte[]> find(String key) {
        return files.find(kind, key);
    }

    @Override
    public void keep(String key, byte[] content) {
        files.keep(kind, key, content);
    }
}
