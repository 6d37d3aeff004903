package everyblade.core.surface;

import everyblade.core.entry.Zoning;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** A mesh with what tests ask of it, computed apart from the code under test. */
record Solid(Mesh mesh, Zoning zoning, Facets facets) {

    Solid(Mesh mesh, Zoning zoning) {
        this(mesh, zoning, Facets.of(mesh));
    }

    double r(int point) {
        return Math.hypot(mesh.y(point), mesh.z(point));
    }

    /** Length along the circle from clock 0, clockwise positive. */
    double clockwise(int point) {
        return r(point) * Math.atan2(mesh.y(point), mesh.z(point));
    }

    String zone(int face) {
        return zoning.names().get(mesh.zone(face));
    }

    IntStream faces(String part) {
        return IntStream.range(0, mesh.faceCount())
                .filter(face -> List.of(zone(face).split("/")).contains(part));
    }

    double area(String part) {
        return faces(part).mapToDouble(facets::area).sum();
    }

    IntStream corners(int face) {
        return IntStream.range(0, mesh.cornerCount(face)).map(k -> mesh.corner(face, k));
    }

    IntStream points(IntPredicate which) {
        return IntStream.range(0, mesh.pointCount()).filter(which);
    }

    /** The points at which a value is within a millionth of the least of all. */
    List<Integer> least(IntToDoubleFunction of) {
        double least = points(p -> true).mapToDouble(of).min().orElseThrow();
        return points(p -> of.applyAsDouble(p) < least + 1e-6).boxed().toList();
    }

    /** The two points of a list that are farthest apart in x and along the circle, the foremost first. */
    int[] farthest(List<Integer> among) {
        int[] pair = {among.get(0), among.get(0)};
        double most = -1;
        for (int a : among) {
            for (int b : among) {
                double apart = Math.hypot(mesh.x(a) - mesh.x(b), clockwise(a) - clockwise(b));
                if (apart > most && mesh.x(a) <= mesh.x(b)) {
                    most = apart;
                    pair = new int[] {a, b};
                }
            }
        }
        return pair;
    }

    /** Edges that only one face has; fails if two faces have one in the same sense. */
    Set<List<Integer>> openEdges() {
        Set<List<Integer>> edges = new HashSet<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            int n = mesh.cornerCount(face);
            for (int k = 0; k < n; k++) {
                List<Integer> edge = List.of(mesh.corner(face, k), mesh.corner(face, (k + 1) % n));
                if (!edges.add(edge)) {
                    throw new AssertionError("two faces run the same way along " + edge);
                }
            }
        }
        Set<List<Integer>> open = new HashSet<>(edges);
        open.removeIf(edge -> edges.contains(List.of(edge.get(1), edge.get(0))));
        return open;
    }

    /**
     * Faces from whose centroid a ray along the normal does not meet the rest of the surface an even number of times, or
     * one against it not an odd number. A ray that leaves through an open end counts too; since {@link #openEdges()} holds
     * all faces of a connected surface to one sense, a few such do no harm where all are right or all wrong.
     */
    List<Integer> facesThatLookIntoTheMetal() {
        List<Integer> wrong = new ArrayList<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            if (crossings(face, 1) % 2 != 0 || crossings(face, -1) % 2 != 1) {
                wrong.add(face);
            }
        }
        return wrong;
    }

    private int crossings(int from, int sense) {
        double[] o = {facets.centroid(from, 0), facets.centroid(from, 1), facets.centroid(from, 2)};
        double[] d = {sense * facets.normal(from, 0), sense * facets.normal(from, 1), sense * facets.normal(from, 2)};
        int[] triangles = mesh.triangles();
        int[] owner = mesh.triangleFaces();
        int count = 0;
        for (int t = 0; t < owner.length; t++) {
            if (owner[t] != from && hit(o, d, triangles, 3 * t)) {
                count++;
            }
        }
        return count;
    }

    /** Möller and Trumbore 1997, "Fast, minimum storage ray/triangle intersection". */
    private boolean hit(double[] o, double[] d, int[] triangles, int at) {
        double[] a = place(triangles[at]);
        double[] e1 = minus(place(triangles[at + 1]), a);
        double[] e2 = minus(place(triangles[at + 2]), a);
        double[] p = cross(d, e2);
        double det = dot(e1, p);
        if (det == 0) {
            return false;
        }
        double[] s = minus(o, a);
        double u = dot(s, p) / det;
        double[] q = cross(s, e1);
        double v = dot(d, q) / det;
        return u >= 0 && v >= 0 && u + v <= 1 && dot(e2, q) / det > 0;
    }

    private double[] place(int point) {
        return new double[] {mesh.x(point), mesh.y(point), mesh.z(point)};
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
