package everyblade.practice.eye;

import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A surface made ready to be drawn: triangles, a smooth normal at each point, and a ball that holds it all, so that what is out
 * of the picture costs nothing. Never changes; mm, standing at clock 0.
 */
public final class Solid {

    private static final double SECTOR = Math.PI / 12;
    private static final double STRETCH = 25;

    final Finish finish;
    final float[] points;
    final float[] normals;
    final int[] triangles;
    final int[] faces;
    final float[] middle = new float[3];
    final float radius;

    private Solid(Finish finish, float[] points, float[] normals, int[] triangles, int[] faces) {
        this.finish = finish;
        this.points = points;
        this.normals = normals;
        this.triangles = triangles;
        this.faces = faces;
        this.radius = enclose();
    }

    /** A whole mesh. */
    public static Solid of(Mesh mesh, Finish finish) {
        int[] triangles = mesh.triangles();
        float[] points = floats(mesh.points());
        return new Solid(finish, points, normals(points, triangles), triangles, mesh.triangleFaces());
    }

    /** A mesh that goes all the way round, in parts of which most can be left out of a picture. */
    public static List<Solid> parts(Mesh mesh, Finish finish) {
        Solid whole = of(mesh, finish);
        Map<Long, List<Integer>> parts = new TreeMap<>();
        for (int triangle = 0; triangle < whole.faces.length; triangle++) {
            int point = 3 * whole.triangles[3 * triangle];
            double clock = StrictMath.atan2(whole.points[point + 1], whole.points[point + 2]);
            long sector = (long) Math.floor(clock / SECTOR);
            long stretch = (long) Math.floor(whole.points[point] / STRETCH);
            parts.computeIfAbsent(stretch * 1000 + sector, key -> new ArrayList<>())
                    .add(triangle);
        }
        return parts.values().stream().map(whole::only).toList();
    }

    private Solid only(List<Integer> some) {
        Map<Integer, Integer> kept = new HashMap<>();
        int[] newTriangles = new int[3 * some.size()];
        int[] newFaces = new int[some.size()];
        for (int i = 0; i < newTriangles.length; i++) {
            int old = triangles[3 * some.get(i / 3) + i % 3];
            newTriangles[i] = kept.computeIfAbsent(old, key -> kept.size());
            newFaces[i / 3] = faces[some.get(i / 3)];
        }
        float[] newPoints = new float[3 * kept.size()];
        float[] newNormals = new float[3 * kept.size()];
        kept.forEach((old, now) -> {
            System.arraycopy(points, 3 * old, newPoints, 3 * now, 3);
            System.arraycopy(normals, 3 * old, newNormals, 3 * now, 3);
        });
        return new Solid(finish, newPoints, newNormals, newTriangles, newFaces);
    }

    private static float[] floats(double[] values) {
        float[] floats = new float[values.length];
        for (int i = 0; i < floats.length; i++) {
            floats[i] = (float) values[i];
        }
        return floats;
    }

    /** The mean of the normals of the triangles that meet at a point, by their areas. */
    private static float[] normals(float[] points, int[] triangles) {
        float[] normals = new float[points.length];
        for (int at = 0; at < triangles.length; at += 3) {
            int a = 3 * triangles[at];
            int b = 3 * triangles[at + 1];
            int c = 3 * triangles[at + 2];
            float[] n = cross(points, a, b, c);
            for (int point : new int[] {a, b, c}) {
                for (int i = 0; i < 3; i++) {
                    normals[point + i] += n[i];
                }
            }
        }
        for (int at = 0; at < normals.length; at += 3) {
            float length = (float) Math.sqrt(
                    normals[at] * normals[at] + normals[at + 1] * normals[at + 1] + normals[at + 2] * normals[at + 2]);
            for (int i = 0; i < 3 && length > 0; i++) {
                normals[at + i] /= length;
            }
        }
        return normals;
    }

    private static float[] cross(float[] points, int a, int b, int c) {
        float ux = points[b] - points[a];
        float uy = points[b + 1] - points[a + 1];
        float uz = points[b + 2] - points[a + 2];
        float vx = points[c] - points[a];
        float vy = points[c + 1] - points[a + 1];
        float vz = points[c + 2] - points[a + 2];
        return new float[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }

    private float enclose() {
        float[] least = new float[3];
        float[] most = new float[3];
        Arrays.fill(least, Float.POSITIVE_INFINITY);
        Arrays.fill(most, Float.NEGATIVE_INFINITY);
        for (int at = 0; at < points.length; at++) {
            least[at % 3] = Math.min(least[at % 3], points[at]);
            most[at % 3] = Math.max(most[at % 3], points[at]);
        }
        double square = 0;
        for (int i = 0; i < 3; i++) {
            middle[i] = (least[i] + most[i]) / 2;
            square += (most[i] - least[i]) * (most[i] - least[i]) / 4;
        }
        return (float) Math.sqrt(square);
    }

    /**
     * How far a place lies from the nearest of its triangles, mm.
     *
     * @param within anything farther need not be told exactly: it is then told as not nearer than this
     */
    double distance(double x, double y, double z, double within) {
        double dx = x - middle[0];
        double dy = y - middle[1];
        double dz = z - middle[2];
        if (dx * dx + dy * dy + dz * dz > (radius + within) * (radius + within)) {
            return within;
        }
        double least = within * within;
        for (int at = 0; at < triangles.length; at += 3) {
            least = Math.min(
                    least,
                    NearestPoint.square(
                            points, 3 * triangles[at], 3 * triangles[at + 1], 3 * triangles[at + 2], x, y, z));
        }
        return Math.sqrt(least);
    }
}
