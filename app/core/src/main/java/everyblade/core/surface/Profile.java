package everyblade.core.surface;

/**
 * A section on a chord of length 1 from (0, 0) to (1, 0): a circular-arc camber line with the half-thickness of the NACA
 * four-digit family set off square to it on both sides.
 *
 * <p>The half-thickness is the published one up to {@value #ROUNDED_FROM} of the chord; from there the open trailing edge
 * of the formula is rounded off, so that both faces meet at (1, 0).
 *
 * @see <a href="https://ntrs.nasa.gov/citations/19930091108">Jacobs, Ward, Pinkerton: NACA Report 460, 1933</a>
 */
final class Profile {

    static final double ROUNDED_FROM = 0.99;

    private static final int HALVINGS = 50;

    private final double half;
    private final double thickness;
    private final double[] front;
    private final double[] rear;

    /**
     * @param camber by how much the camber line turns, degrees, between −180 and 180; above 0 it bulges to the side 1
     * @param thickness greatest thickness as a share of the chord
     */
    Profile(double camber, double thickness) {
        this.half = StrictMath.toRadians(camber) / 2;
        this.thickness = thickness;
        this.front = new double[] {foot(-1, Divisions.EDGE, 0, 0.5), foot(1, Divisions.EDGE, 0, 0.5)};
        this.rear = new double[] {foot(-1, 1 - Divisions.EDGE, 0.5, 1), foot(1, 1 - Divisions.EDGE, 0.5, 1)};
    }

    /** Half of the thickness as a share of the chord, by the published formula, whose trailing edge is open. */
    static double halfThickness(double thickness, double chord) {
        double polynomial =
                0.2969 * Math.sqrt(chord) + chord * (-0.1260 + chord * (-0.3516 + chord * (0.2843 + chord * -0.1015)));
        return 5 * thickness * polynomial;
    }

    /**
     * A point of a face.
     *
     * @param side 1 or −1
     * @param chord 0 to 1; the points at 0, 0.2, 0.8 and 1 lie just there along the chord
     */
    double[] at(int side, double chord) {
        double first = front[side > 0 ? 1 : 0];
        double last = rear[side > 0 ? 1 : 0];
        double[] chords = {0, Divisions.EDGE, 1 - Divisions.EDGE, 1};
        return raised(side, Between.linear(chords, new double[] {0, first, last, 1}, chord));
    }

    /** Where on the camber line to stand so that the face above lies at this share of the chord. */
    private double foot(int side, double chord, double low, double high) {
        double below = low;
        double above = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (raised(side, middle)[0] < chord) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }

    private double[] raised(int side, double foot) {
        double slope = StrictMath.asin((1 - 2 * foot) * StrictMath.sin(half));
        double bulge = half == 0
                ? 0
                : StrictMath.sin((half + slope) / 2) * StrictMath.sin((half - slope) / 2) / StrictMath.sin(half);
        double off = side * rounded(foot);
        return new double[] {foot - off * StrictMath.sin(slope), bulge + off * StrictMath.cos(slope)};
    }

    private double rounded(double foot) {
        double in = Math.max(0, (foot - ROUNDED_FROM) / (1 - ROUNDED_FROM));
        return halfThickness(thickness, foot) * Math.sqrt(Math.max(0, 1 - in * in));
    }
}
