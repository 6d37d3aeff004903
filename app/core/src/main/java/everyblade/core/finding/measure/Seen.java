package everyblade.core.finding.measure;

/** How a place was seen, and so what a line there is in proportion to its pixels. */
sealed interface Seen permits Slant, Plane {

    /** Between the line of sight and the surface's normal, degrees; 0 is square, below 90. */
    double incidence();

    /** From the scope tip, along its axis, mm. */
    double distance();

    /** The length of a line in some unit that is the same throughout a picture, and where its uncertainty comes from. */
    Extension extension(PixelLine line);

    /**
     * A length in some unit.
     *
     * @param length above 0
     * @param ofDistance relative standard uncertainty by that of the distance
     * @param ofSlant relative standard uncertainty by that of the slant
     */
    record Extension(double length, double ofDistance, double ofSlant) {}
}
