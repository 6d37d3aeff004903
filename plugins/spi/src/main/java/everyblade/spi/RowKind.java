package everyblade.spi;

/** What the airfoils of a row are. */
public enum RowKind {
    /** Blades that turn with a spool. */
    ROTOR("rotor", "blade"),
    /** Vanes that stand still. */
    STATOR("stator", "vane"),
    /** Sectors of a combustor liner that stand still. */
    LINER("liner", "part");

    private final String word;
    private final String airfoil;

    RowKind(String word, String airfoil) {
        this.word = word;
        this.airfoil = airfoil;
    }

    /** The word used in engine models. */
    public String word() {
        return word;
    }

    /** What people call one airfoil of such a row: "blade", "vane" or "part". */
    public String airfoil() {
        return airfoil;
    }
}
