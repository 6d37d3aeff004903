package everyblade.session.job;

import everyblade.core.sight.SightStore;
import everyblade.record.derived.DerivedFiles;
import java.util.Optional;

/** Computed sight, kept among what this user's program derived. */
record KeptSights(DerivedFiles files) implements SightStore {

    private static final String KIND = "sight";

    @Override
    public Optional<byte[]> find(String key) {
        return files.find(KIND, key);
    }

    @Override
    public void keep(String key, byte[] content) {
        files.keep(KIND, key, content);
    }
}
