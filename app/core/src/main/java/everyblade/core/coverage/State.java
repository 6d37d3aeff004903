package everyblade.core.coverage;

import everyblade.fact.Fact;

/** What is known of a cell. */
public enum State implements Fact {
    /** Surely in sight and watched, nearly all of it. */
    SEEN,
    /** As far as it can be seen. */
    PART,
    /** Only if the count and the scope tip were where they were thought to be. */
    MAYBE,
    /** Not seen. */
    UNSEEN;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
