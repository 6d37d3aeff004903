package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.core.surface.NearestFacet;
import everyblade.spi.MeridionalPoint;
import java.util.List;

/**
 * Triangles by their corners, nine numbers each, mm. In space they are x, y and z; in the plane through the axis x, r and
 * 0, where the pieces of a wall are triangles without area.
 */
record Triangles(double[] corners) {

    /** The triangles of a mesh, turned clockwise about the axis by an angle in radians. */
    static Triangles of(Mesh mesh, double turned) {
        double sin = Math.sin(turned);
        double cos = Math.cos(turned);
        int[] points = mesh.triangles();
        double[] corners = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            double y = mesh.y(points[i]);
            double z = mesh.z(points[i]);
            corners[3 * i] = mesh.x(points[i]);
            corners[3 * i + 1] = y * cos + z * sin;
            corners[3 * i + 2] = z * cos - y * sin;
        }
        return new Triangles(corners);
    }

    /** What a mesh sweeps as it turns, in the plane through the axis. */
    static Triangles swept(Mesh mesh) {
        int[] points = mesh.triangles();
        double[] corners = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            corners[3 * i] = mesh.x(points[i]);
            corners[3 * i + 1] = Math.hypot(mesh.y(points[i]), mesh.z(points[i]));
        }
        return new Triangles(corners);
    }

    /** The pieces of a curve in the plane through the axis. */
    static Triangles along(List<MeridionalPoint> curve) {
        double[] corners = new double[9 * (curve.size() - 1)];
        for (int i = 0; i + 1 < curve.size(); i++) {
            for (int k = 0; k < 3; k++) {
                MeridionalPoint point = curve.get(k == 0 ? i : i + 1);
                corners[9 * i + 3 * k] = point.x();
                corners[9 * i + 3 * k + 1] = point.r();
            }
        }
        return new Triangles(corners);
    }

    int count() {
        return corners.length / 9;
    }

    double at(int triangle, int corner, int axis) {
        return corners[9 * triangle + 3 * corner + axis];
    }

    double low(int triangle, int axis) {
        return Math.min(at(triangle, 0, axis), Math.min(at(triangle, 1, axis), at(triangle, 2, axis)));
    }

    double high(int triangle, int axis) {
        return Math.max(at(triangle, 0, axis), Math.max(at(triangle, 1, axis), at(triangle, 2, axis)));
    }

    /** Whether an edge of the one passes through the inside of the other; lying in one plane is not cutting. */
    boolean cut(int one, Triangles others, int other) {
        for (int k = 0; k < 3; k++) {
            if (pierces(9 * one + 3 * k, 9 * one + 3 * ((k + 1) % 3), others, 9 * other)
                    || others.pierces(9 * other + 3 * k, 9 * other + 3 * ((k + 1) % 3), this, 9 * one)) {
                return true;
            }
        }
        return false;
    }

    private boolean pierces(int p, int q, Triangles others, int triangle) {
        double[] t = others.corners;
        double above = volume(corners, p, t, triangle, t, triangle + 3, t, triangle + 6);
        double below = volume(corners, q, t, triangle, t, triangle + 3, t, triangle + 6);
        if (!(above * below < 0)) {
            return false;
        }
        double first = volume(corners, p, corners, q, t, triangle, t, triangle + 3);
        double second = volume(corners, p, corners, q, t, triangle + 3, t, triangle + 6);
        double third = volume(corners, p, corners, q, t, triangle + 6, t, triangle);
        return first > 0 && second > 0 && third > 0 || first < 0 && second < 0 && third < 0;
    }

    /** Six times the volume of a tetrahedron, by its hand. */
    private static double volume(double[] a, int i, double[] b, int j, double[] c, int k, double[] d, int l) {
        double ux = b[j] - a[i];
        double uy = b[j + 1] - a[i + 1];
        double uz = b[j + 2] - a[i + 2];
        double vx = c[k] - a[i];
        double vy = c[k + 1] - a[i + 1];
        double vz = c[k + 2] - a[i + 2];
        double wx = d[l] - a[i];
        double wy = d[l + 1] - a[i + 1];
        double wz = d[l + 2] - a[i + 2];
        return ux * (vy * wz - vz * wy) + uy * (vz * wx - vx * wz) + uz * (vx * wy - vy * wx);
    }

    /** In the plane: whether two triangles share more than their borders (separating axes). */
    boolean overlap(int one, Triangles others, int other) {
        return !parted(one, others, other) && !others.parted(other, this, one);
    }

    /** Whether a line along an edge of one has all of the other on its far side. */
    private boolean parted(int one, Triangles others, int other) {
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            double nx = at(one, next, 1) - at(one, k, 1);
            double ny = at(one, k, 0) - at(one, next, 0);
            double inside =
                    nx * (at(one, (k + 2) % 3, 0) - at(one, k, 0)) + ny * (at(one, (k + 2) % 3, 1) - at(one, k, 1));
            boolean beyond = true;
            for (int c = 0; c < 3; c++) {
                double side =
                        nx * (others.at(other, c, 0) - at(one, k, 0)) + ny * (others.at(other, c, 1) - at(one, k, 1));
                beyond &= inside > 0 ? side <= 0 : side >= 0;
            }
            if (beyond) {
                return true;
            }
        }
        return false;
    }

    /** How far a triangle lies from a point, mm. */
    double distance(int triangle, double[] point) {
        return Math.sqrt(NearestFacet.squared(corners, 9 * triangle, point));
    }
}
