package everyblade.spi;

/** Where the geometry of a row comes from. */
public enum Source {
    DRAWING,
    MEASURED,
    ESTIMATED,
    INVENTED;

    /** The word used in engine models. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
