package everyblade.core.sight;

import everyblade.core.surface.Mesh;

/**
 * The triangles of one mesh in a tree of boxes, in flat arrays: a node's first child follows it, its second child or
 * what comes after it stands in the node. Never changes. Building costs n log² n, a walk what it meets.
 */
final class Hierarchy {

    private static final int LEAF = 2;
    private static final int BOX = 6;
    private static final int TRIANGLE = 9;

    /** Middle and half width of each box along x, y, z. */
    private final double[] boxes;
    /** Of each node, where to go on if it is left out. */
    private final int[] after;
    /** Of each node, its first triangle if it is a leaf, else −1; and one more at the end. */
    private final int[] first;

    private final int[] end;
    private final double[] triangles;
    private final int[] faces;

    private int nodes;

    /** The triangles of a mesh. */
    Hierarchy(Mesh mesh) {
        int count = mesh.triangleCount();
        double[] corners = corners(mesh);
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[i] = i;
        }
        int most = Math.max(1, 2 * count);
        boxes = new double[BOX * most];
        after = new int[most];
        first = new int[most];
        end = new int[most];
        if (count > 0) {
            build(corners, order, 0, count);
        }
        int[] face = mesh.triangleFaces();
        triangles = new double[TRIANGLE * count];
        faces = new int[count];
        for (int i = 0; i < count; i++) {
            System.arraycopy(corners, TRIANGLE * order[i], triangles, TRIANGLE * i, TRIANGLE);
            faces[i] = face[order[i]];
        }
    }

    private static double[] corners(Mesh mesh) {
        int[] points = mesh.triangles();
        double[] corners = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            corners[3 * i] = mesh.x(points[i]);
            corners[3 * i + 1] = mesh.y(points[i]);
            corners[3 * i + 2] = mesh.z(points[i]);
        }
        return corners;
    }

    private void build(double[] corners, int[] order, int from, int to) {
        int node = nodes++;
        double[] low = new double[3];
        double[] high = new double[3];
        bound(corners, order, from, to, low, high);
        int axis = 0;
        for (int i = 0; i < 3; i++) {
            boxes[BOX * node + i] = (low[i] + high[i]) / 2;
            boxes[BOX * node + 3 + i] = (high[i] - low[i]) / 2;
            axis = high[i] - low[i] > high[axis] - low[axis] ? i : axis;
        }
        first[node] = -1;
        if (to - from <= LEAF) {
            first[node] = from;
            end[node] = to;
        } else {
            int middle = (from + to) / 2;
            sort(corners, order, from, to, axis);
            build(corners, order, from, middle);
            build(corners, order, middle, to);
        }
        after[node] = nodes;
    }

    private static void bound(double[] corners, int[] order, int from, int to, double[] low, double[] high) {
        java.util.Arrays.fill(low, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (int i = from; i < to; i++) {
            for (int k = 0; k < TRIANGLE; k++) {
                double value = corners[TRIANGLE * order[i] + k];
                low[k % 3] = Math.min(low[k % 3], value);
                high[k % 3] = Math.max(high[k % 3], value);
            }
        }
    }

    private static void sort(double[] corners, int[] order, int from, int to, int axis) {
        Integer[] boxed = java.util.Arrays.stream(order, from, to).boxed().toArray(Integer[]::new);
        java.util.Arrays.sort(
                boxed,
                java.util.Comparator.comparingDouble(triangle -> corners[TRIANGLE * triangle + axis]
                        + corners[TRIANGLE * triangle + 3 + axis]
                        + corners[TRIANGLE * triangle + 6 + axis]));
        for (int i = from; i < to; i++) {
            order[i] = boxed[i - from];
        }
    }

    /**
     * Takes away what the triangles shade.
     *
     * @param open parameters of the fan's piece of a circle to which light comes through
     * @param spared a face that does not hide; −1 for none
     */
    void shade(RayBundle fan, IntervalSet open, int spared) {
        int node = 0;
        while (node < nodes) {
            int at = BOX * node;
            if (fan.misses(boxes[at], boxes[at + 1], boxes[at + 2], boxes[at + 3], boxes[at + 4], boxes[at + 5])) {
                node = after[node];
                continue;
            }
            if (first[node] >= 0) {
                for (int i = first[node]; i < end[node]; i++) {
                    if (faces[i] != spared) {
                        fan.shade(triangles, TRIANGLE * i, open);
                    }
                }
                if (open.isEmpty()) {
                    return;
                }
            }
            node++;
        }
    }
}
