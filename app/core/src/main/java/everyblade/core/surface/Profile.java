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

    private Profile() {}

    /** Half of the thickness as a share of the chord, by the published formula, whose trailing edge is open. */
    static double halfThickness(double thickness, double chord) {
        double polynomial =
                0.2969 * Math.sqrt(chord) + chord * (-0.1260 + chord * (-0.3516 + chord * (0.2843 + chord * -0.1015)));
        return 5 * thickness * polynomial;
    }

    /**
     * A point of a face.
     *
     * @param camber by how much the camber line turns, degrees; above 0 it bulges to the side 1
     * @param thickness greatest thickness as a share of the chord
     * @param side 1 or −1
     * @param chord 0 to 1; the points at 0, 0.2, 0.8 and 1 lie just there along the chord
     */
    static double[] at(double camber, double thickness, int side, double chord) {
        double front = foot(camber, thickness, side, Divisions.EDGE, 0, 0.5);
        double rear = foot(camber, thickness, side, 1 - Divisions.EDGE, 0.5, 1);
        double foot;
        if (chord < Divisions.EDGE) {
            foot = front * chord / Divisions.EDGE;
        } else if (chord <= 1 - Divisions.EDGE) {
            foot = Between.mix(front, rear, (chord - Divisions.EDGE) / (1 - 2 * Divisions.EDGE));
        } else {
            foot = Between.mix(1, rear, (1 - chord) / Divisions.EDGE);
        }
        return raised(camber, thickness, side, foot);
    }

    /** Where on the camber line to stand so that the face above lies at this share of the chord. */
    private static double foot(double camber, double thickness, int side, double chord, double low, double high) {
        double below = low;
        double above = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (raised(camber, thickness, side, middle)[0] < chord) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }

    private static double[] raised(double camber, double thickness, int side, double foot) {
        double half = Math.toRadians(camber) / 2;
        double slope = Math.asin((1 - 2 * foot) * Math.sin(half));
        double bulge = half == 0 ? 0 : Math.sin((half + slope) / 2) * Math.sin((half - slope) / 2) / Math.sin(half);
        double off = side * rounded(thickness, foot);
        return new double[] {foot - off * Math.sin(slope), bulge + off * Math.cos(slope)};
    }

    private static double rounded(double thickness, double foot) {
        double in = Math.max(0, (foot - ROUNDED_FROM) / (1 - ROUNDED_FROM));
        return halfThickness(thickness, foot) * Math.sqrt(Math.max(0, 1 - in * in));
    }
}
