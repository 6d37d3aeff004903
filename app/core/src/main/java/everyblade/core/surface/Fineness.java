package everyblade.core.surface;

/**
 * How finely a surface is divided. Facets never straddle two zones, so that there may be some more of them than asked.
 *
 * @param chord facets from leading to trailing edge on each side, or along a liner; at least one
 * @param span facets from root to tip, or across a liner's sector; at least one
 */
public record Fineness(int chord, int span) {

    /** What coverage is computed with: 16 by 8 facets a side. */
    public static final Fineness STANDARD = new Fineness(16, 8);

    public Fineness {
        if (chord < 1 || span < 1) {
            throw new IllegalArgumentException("a surface has at least one facet each way");
        }
    }
}
