package everyblade.spi;

/** A band of an airfoil along its chord, or of a liner along its length. */
public enum ChordBand {
    /** The first fifth of the chord, both faces of the edge. */
    LEADING,
    /** Between the edges. */
    MIDDLE,
    /** The last fifth of the chord, both faces of the edge. */
    TRAILING,
    /** The front half of a liner. */
    FORWARD,
    /** The rear half of a liner. */
    AFT;

    /** The word used in engine models and entries. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
