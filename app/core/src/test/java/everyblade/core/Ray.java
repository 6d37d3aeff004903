package everyblade.core;

/** Straight lines and triangles in space, as one would say it. */
public final class Ray {

    private Ray() {}

    /**
     * At which share of its way the straight line between two points passes through a triangle, ends included; NaN if it does
     * not. Möller & Trumbore 1997, Journal of Graphics Tools 2(1), 21–28 (from memory).
     */
    public static double meets(double[] from, double[] to, double[] a, double[] b, double[] c) {
        double[] line = minus(to, from);
        double[] ab = minus(b, a);
        double[] ac = minus(c, a);
        double[] p = cross(line, ac);
        double determinant = dot(ab, p);
        double[] s = minus(from, a);
        double u = dot(s, p) / determinant;
        double[] q = cross(s, ab);
        double v = dot(line, q) / determinant;
        double t = dot(ac, q) / determinant;
        return determinant != 0 && u >= 0 && v >= 0 && u + v <= 1 && t >= 0 && t <= 1 ? t : Double.NaN;
    }

    /** How near a point the straight line between two others comes. */
    public static double distance(double[] from, double[] to, double[] point) {
        double[] line = minus(to, from);
        double[] off = minus(point, from);
        double square = dot(line, line);
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, dot(off, line) / square));
        double[] rest = {off[0] - t * line[0], off[1] - t * line[1], off[2] - t * line[2]};
        return Math.sqrt(dot(rest, rest));
    }

    /** A point further on by a clock angle, radians. */
    public static double[] turned(double[] point, double angle) {
        double sine = Math.sin(angle);
        double cosine = Math.cos(angle);
        return new double[] {point[0], point[1] * cosine + point[2] * sine, point[2] * cosine - point[1] * sine};
    }

    public static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    public static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    public static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
