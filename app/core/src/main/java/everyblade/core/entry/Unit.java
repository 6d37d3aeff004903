package everyblade.core.entry;

/** What an amount of turning is counted in. */
public enum Unit {
    /** Degrees of the shaft. */
    DEG,
    /** Whole turns of the tool at the pad in use. */
    TOOL,
    /** Degrees of the tool at the pad in use. */
    TOOLDEG,
    /** Pitches of the row in view, counted by eye. */
    BLADES,
    /** Turns of the shaft. */
    REV
}
