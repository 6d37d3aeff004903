package everyblade.core;

import static everyblade.core.Ray.minus;

import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The triangles of a mesh in boxes in boxes, halved at the middle of the longest side, so that rays against them are bearable. */
final class BoxedTriangles {

    private static final int FEW = 4;
    private static final double TOUCH = 1e-9;

    /** A ray ends before the surface on which its end lies. */
    private static final double BEFORE = 1 - 1e-6;

    private final double[][][] triangles;
    private final int[] faces;
    private final List<double[]> boxes = new ArrayList<>();
    private final List<int[]> ranges = new ArrayList<>();

    BoxedTriangles(Mesh mesh) {
        int[] points = mesh.triangles();
        int[] of = mesh.triangleFaces();
        Integer[] order = new Integer[of.length];
        double[][][] all = new double[of.length][3][];
        for (int i = 0; i < of.length; i++) {
            order[i] = i;
            for (int k = 0; k < 3; k++) {
                int p = points[3 * i + k];
                all[i][k] = new double[] {mesh.x(p), mesh.y(p), mesh.z(p)};
            }
        }
        build(order, 0, order.length, all);
        triangles = Arrays.stream(order).map(i -> all[i]).toArray(double[][][]::new);
        faces = Arrays.stream(order).mapToInt(i -> of[i]).toArray();
    }

    /** A node's children are the next one and the one whose number stands third in its range. */
    private void build(Integer[] order, int from, int to, double[][][] all) {
        double[] box = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
        for (int i = from; i < to; i++) {
            for (double[] corner : all[order[i]]) {
                for (int axis = 0; axis < 3; axis++) {
                    box[axis] = Math.min(box[axis], corner[axis]);
                    box[axis + 3] = Math.max(box[axis + 3], corner[axis]);
                }
            }
        }
        boxes.add(box);
        int[] range = {from, to, -1};
        ranges.add(range);
        if (to - from <= FEW) {
            return;
        }
        int longest = 0;
        for (int axis = 1; axis < 3; axis++) {
            longest = box[axis + 3] - box[axis] > box[longest + 3] - box[longest] ? axis : longest;
        }
        int axis = longest;
        Arrays.sort(
                order, from, to, Comparator.comparingDouble(i -> all[i][0][axis] + all[i][1][axis] + all[i][2][axis]));
        build(order, from, (from + to) / 2, all);
        range[2] = boxes.size();
        build(order, (from + to) / 2, to, all);
    }

    /** The middle of all of them. */
    double[] middle() {
        double[] box = boxes.get(0);
        return new double[] {(box[0] + box[3]) / 2, (box[1] + box[4]) / 2, (box[2] + box[5]) / 2};
    }

    /** How far from the middle they reach. */
    double radius() {
        double[] half = minus(middle(), boxes.get(0));
        return Math.sqrt(Ray.dot(half, half));
    }

    /**
     * Whether a ray meets one before it ends.
     *
     * @param spared a face that is not asked; −1 for none
     */
    boolean crosses(double[] from, double[] to, int spared) {
        return crosses(0, from, to, minus(to, from), spared);
    }

    private boolean crosses(int node, double[] from, double[] to, double[] line, int spared) {
        if (!enters(boxes.get(node), from, line)) {
            return false;
        }
        int[] range = ranges.get(node);
        if (range[2] >= 0) {
            return crosses(node + 1, from, to, line, spared) || crosses(range[2], from, to, line, spared);
        }
        for (int i = range[0]; i < range[1]; i++) {
            double[][] corners = triangles[i];
            if (faces[i] != spared && Ray.meets(from, to, corners[0], corners[1], corners[2]) <= BEFORE) {
                return true;
            }
        }
        return false;
    }

    private static boolean enters(double[] box, double[] from, double[] line) {
        double low = 0;
        double high = 1;
        for (int axis = 0; axis < 3; axis++) {
            double a = (box[axis] - from[axis]) / line[axis];
            double b = (box[axis + 3] - from[axis]) / line[axis];
            low = Math.max(low, Math.min(a, b));
            high = Math.min(high, Math.max(a, b));
        }
        return low <= high + TOUCH;
    }
}
