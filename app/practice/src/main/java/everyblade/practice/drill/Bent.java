package everyblade.practice.drill;

import everyblade.core.sight.Pose;
import everyblade.spi.Station.Heading;

/**
 * A scope tip moved from where it was seated, in axial, tangential and radial parts there.
 *
 * @param offset by which it moved, mm
 * @param forward where it looks
 * @param up the top of its picture
 */
record Bent(Heading offset, Heading forward, Heading up) {

    /**
     * After pushing, rolling and bending.
     *
     * @param look angle between the scope's own direction and the optical axis, radians; it looks away from the scope's top
     */
    static Bent of(Pose seated, double look, Tip tip) {
        double[] forward = parts(seated.forward());
        double[] up = unit(square(parts(seated.up()), forward));
        // The scope's own direction: the optical axis turned back by the angle at which it looks aside.
        double[] shaft = sum(forward, StrictMath.cos(look), up, StrictMath.sin(look));
        double[] top = sum(up, StrictMath.cos(look), forward, -StrictMath.sin(look));
        double roll = Math.toRadians(tip.roll());
        double[] right = cross(shaft, top);
        double[] rolledTop = sum(top, StrictMath.cos(roll), right, StrictMath.sin(roll));
        double[] rolledRight = cross(shaft, rolledTop);
        double bend = Math.toRadians(Math.hypot(tip.up(), tip.right()));
        double[] side = bend == 0
                ? rolledTop
                : sum(
                        rolledTop,
                        tip.up() / Math.hypot(tip.up(), tip.right()),
                        rolledRight,
                        tip.right() / Math.hypot(tip.up(), tip.right()));
        double aside = bend == 0 ? 0 : Hands.BENDING * (1 - StrictMath.cos(bend)) / bend;
        double along = bend == 0 ? 0 : Hands.BENDING * (StrictMath.sin(bend) / bend - 1);
        double[] offset = sum(shaft, tip.push() + along, side, aside);
        double[] axis = cross(shaft, side);
        double[] newShaft = turned(shaft, axis, bend);
        double[] newTop = turned(rolledTop, axis, bend);
        return new Bent(
                heading(offset),
                heading(sum(newShaft, StrictMath.cos(look), newTop, -StrictMath.sin(look))),
                heading(sum(newTop, StrictMath.cos(look), newShaft, StrictMath.sin(look))));
    }

    /** Turned about an axis of unit length, so that what stands on the axis's left comes forward. */
    private static double[] turned(double[] v, double[] axis, double angle) {
        double along = v[0] * axis[0] + v[1] * axis[1] + v[2] * axis[2];
        double[] across = cross(axis, v);
        double[] turned = new double[3];
        for (int i = 0; i < 3; i++) {
            turned[i] = v[i] * StrictMath.cos(angle)
                    + across[i] * StrictMath.sin(angle)
                    + axis[i] * along * (1 - StrictMath.cos(angle));
        }
        return turned;
    }

    private static double[] parts(Heading heading) {
        return new double[] {heading.axial(), heading.tangential(), heading.radial()};
    }

    private static Heading heading(double[] v) {
        return new Heading(v[0], v[1], v[2]);
    }

    private static double[] square(double[] v, double[] to) {
        double along = v[0] * to[0] + v[1] * to[1] + v[2] * to[2];
        double[] part = sum(v, 1, to, -along);
        boolean parallel = part[0] * part[0] + part[1] * part[1] + part[2] * part[2] < 1e-12;
        return parallel ? square(Math.abs(to[0]) > 0.5 ? new double[] {0, 0, 1} : new double[] {1, 0, 0}, to) : part;
    }

    private static double[] unit(double[] v) {
        double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        return new double[] {v[0] / length, v[1] / length, v[2] / length};
    }

    private static double[] sum(double[] a, double ofA, double[] b, double ofB) {
        return new double[] {ofA * a[0] + ofB * b[0], ofA * a[1] + ofB * b[1], ofA * a[2] + ofB * b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
