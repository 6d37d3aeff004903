package everyblade.core.coverage;

import everyblade.fact.Fact;

/** What the states of a row's cells rest on. */
public enum Basis implements Fact {
    /** Sight computed from the stations of its views. */
    COMPUTED,
    /** Windows that its views declare. */
    DECLARED;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
