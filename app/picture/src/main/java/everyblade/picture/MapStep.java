package everyblade.picture;

/** One step of a walk over the cells of a picture. */
public enum MapStep {
    /** Clockwise on a ring as it is drawn, to the right in a strip. */
    RIGHT,
    /** The other way. */
    LEFT,
    /** Away from the axis, and from ring to ring; up in a strip. */
    UP,
    /** The other way. */
    DOWN,
    /** To the airfoil with the next number, to the same zone of it; round from the last to the first. */
    NEXT,
    /** The other way. */
    PREVIOUS
}
