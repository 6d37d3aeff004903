package everyblade.core.sight;

import java.util.Optional;

/**
 * Where computed sight may be kept, or what was seen by it, so that it need not be computed again. It may forget anything at any time. Called
 * from several threads.
 */
public interface SightStore {

    /** Keeps nothing. */
    SightStore NONE = new SightStore() {
        @Override
        public Optional<byte[]> find(String key) {
            return Optional.empty();
        }

        @Override
        public void keep(String key, byte[] content) {}
    };

    /** What was kept under a key, exactly as it was given. */
    Optional<byte[]> find(String key);

    /** Keeps this under a key that says all that it depends on. */
    void keep(String key, byte[] content);
}
