package everyblade.core.sight;

/** Watches a long computation and may stop it. Called from several threads. */
public interface Progress {

    /** Nobody watches. */
    Progress NONE = new Progress() {};

    /** So many of all parts of the work are done. */
    default void done(int parts, int all) {}

    /** Whether to stop; the computation then ends with a {@link java.util.concurrent.CancellationException}. */
    default boolean cancelled() {
        return false;
    }
}
