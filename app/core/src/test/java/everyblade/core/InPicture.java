package everyblade.core;

import static everyblade.core.Ray.dot;
import static everyblade.core.Ray.minus;

import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;

/** What makes a place on a surface count as properly in sight, besides that nothing hides it, compared as angles and distances. */
public final class InPicture {

    private InPicture() {}

    /**
     * Whether it does.
     *
     * @param eye the scope tip
     * @param forward where it looks
     * @param normal of the surface, of unit length
     * @param grazing least angle between line of sight and surface, degrees
     */
    public static boolean shows(
            Pose pose,
            Criteria criteria,
            double grazing,
            double[] eye,
            double[] forward,
            double[] place,
            double[] normal) {
        double[] line = minus(place, eye);
        double distance = Math.sqrt(dot(line, line));
        double cosine = -dot(line, normal) / distance;
        return cosine > 0
                && distance >= pose.near()
                && distance <= pose.far()
                && Math.toDegrees(Math.acos(cosine)) <= 90 - grazing
                && Math.toDegrees(Math.acos(dot(line, forward) / distance))
                        <= pose.cone().degrees() / 2
                && (criteria.detail().isEmpty()
                        || threePixels(pose, distance) <= criteria.detail().getAsDouble() * cosine);
    }

    private static double threePixels(Pose pose, double distance) {
        return 3 * 2 * distance * Math.tan(Math.toRadians(pose.cone().degrees() / 2)) / pose.pixels();
    }
}
