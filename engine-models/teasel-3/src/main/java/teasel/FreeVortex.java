package teasel;

/**
 * The flow through a stage that puts the same work into the air at every radius, with axial speed the same everywhere
 * and no swirl ahead of the rotor: swirl times radius is constant behind it (free vortex). Angles are degrees from the
 * axial direction, positive in the direction of turning.
 *
 * <p>Source: Saravanamuttoo et al., Gas Turbine Theory, on three-dimensional flow in axial compressors; from memory.
 *
 * @param axialSpeed m/s
 * @param turning shaft speed, rad/s
 * @param work J per kg of air
 */
record FreeVortex(double axialSpeed, double turning, double work) {

    private static final double MM = 1000;

    /** Swirl behind the rotor at a radius in mm, m/s. */
    double swirl(double r) {
        return work / bladeSpeed(r);
    }

    /** Of the air ahead of the rotor, as a blade sees it. */
    double intoRotor(double r) {
        return angle(-bladeSpeed(r));
    }

    /** Of the air behind the rotor, as a blade sees it. */
    double outOfRotor(double r) {
        return angle(swirl(r) - bladeSpeed(r));
    }

    /** Of the air behind the rotor, as a vane sees it. */
    double intoStator(double r) {
        return angle(swirl(r));
    }

    /** Of the air behind the vanes. */
    double outOfStator() {
        return 0;
    }

    private double bladeSpeed(double r) {
        return turning * r / MM;
    }

    private double angle(double tangentialSpeed) {
        return StrictMath.toDegrees(StrictMath.atan2(tangentialSpeed, axialSpeed));
    }
}
