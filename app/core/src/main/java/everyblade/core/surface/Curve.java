package everyblade.core.surface;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/**
 * A line of straight pieces in the plane through the axis, run through from its first point to its last; its length is
 * not zero. Lengths are mm.
 */
final class Curve {

    private final double[] x;
    private final double[] r;
    private final double[] along;

    /**
     * The line through these points.
     *
     * @throws UnusableShape if it has no length
     */
    Curve(List<MeridionalPoint> points, CurveName name) throws UnusableShape {
        int n = points.size();
        x = points.stream().mapToDouble(MeridionalPoint::x).toArray();
        r = points.stream().mapToDouble(MeridionalPoint::r).toArray();
        along = new double[n];
        for (int i = 1; i < n; i++) {
            along[i] = along[i - 1] + StrictMath.hypot(x[i] - x[i - 1], r[i] - r[i - 1]);
        }
        if (n < 2 || !(along[n - 1] > 0)) {
            throw new UnusableShape(new ShapeFault.NoLength(name));
        }
    }

    double length() {
        return along[along.length - 1];
    }

    int size() {
        return x.length;
    }

    /** The share of the length at which a point of the line lies. */
    double shareOf(int point) {
        return along[point] / length();
    }

    /** x at a share of the length. */
    double xAt(double share) {
        return Between.linear(along, x, share * length());
    }

    /** r at a share of the length. */
    double rAt(double share) {
        return Between.linear(along, r, share * length());
    }

    /** r where the line first comes to this x; beyond its ends, that of the nearer end. */
    double radiusAt(double at) {
        for (int i = 1; i < x.length; i++) {
            double low = Math.min(x[i - 1], x[i]);
            double high = Math.max(x[i - 1], x[i]);
            if (at >= low && at <= high && high > low) {
                return Between.mix(r[i - 1], r[i], (at - x[i - 1]) / (x[i] - x[i - 1]));
            }
        }
        int last = x.length - 1;
        return Math.abs(at - x[0]) <= Math.abs(at - x[last]) ? r[0] : r[last];
    }
}
