package everyblade.core.surface;

import java.util.Arrays;

/** Gathers the points and faces of a mesh. */
final class MeshBuilder {

    private double[] points = new double[3 * 64];
    private int pointCount;
    private int[] corners = new int[4 * 64];
    private int[] starts = new int[64];
    private int[] zones = new int[64];
    private int faceCount;

    /** Adds a point and gives its index. */
    int point(double... xyz) {
        if (3 * pointCount == points.length) {
            points = Arrays.copyOf(points, 2 * points.length);
        }
        System.arraycopy(xyz, 0, points, 3 * pointCount, 3);
        return pointCount++;
    }

    /** Adds a point at clock angle φ (radians) and gives its index. */
    int pointAt(double x, double r, double phi) {
        return point(polar(x, r, phi));
    }

    /** The point at clock angle φ, radians. */
    static double[] polar(double x, double r, double phi) {
        return new double[] {x, r * StrictMath.sin(phi), r * StrictMath.cos(phi)};
    }

    /** The same four corners seen from behind, beginning with the same one. */
    static int[] reversed(int[] around) {
        return new int[] {around[0], around[3], around[2], around[1]};
    }

    /** Adds a face. */
    void face(int zone, int... around) {
        int start = starts[faceCount];
        if (faceCount + 2 > starts.length) {
            starts = Arrays.copyOf(starts, 2 * starts.length);
            zones = Arrays.copyOf(zones, 2 * zones.length);
        }
        if (start + around.length > corners.length) {
            corners = Arrays.copyOf(corners, 2 * (start + around.length));
        }
        System.arraycopy(around, 0, corners, start, around.length);
        zones[faceCount++] = zone;
        starts[faceCount] = start + around.length;
    }

    /** @throws UnusableShape if a point lies nowhere or a face has no area */
    Mesh built() throws UnusableShape {
        for (int i = 0; i < 3 * pointCount; i++) {
            if (!Double.isFinite(points[i])) {
                throw new UnusableShape(new ShapeFault.Nowhere());
            }
        }
        Mesh mesh = new Mesh(
                Arrays.copyOf(points, 3 * pointCount),
                Arrays.copyOf(corners, starts[faceCount]),
                Arrays.copyOf(starts, faceCount + 1),
                Arrays.copyOf(zones, faceCount));
        try {
            Facets.of(mesh);
        } catch (FlatFace flat) {
            throw new UnusableShape(new ShapeFault.Flat(flat.face()));
        }
        return mesh;
    }
}
