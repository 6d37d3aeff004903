package everyblade.core.entry;

/** Which way, said without naming a clock direction. */
public enum Sense {
    /** The spool's normal direction. */
    ON,
    /** The other one. */
    BACK
}
