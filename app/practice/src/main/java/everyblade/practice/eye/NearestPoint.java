package everyblade.practice.eye;

/**
 * How near a triangle comes to a place. By the regions about a triangle: C. Ericson, Real-Time Collision Detection, 2005, section
 * 5.1.5 (from memory).
 */
final class NearestPoint {

    private NearestPoint() {}

    /** The square of the distance from a place to a triangle whose corners' coordinates begin at a, b and c. */
    static double square(float[] p, int a, int b, int c, double x, double y, double z) {
        double[] ab = {p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]};
        double[] ac = {p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]};
        double[] ap = {x - p[a], y - p[a + 1], z - p[a + 2]};
        double d1 = dot(ab, ap);
        double d2 = dot(ac, ap);
        if (d1 <= 0 && d2 <= 0) {
            return off(ap, ab, 0, ac, 0);
        }
        double bb = dot(ab, ab);
        double bc = dot(ab, ac);
        double cc = dot(ac, ac);
        double d3 = d1 - bb;
        double d4 = d2 - bc;
        if (d3 >= 0 && d4 <= d3) {
            return off(ap, ab, 1, ac, 0);
        }
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            return off(ap, ab, d1 / (d1 - d3), ac, 0);
        }
        double d5 = d1 - bc;
        double d6 = d2 - cc;
        if (d6 >= 0 && d5 <= d6) {
            return off(ap, ab, 0, ac, 1);
        }
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            return off(ap, ab, 0, ac, d2 / (d2 - d6));
        }
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            double share = (d4 - d3) / (d4 - d3 + (d5 - d6));
            return off(ap, ab, 1 - share, ac, share);
        }
        double whole = va + vb + vc;
        return off(ap, ab, vb / whole, ac, vc / whole);
    }

    private static double off(double[] ap, double[] ab, double ofB, double[] ac, double ofC) {
        double square = 0;
        for (int i = 0; i < 3; i++) {
            double d = ap[i] - ofB * ab[i] - ofC * ac[i];
            square += d * d;
        }
        return square;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
