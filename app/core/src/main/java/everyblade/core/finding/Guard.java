package everyblade.core.finding;

import java.util.Locale;

/** How near to a limit a measured size must not come to be judged (ISO 14253-1). */
public enum Guard {
    /**
     * Within if the chance that the true size conforms is at least 95 %, beyond if it is at most 5 %; against one limit
     * that keeps 1.645 standard uncertainties from it.
     */
    CONFORMANCE,
    /** The expanded uncertainty, which is two standard uncertainties, from either limit. */
    EXPANDED;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
