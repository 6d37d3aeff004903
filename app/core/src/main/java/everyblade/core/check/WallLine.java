package everyblade.core.check;

import everyblade.spi.MeridionalPoint;
import java.util.List;

/** The curve of a wall in the plane through the axis; lengths are mm. */
record WallLine(List<MeridionalPoint> points) {

    /** How far a place lies from the nearest point of the curve. */
    double distance(double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.size(); i++) {
            MeridionalPoint a = points.get(i - 1);
            double dx = points.get(i).x() - a.x();
            double dr = points.get(i).r() - a.r();
            double squared = dx * dx + dr * dr;
            double share = squared == 0 ? 0 : ((x - a.x()) * dx + (r - a.r()) * dr) / squared;
            double at = Math.max(0, Math.min(1, share));
            least = Math.min(least, Math.hypot(x - a.x() - at * dx, r - a.r() - at * dr));
        }
        return least;
    }

    /**
     * Whether an edge of a triangle in the plane leads from one side of the curve to the other, both its ends further from
     * it than this. One that leaves and comes back only cuts a corner of a curve that it follows.
     */
    boolean parts(Triangles triangles, int triangle, double off) {
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            double x = triangles.at(triangle, k, 0);
            double r = triangles.at(triangle, k, 1);
            double x1 = triangles.at(triangle, next, 0);
            double r1 = triangles.at(triangle, next, 1);
            if (crossings(x, r, x1, r1) % 2 == 1 && distance(x, r) > off && distance(x1, r1) > off) {
                return true;
            }
        }
        return false;
    }

    private int crossings(double x, double r, double x1, double r1) {
        int crossings = 0;
        for (int i = 1; i < points.size(); i++) {
            MeridionalPoint a = points.get(i - 1);
            MeridionalPoint b = points.get(i);
            boolean curveAcross = above(x, r, x1, r1, a.x(), a.r()) != above(x, r, x1, r1, b.x(), b.r());
            boolean edgeAcross = above(a.x(), a.r(), b.x(), b.r(), x, r) != above(a.x(), a.r(), b.x(), b.r(), x1, r1);
            crossings += curveAcross && edgeAcross ? 1 : 0;
        }
        return crossings;
    }

    /** Whether a place lies on the left hand of a way, a place on it counted as on the right. */
    private static boolean above(double x, double r, double x1, double r1, double atX, double atR) {
        return (x1 - x) * (atR - r) - (r1 - r) * (atX - x) > 0;
    }

    double least() {
        return points.stream().mapToDouble(MeridionalPoint::x).min().orElseThrow();
    }

    double most() {
        return points.stream().mapToDouble(MeridionalPoint::x).max().orElseThrow();
    }
}
