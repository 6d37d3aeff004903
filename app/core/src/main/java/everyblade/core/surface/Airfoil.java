package everyblade.core.surface;

/** The surface of one airfoil that stands at clock 0, by shares of its span and chord. */
interface Airfoil {

    /** The line round the airfoil at this share of the span from the root. */
    Slice slice(double span) throws UnusableShape;

    /** Whether chord, the way out of face 1 and span stand to each other as aft, clockwise and outward do. */
    boolean rightHanded();

    /** Both faces at one share of the span; they meet at the edges: at chord 0 and 1 both give the same point. */
    interface Slice {

        /**
         * A point of a face: x, y and z, mm.
         *
         * @param side 1 for the face that lies clockwise where the airfoil points aft, −1 for the other
         * @param chord share of the chord from the leading edge; the bands end exactly at a fifth and at four fifths
         */
        double[] at(int side, double chord) throws UnusableShape;

        /** The side that is the suction side here: the convex one, or the clockwise one if neither is. */
        int suction();
    }
}
