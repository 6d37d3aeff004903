package everyblade.core.finding.measure;

import everyblade.fact.Fact;

/** Where the uncertainty of a measured length comes from. */
public enum Source implements Fact {
    POINTING_AT_LINE,
    POINTING_AT_KNOWN,
    KNOWN_LENGTH,
    DISTANCE_OF_LINE,
    DISTANCE_OF_KNOWN,
    SLANT_OF_LINE,
    SLANT_OF_KNOWN
}
