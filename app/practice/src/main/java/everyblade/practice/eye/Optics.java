package everyblade.practice.eye;

/**
 * What light and lens of a scope tip do to a picture.
 *
 * @param near nearest distance that is sharp, mm
 * @param far farthest distance that is sharp, mm
 * @param lamp how far from the middle of the lens its light comes out, mm
 */
public record Optics(double near, double far, double lamp) {

    /** Beyond so many times the sharp distance nothing is drawn: it is dark there. */
    private static final double DARK = 4;

    public Optics {
        if (!(near >= 0 && far > near && lamp >= 0)) {
            throw new IllegalArgumentException("a lens is sharp from near to far, and its light comes from beside it");
        }
    }

    /** Beyond this it is dark, mm. */
    public double dark() {
        return DARK * far;
    }
}
