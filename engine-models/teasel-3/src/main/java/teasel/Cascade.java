package teasel;

import everyblade.spi.Shape.Section;

/**
 * A row of blades laid out for a flow: the air meets the leading edge along the camber line, and leaves the trailing
 * edge with Carter's deviation. Sections are stacked so that their mid-chords stand at one x.
 *
 * <p>Source: Carter's rule for circular-arc camber, deviation = m · camber · √(pitch/chord) with m = 0.23 + 0.002 ·
 * outlet angle; from memory.
 *
 * @param count blades
 * @param chord mm, the same from root to tip
 * @param x of the mid-chords, mm
 * @param rootThickness greatest thickness at the root, share of the chord
 * @param tipThickness the same at the tip
 */
record Cascade(int count, double chord, double x, double rootThickness, double tipThickness) {

    private static final double THOUSANDTHS = 1000;

    /**
     * The section that turns the air from one angle to another, degrees from the axial direction, positive clockwise.
     *
     * @param span share of the way from root to tip
     * @param r mm
     */
    Section section(double span, double r, double inlet, double outlet) {
        double slope = carter(outlet) * StrictMath.sqrt(pitch(r) / chord);
        double camber = (inlet - outlet) / (1 - slope);
        double stagger = inlet - camber / 2;
        double half = chord * StrictMath.cos(StrictMath.toRadians(stagger)) / 2;
        double thickness = rootThickness + span * (tipThickness - rootThickness);
        return new Section(span, chord, rounded(stagger), rounded(camber), rounded(thickness), rounded(x - half));
    }

    private static double carter(double outlet) {
        return 0.23 + 0.002 * StrictMath.abs(outlet);
    }

    private double pitch(double r) {
        return 2 * StrictMath.PI * r / count;
    }

    /** Figures that a person can read, to a thousandth. */
    static double rounded(double number) {
        return StrictMath.rint(number * THOUSANDTHS) / THOUSANDTHS;
    }
}
