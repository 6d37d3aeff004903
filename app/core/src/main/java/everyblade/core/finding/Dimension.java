package everyblade.core.finding;

import everyblade.fact.Fact;
import java.util.Locale;

/** What of a finding is measured. */
public enum Dimension implements Fact {
    LENGTH,
    DEPTH,
    WIDTH;

    /** The word in entries and files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
