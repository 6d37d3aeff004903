package everyblade.spi;

import java.util.Optional;

/**
 * A pose of the scope tip.
 *
 * @param id unique within its view
 * @param x mm
 * @param r mm
 * @param clock degrees
 * @param forward where it looks
 * @param up the top of its picture
 * @param within how far from there it may truly be
 * @param forClock on travelling views the clock sector in which this station holds
 */
public record Station(
        String id,
        double x,
        double r,
        double clock,
        Heading forward,
        Heading up,
        Tolerance within,
        Optional<Sector> forClock) {

    /** One that does not travel. */
    public Station(String id, double x, double r, double clock, Heading forward, Heading up, Tolerance within) {
        this(id, x, r, clock, forward, up, within, Optional.empty());
    }

    /**
     * A direction at the station's clock; its length does not matter, but is not zero.
     *
     * @param axial aft
     * @param tangential clockwise
     * @param radial outward
     */
    public record Heading(double axial, double tangential, double radial) {}

    /**
     * How far a pose may be off.
     *
     * @param mm ± along each axis
     * @param deg ± of tilt
     */
    public record Tolerance(double mm, double deg) {}

    /**
     * A sector of clock angles, clockwise from one to the other, degrees.
     *
     * @param from where it begins
     * @param to where it ends
     */
    public record Sector(double from, double to) {}
}
