package everyblade.core.surface;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Triangles in boxes within boxes, so that those far from what is asked about are passed over by whole groups: each box is
 * halved by the middles of its triangles along its longest side. Never changes. Building costs n log² n.
 *
 * <p>Flat, for what walks it is at the bottom of the computation of sight: nodes are numbered in the order of a walk that goes
 * down first, so a node's first child is the next one, and its second child, or what comes after it, is {@link #after}.
 */
public final class BoxTree {

    private static final int LEAF = 2;
    private static final int TRIANGLE = 9;

    private final double[] low;
    private final double[] high;
    private final int[] after;
    private final int[] from;
    private final int[] to;
    private final int[] order;
    private int nodes;

    /**
     * A tree of triangles.
     *
     * @param corners x, y and z of the three corners of each triangle in turn, mm; read now and never again
     */
    public BoxTree(double[] corners) {
        int count = corners.length / TRIANGLE;
        Integer[] items = new Integer[count];
        Arrays.setAll(items, i -> i);
        int most = Math.max(1, 2 * count);
        low = new double[3 * most];
        high = new double[3 * most];
        after = new int[most];
        from = new int[most];
        to = new int[most];
        if (count > 0) {
            build(corners, items, 0, count);
        }
        order = Arrays.stream(items).mapToInt(Integer::intValue).toArray();
    }

    private void build(double[] corners, Integer[] items, int first, int end) {
        int node = nodes++;
        from[node] = first;
        to[node] = end;
        bound(node, corners, items);
        if (end - first > LEAF) {
            int axis = longest(node);
            Arrays.sort(
                    items,
                    first,
                    end,
                    Comparator.comparingDouble(triangle -> corners[TRIANGLE * triangle + axis]
                            + corners[TRIANGLE * triangle + 3 + axis]
                            + corners[TRIANGLE * triangle + 6 + axis]));
            int middle = (first + end) / 2;
            build(corners, items, first, middle);
            build(corners, items, middle, end);
        }
        after[node] = nodes;
    }

    private void bound(int node, double[] corners, Integer[] items) {
        Arrays.fill(low, 3 * node, 3 * node + 3, Double.POSITIVE_INFINITY);
        Arrays.fill(high, 3 * node, 3 * node + 3, Double.NEGATIVE_INFINITY);
        for (int i = from[node]; i < to[node]; i++) {
            for (int k = 0; k < TRIANGLE; k++) {
                double value = corners[TRIANGLE * items[i] + k];
                int at = 3 * node + k % 3;
                low[at] = Math.min(low[at], value);
                high[at] = Math.max(high[at], value);
            }
        }
    }

    private int longest(int node) {
        int axis = 0;
        for (int i = 1; i < 3; i++) {
            axis = high(node, i) - low(node, i) > high(node, axis) - low(node, axis) ? i : axis;
        }
        return axis;
    }

    /** How many nodes there are, the root first; none without triangles. */
    public int nodes() {
        return nodes;
    }

    /** The least coordinate of a node's box along x (0), y or z (2), mm. */
    public double low(int node, int axis) {
        return low[3 * node + axis];
    }

    /** The greatest coordinate of a node's box along x (0), y or z (2), mm. */
    public double high(int node, int axis) {
        return high[3 * node + axis];
    }

    /** Where a walk goes on that leaves a node out. */
    public int after(int node) {
        return after[node];
    }

    /** Whether a node has no children. */
    public boolean isLeaf(int node) {
        return after[node] == node + 1;
    }

    /** The first place in the order of the triangles that is under a node. */
    public int from(int node) {
        return from[node];
    }

    /** The place after the last one that is under a node. */
    public int to(int node) {
        return to[node];
    }

    /** The index of the triangle at a place in the order. */
    public int triangle(int place) {
        return order[place];
    }
}
