package everyblade.picture;

/** From where an engine is looked at along its axis. */
public enum Facing {
    /** Clock angles run clockwise. */
    AFT_LOOKING_FORWARD,
    /** Clock angles run counter-clockwise. */
    FORWARD_LOOKING_AFT;

    /** Whether clock angles, which are those seen from aft, run the other way on the sheet. */
    boolean mirrors() {
        return this == FORWARD_LOOKING_AFT;
    }
}
