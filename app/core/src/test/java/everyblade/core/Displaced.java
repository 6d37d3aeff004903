package everyblade.core;

import static everyblade.core.Ray.cross;
import static everyblade.core.Ray.dot;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Pose;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Tolerance;
import java.util.random.RandomGenerator;

/** A scope tip that is not where it should be, moved and tilted in space as one would say it. */
public final class Displaced {

    private Displaced() {}

    /** Somewhere within a tolerance, each part of it evenly. */
    public static Pose within(Pose pose, Tolerance within, RandomGenerator random) {
        double[] off =
                random.doubles(3, -1, 1).map(share -> share * within.mm()).toArray();
        return of(pose, off, random.nextDouble() * within.deg(), 360 * random.nextDouble());
    }

    /**
     * At one place.
     *
     * @param by axially, tangentially and radially, mm
     * @param tilt of the optical axis, degrees
     * @param towards which side of the picture, degrees from its top
     */
    public static Pose of(Pose pose, double[] by, double tilt, double towards) {
        double[] forward = vector(pose.forward());
        double[] top = square(vector(pose.up()), forward);
        double[] side = cross(forward, top);
        double[] aside = plus(times(Math.cos(Math.toRadians(towards)), top), Math.sin(Math.toRadians(towards)), side);
        double angle = Math.toRadians(tilt);
        double[] looks = plus(times(Math.cos(angle), forward), Math.sin(angle), aside);
        double outward = pose.r() + by[2];
        double turned = Math.atan2(by[1], outward);
        return new Pose(
                pose.x() + by[0],
                Math.hypot(by[1], outward),
                pose.clock().plus(Turn.ofDegrees(Math.toDegrees(turned))),
                heading(looks, turned),
                heading(top, turned),
                pose.cone(),
                pose.near(),
                pose.far(),
                pose.pixels());
    }

    private static double[] vector(Heading heading) {
        return new double[] {heading.axial(), heading.tangential(), heading.radial()};
    }

    private static Heading heading(double[] v, double turned) {
        double[] there = Ray.turned(v, -turned);
        return new Heading(there[0], there[1], there[2]);
    }

    private static double[] times(double share, double[] v) {
        return plus(new double[3], share, v);
    }

    private static double[] plus(double[] a, double times, double[] b) {
        return new double[] {a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]};
    }

    /** The part of one that is square to the other, of unit length; of any if the two are parallel. */
    private static double[] square(double[] v, double[] to) {
        double[] part = plus(v, -dot(v, to), to);
        double length = Math.sqrt(dot(part, part));
        return length > 1e-9
                ? times(1 / length, part)
                : square(Math.abs(to[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 1, 0}, to);
    }
}
