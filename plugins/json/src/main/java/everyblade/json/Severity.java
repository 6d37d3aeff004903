package everyblade.json;

/** What a problem means for the model: an error refuses it, a warning never does. */
public enum Severity {
    ERROR,
    WARNING
}
