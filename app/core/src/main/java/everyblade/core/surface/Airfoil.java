package everyblade.core.surface;

/**
 * The two faces of one airfoil that stands at clock 0, as functions of the shares of its chord and span. They meet at
 * the edges: at chord 0 and 1 both give the same point.
 */
interface Airfoil {

    /**
     * A point of a face: x, y and z, mm.
     *
     * @param side 1 for the face that lies clockwise where the airfoil points aft, −1 for the other
     * @param chord share of the chord from the leading edge; the bands end exactly at a fifth and at four fifths
     * @param span share of the span from the root
     */
    double[] at(int side, double chord, double span) throws UnusableShape;

    /** The side that is the suction side at this share of the span. */
    int suction(double span);

    /** Whether chord, the way out of face 1 and span stand to each other as aft, clockwise and outward do. */
    boolean rightHanded();
}
