package everyblade.spi;

import java.util.OptionalDouble;

/**
 * The end of a borescope.
 *
 * @param id unique within the engine model
 * @param cone full angle of the cone of view, degrees, above 0 and below 180
 * @param lookAngle angle of the optical axis from the scope's axis, degrees; 0 looks forward, 90 sideways
 * @param near nearest sharp distance, mm
 * @param far farthest useful distance, mm
 * @param pixels across the diameter of the picture
 * @param diameter of the scope, mm
 * @param hottest highest metal temperature it may touch, °C; empty if not stated
 */
public record ScopeTip(
        String id,
        double cone,
        double lookAngle,
        double near,
        double far,
        int pixels,
        double diameter,
        OptionalDouble hottest) {

    /** One that looks forward, of which nobody said how hot the metal may be. */
    public static ScopeTip forward(String id, double cone, double near, double far, int pixels, double diameter) {
        return new ScopeTip(id, cone, 0, near, far, pixels, diameter, OptionalDouble.empty());
    }
}
