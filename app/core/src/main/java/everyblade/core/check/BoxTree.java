package everyblade.core.check;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Triangles in boxes within boxes, so that pairs that cannot meet are passed over by whole groups. Never changes.
 *
 * <p>Building costs n log n; asking for a pair that meets costs about as much as there are triangles near each other.
 */
final class BoxTree {

    private static final int LEAF = 4;

    private final Triangles triangles;
    private final int[] order;
    private final Node root;

    /** Triangles from one place in the order to before another, and the box around them. */
    private record Node(int from, int to, double[] low, double[] high, Node left, Node right) {

        boolean isLeaf() {
            return left == null;
        }

        boolean meets(double[] otherLow, double[] otherHigh) {
            for (int axis = 0; axis < 3; axis++) {
                if (low[axis] > otherHigh[axis] || high[axis] < otherLow[axis]) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Whether two triangles, by their indices, are such as are looked for. */
    interface PairTest {
        boolean test(int one, int other);
    }

    BoxTree(Triangles triangles) {
        this.triangles = triangles;
        Integer[] boxed = IntStream.range(0, triangles.count()).boxed().toArray(Integer[]::new);
        this.root = built(boxed, 0, boxed.length);
        this.order = IntStream.range(0, boxed.length).map(i -> boxed[i]).toArray();
    }

    Triangles triangles() {
        return triangles;
    }

    private Node built(Integer[] items, int from, int to) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = from; i < to; i++) {
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(low[axis], triangles.low(items[i], axis));
                high[axis] = Math.max(high[axis], triangles.high(items[i], axis));
            }
        }
        if (to - from <= LEAF) {
            return new Node(from, to, low, high, null, null);
        }
        int widest = 0;
        for (int axis = 1; axis < 3; axis++) {
            widest = high[axis] - low[axis] > high[widest] - low[widest] ? axis : widest;
        }
        int along = widest;
        java.util.Arrays.sort(
                items, from, to, java.util.Comparator.comparingDouble(item -> triangles.low(item, along)));
        int middle = (from + to) >>> 1;
        return new Node(from, to, low, high, built(items, from, middle), built(items, middle, to));
    }

    /** Whether a triangle of this and one of the other, whose boxes meet, pass the test. */
    boolean anyPair(BoxTree other, PairTest test) {
        return anyPair(root, other, other.root, test);
    }

    private boolean anyPair(Node mine, BoxTree other, Node theirs, PairTest test) {
        if (!mine.meets(theirs.low, theirs.high)) {
            return false;
        }
        if (mine.isLeaf() && theirs.isLeaf()) {
            for (int i = mine.from; i < mine.to; i++) {
                for (int j = theirs.from; j < theirs.to; j++) {
                    if (test.test(order[i], other.order[j])) {
                        return true;
                    }
                }
            }
            return false;
        }
        boolean splitMine = theirs.isLeaf() || !mine.isLeaf() && mine.to - mine.from >= theirs.to - theirs.from;
        return splitMine
                ? anyPair(mine.left, other, theirs, test) || anyPair(mine.right, other, theirs, test)
                : anyPair(mine, other, theirs.left, test) || anyPair(mine, other, theirs.right, test);
    }

    /** Whether a triangle whose box meets this one passes the test. */
    boolean any(double[] low, double[] high, IntPredicate test) {
        return any(root, low, high, test);
    }

    private boolean any(Node node, double[] low, double[] high, IntPredicate test) {
        if (!node.meets(low, high)) {
            return false;
        }
        if (!node.isLeaf()) {
            return any(node.left, low, high, test) || any(node.right, low, high, test);
        }
        return IntStream.range(node.from, node.to).anyMatch(i -> test.test(order[i]));
    }
}
