package everyblade.core.surface;

/**
 * Distance of a point from a triangle, by the region of the triangle that is nearest to it.
 *
 * @see <a href="https://doi.org/10.1201/b14581">Ericson: Real-Time Collision Detection, 2005, section 5.1.5</a>
 */
public final class NearestFacet {

    private NearestFacet() {}

    /** The square of the distance; the corners stand one after the other from an index on. */
    public static double squared(double[] corners, int at, double[] point) {
        double[] ab = less(corners, at + 3, corners, at);
        double[] ac = less(corners, at + 6, corners, at);
        double[] ap = less(point, 0, corners, at);
        double d1 = dot(ab, ap);
        double d2 = dot(ac, ap);
        if (d1 <= 0 && d2 <= 0) {
            return dot(ap, ap);
        }
        double[] bp = less(point, 0, corners, at + 3);
        double d3 = dot(ab, bp);
        double d4 = dot(ac, bp);
        if (d3 >= 0 && d4 <= d3) {
            return dot(bp, bp);
        }
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            return off(ap, ab, d1 / (d1 - d3), ac, 0);
        }
        double[] cp = less(point, 0, corners, at + 6);
        double d5 = dot(ab, cp);
        double d6 = dot(ac, cp);
        if (d6 >= 0 && d5 <= d6) {
            return dot(cp, cp);
        }
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            return off(ap, ab, 0, ac, d2 / (d2 - d6));
        }
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            double share = (d4 - d3) / (d4 - d3 + d5 - d6);
            return off(ap, ab, 1 - share, ac, share);
        }
        double whole = va + vb + vc;
        return off(ap, ab, vb / whole, ac, vc / whole);
    }

    private static double off(double[] ap, double[] ab, double v, double[] ac, double w) {
        double x = ap[0] - v * ab[0] - w * ac[0];
        double y = ap[1] - v * ab[1] - w * ac[1];
        double z = ap[2] - v * ab[2] - w * ac[2];
        return x * x + y * y + z * z;
    }

    private static double[] less(double[] a, int i, double[] b, int j) {
        return new double[] {a[i] - b[j], a[i + 1] - b[j + 1], a[i + 2] - b[j + 2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
