package everyblade.core.surface;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A surface of flat or slightly warped facets: every face has at least three corners, all of them points of the mesh,
 * and lies in exactly one zone. A face is the fan of triangles from its first corner, and its corners run anticlockwise
 * seen from where it faces, which is out of the metal. Never changes; arrays handed out are copies.
 *
 * <p>Lengths are mm in the frame of the package.
 */
public final class Mesh {

    private final double[] points;
    private final int[] corners;
    private final int[] faceStart;
    private final int[] faceZone;

    /**
     * A mesh of these parts, which are copied.
     *
     * @param points x, y and z of each point in turn, finite
     * @param corners indices of the points of each face in turn
     * @param faceStart where in {@code corners} each face begins, and at the end their number
     * @param faceZone of each face, the index of its zone among the names of the row's zones; 0 for walls
     * @throws IllegalArgumentException if these do not make a mesh
     */
    public Mesh(double[] points, int[] corners, int[] faceStart, int[] faceZone) {
        this.points = points.clone();
        this.corners = corners.clone();
        this.faceStart = faceStart.clone();
        this.faceZone = faceZone.clone();
        check();
    }

    private void check() {
        require(points.length % 3 == 0, "points come in threes of coordinates");
        require(Arrays.stream(points).allMatch(Double::isFinite), "every coordinate is finite");
        require(faceStart.length == faceZone.length + 1, "every face has a beginning, an end and a zone");
        require(faceStart[0] == 0 && faceStart[faceZone.length] == corners.length, "faces use every corner");
        for (int face = 0; face < faceZone.length; face++) {
            require(cornerCount(face) >= 3, "every face has at least three corners");
            require(faceZone[face] >= 0, "every face has a zone");
        }
        int pointCount = pointCount();
        require(Arrays.stream(corners).allMatch(c -> c >= 0 && c < pointCount), "every corner is a point");
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("not a mesh: " + rule);
        }
    }

    /** How many points there are. */
    public int pointCount() {
        return points.length / 3;
    }

    /** How near the axis it comes, mm: the least of all points. */
    public double leastRadius() {
        return radii().min().orElse(0);
    }

    /** How far from the axis it comes, mm: the most of all points. */
    public double mostRadius() {
        return radii().max().orElse(0);
    }

    private DoubleStream radii() {
        return IntStream.range(0, pointCount()).mapToDouble(point -> StrictMath.hypot(y(point), z(point)));
    }

    /** How far aft a point lies, mm. */
    public double x(int point) {
        return points[3 * point];
    }

    /** How far towards 3 o'clock a point lies, mm. */
    public double y(int point) {
        return points[3 * point + 1];
    }

    /** How far towards 12 o'clock a point lies, mm. */
    public double z(int point) {
        return points[3 * point + 2];
    }

    /** How many faces there are. */
    public int faceCount() {
        return faceZone.length;
    }

    /** How many corners a face has, at least three. */
    public int cornerCount(int face) {
        return faceStart[face + 1] - faceStart[face];
    }

    /** The point at a corner of a face, counted from 0. */
    public int corner(int face, int k) {
        return corners[faceStart[face] + k];
    }

    /** The zone of a face, as an index into the names of the row's zones. */
    public int zone(int face) {
        return faceZone[face];
    }

    /** How many triangles the fans of all faces have. */
    public int triangleCount() {
        return corners.length - 2 * faceCount();
    }

    /** A copy of x, y and z of each point in turn. */
    public double[] points() {
        return points.clone();
    }

    /** Three points of each triangle of the fans in turn, in the order of the faces. */
    public int[] triangles() {
        int[] triangles = new int[3 * triangleCount()];
        int at = 0;
        for (int face = 0; face < faceCount(); face++) {
            for (int k = 2; k < cornerCount(face); k++) {
                triangles[at++] = corner(face, 0);
                triangles[at++] = corner(face, k - 1);
                triangles[at++] = corner(face, k);
            }
        }
        return triangles;
    }

    /** The face of each triangle of {@link #triangles()}. */
    public int[] triangleFaces() {
        int[] faces = new int[triangleCount()];
        int at = 0;
        for (int face = 0; face < faceCount(); face++) {
            for (int k = 2; k < cornerCount(face); k++) {
                faces[at++] = face;
            }
        }
        return faces;
    }

    /** Whether the other is a mesh of the same numbers. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Mesh mesh
                && Arrays.equals(points, mesh.points)
                && Arrays.equals(corners, mesh.corners)
                && Arrays.equals(faceStart, mesh.faceStart)
                && Arrays.equals(faceZone, mesh.faceZone);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(points) + Arrays.hashCode(corners);
    }
}
