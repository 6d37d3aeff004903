package everyblade.core.sight;

import everyblade.fact.Fact;

/** What keeps a facet out of sight, in the order in which it is asked. */
public enum Hindrance implements Fact {
    OUTSIDE_CONE("outside the cone of view"),
    /** Nearer than near or farther than far. */
    OUT_OF_RANGE("too near or too far"),
    /** Turned away, or the line of sight too close to grazing. */
    GRAZING("turned away or grazing"),
    /** Pixels too large on the surface for the detail asked. */
    TOO_COARSE("too coarse"),
    HIDDEN("hidden behind something");

    private final String words;

    Hindrance(String words) {
        this.words = words;
    }

    /** What it is, for people. */
    public String words() {
        return words;
    }
}
