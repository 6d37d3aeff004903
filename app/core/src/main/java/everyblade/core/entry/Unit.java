package everyblade.core.entry;

/** What an amount of turning is counted in. */
public enum Unit {
    /** Degrees of the shaft. */
    DEG,
    /** Turns of the tool at the pad in use. */
    TOOL,
    /** Pitches of the row in view, counted by eye. */
    BLADES,
    /** Turns of the shaft. */
    REV
}
