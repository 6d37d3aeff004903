package everyblade.core.surface;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/**
 * What a mesh sweeps of the meridional plane when it turns about the axis: its triangles, each corner at its x and its
 * distance r from the axis, mm. Straight edges stand for the curves that a triangle's edges truly become; on facets a few
 * degrees wide they are within hundredths of a millimetre.
 */
public final class Meridian {

    /** What a square of a distance may be off by rounding: only what is farther than that is passed over. */
    private static final double ROUNDING = 1 + 1e-9;

    private final double[] triangles;
    /** Of each triangle the least x, the greatest, the least r, the greatest. */
    private final double[] boxes;

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
        this.boxes = new double[triangles.length / 6 * 4];
        for (int i = 0; i < triangles.length; i += 6) {
            int box = i / 6 * 4;
            boxes[box] = Math.min(Math.min(triangles[i], triangles[i + 2]), triangles[i + 4]);
            boxes[box + 1] = Math.max(Math.max(triangles[i], triangles[i + 2]), triangles[i + 4]);
            boxes[box + 2] = Math.min(Math.min(triangles[i + 1], triangles[i + 3]), triangles[i + 5]);
            boxes[box + 3] = Math.max(Math.max(triangles[i + 1], triangles[i + 3]), triangles[i + 5]);
        }
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
            if (squareToBox(i / 6 * 4, x, r) <= least * least * ROUNDING) {
                least = nearest(i, x, r, least);
            }
        }
        return least;
    }

    private double squareToBox(int box, double x, double r) {
        double dx = outside(boxes[box], boxes[box + 1], x);
        double dr = outside(boxes[box + 2], boxes[box + 3], r);
        return dx * dx + dr * dr;
    }

    private static double outside(double least, double most, double at) {
        return at < least ? least - at : at > most ? at - most : 0;
    }

    /** How far a place lies from a triangle, or the least so far. */
    private double nearest(int at, double x, double r, double leastSoFar) {
        double least = leastSoFar;
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
            least = nearest(ax, ar, bx, br, x, r, least);
        }
        return (left == 3) != (right == 3) ? 0 : least;
    }

    /** How far a place lies from a meridional curve. */
    public static double distance(List<MeridionalPoint> curve, double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < curve.size(); i++) {
            MeridionalPoint a = curve.get(i - 1);
            MeridionalPoint b = curve.get(i);
            least = nearest(a.x(), a.r(), b.x(), b.r(), x, r, least);
        }
        return least;
    }

    /** How far a place lies from a line between two points, or the least so far. */
    private static double nearest(double ax, double ar, double bx, double br, double x, double r, double least) {
        double dx = bx - ax;
        double dr = br - ar;
        double square = dx * dx + dr * dr;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (r - ar) * dr) / square));
        double offX = ax + share * dx - x;
        double offR = ar + share * dr - r;
        return offX * offX + offR * offR <= least * least * ROUNDING ? Math.min(least, Math.hypot(offX, offR)) : least;
    }
}
