package everyblade.picture;

/** From where an engine is looked at along its axis. */
public enum Facing {
    /** Clock angles run clockwise. */
    AFT_LOOKING_FORWARD("seen from aft looking forward"),
    /** Clock angles run counter-clockwise. */
    FORWARD_LOOKING_AFT("seen from ahead looking aft");

    private final String words;

    Facing(String words) {
        this.words = words;
    }

    /** As it is written on the map. */
    public String words() {
        return words;
    }

    /** Whether clock angles, which are those seen from aft, run the other way on the sheet. */
    boolean mirrors() {
        return this == FORWARD_LOOKING_AFT;
    }
}
