package everyblade.core.sight;

import everyblade.fact.Fact;

/** What keeps a facet out of sight, in the order in which it is asked. */
public enum Hindrance implements Fact {
    OUTSIDE_CONE,
    /** Nearer than near or farther than far. */
    OUT_OF_RANGE,
    /** Turned away, or the line of sight too close to grazing. */
    GRAZING,
    /** Pixels too large on the surface for the detail asked. */
    TOO_COARSE,
    HIDDEN
}
