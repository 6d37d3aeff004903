package everyblade.core.surface;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/**
 * What a mesh sweeps of the meridional plane when it turns about the axis: its triangles, each corner at its x and its
 * distance r from the axis, mm. Straight edges stand for the curves that a triangle's edges truly become; on facets a few
 * degrees wide they are within hundredths of a millimetre.
 */
public final class Meridian {

    private final double[] triangles;
    private final double front;
    private final double rear;

    private Meridian(double[] triangles) {
        this.triangles = triangles;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < triangles.length; i += 2) {
            least = Math.min(least, triangles[i]);
            most = Math.max(most, triangles[i]);
        }
        this.front = least;
        this.rear = most;
    }

    /** What a mesh sweeps. */
    public static Meridian of(Mesh mesh) {
        int[] points = mesh.triangles();
        double[] triangles = new double[2 * points.length];
        for (int i = 0; i < points.length; i++) {
            triangles[2 * i] = mesh.x(points[i]);
            triangles[2 * i + 1] = Math.hypot(mesh.y(points[i]), mesh.z(points[i]));
        }
        return new Meridian(triangles);
    }

    /** The least x that is swept. */
    public double front() {
        return front;
    }

    /** The greatest x that is swept. */
    public double rear() {
        return rear;
    }

    /** How far a place lies from all that is swept; 0 within it. */
    public double distance(double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < triangles.length && least > 0; i += 6) {
            least = Math.min(least, distance(i, x, r));
        }
        return least;
    }

    private double distance(int at, double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        int left = 0;
        int right = 0;
        for (int k = 0; k < 3; k++) {
            int a = at + 2 * k;
            int b = at + 2 * ((k + 1) % 3);
            double ax = triangles[a];
            double ar = triangles[a + 1];
            double bx = triangles[b];
            double br = triangles[b + 1];
            double turned = (bx - ax) * (r - ar) - (br - ar) * (x - ax);
            left += turned >= 0 ? 1 : 0;
            right += turned <= 0 ? 1 : 0;
            least = Math.min(least, distance(ax, ar, bx, br, x, r));
        }
        return (left == 3) != (right == 3) ? 0 : least;
    }

    /** How far a place lies from a meridional curve. */
    public static double distance(List<MeridionalPoint> curve, double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < curve.size(); i++) {
            MeridionalPoint a = curve.get(i - 1);
            MeridionalPoint b = curve.get(i);
            least = Math.min(least, distance(a.x(), a.r(), b.x(), b.r(), x, r));
        }
        return least;
    }

    private static double distance(double ax, double ar, double bx, double br, double x, double r) {
        double dx = bx - ax;
        double dr = br - ar;
        double square = dx * dx + dr * dr;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (r - ar) * dr) / square));
        return Math.hypot(ax + share * dx - x, ar + share * dr - r);
    }
}
