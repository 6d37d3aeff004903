package everyblade.core.check;

import everyblade.core.surface.BoxTree;
import java.util.function.IntPredicate;

/** Triangles with the boxes by which pairs of them that cannot meet are passed over. Never changes. */
record TriangleTree(Triangles triangles, BoxTree boxes) {

    /** Whether two triangles, by their indices, are such as are looked for. */
    interface PairTest {
        boolean test(int one, int other);
    }

    TriangleTree(Triangles triangles) {
        this(triangles, new BoxTree(triangles.corners()));
    }

    /** Whether a triangle of this and one of the other, whose boxes meet, pass the test. */
    boolean anyPair(TriangleTree other, PairTest test) {
        return boxes.nodes() > 0 && other.boxes.nodes() > 0 && anyPair(0, other, 0, test);
    }

    private boolean anyPair(int mine, TriangleTree other, int theirs, PairTest test) {
        if (!meets(mine, other.boxes, theirs)) {
            return false;
        }
        if (boxes.isLeaf(mine) && other.boxes.isLeaf(theirs)) {
            return anyTriangle(mine, one -> other.anyTriangle(theirs, another -> test.test(one, another)));
        }
        boolean splitMine = other.boxes.isLeaf(theirs) || !boxes.isLeaf(mine) && size(mine) >= other.size(theirs);
        return splitMine
                ? anyPair(mine + 1, other, theirs, test) || anyPair(boxes.after(mine + 1), other, theirs, test)
                : anyPair(mine, other, theirs + 1, test) || anyPair(mine, other, other.boxes.after(theirs + 1), test);
    }

    private boolean meets(int mine, BoxTree others, int theirs) {
        for (int axis = 0; axis < 3; axis++) {
            if (boxes.low(mine, axis) > others.high(theirs, axis)
                    || boxes.high(mine, axis) < others.low(theirs, axis)) {
                return false;
            }
        }
        return true;
    }

    private int size(int node) {
        return boxes.to(node) - boxes.from(node);
    }

    private boolean anyTriangle(int node, IntPredicate test) {
        for (int place = boxes.from(node); place < boxes.to(node); place++) {
            if (test.test(boxes.triangle(place))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a triangle whose box meets this one passes the test. */
    boolean any(double[] low, double[] high, IntPredicate test) {
        int node = 0;
        while (node < boxes.nodes()) {
            boolean apart = false;
            for (int axis = 0; axis < 3; axis++) {
                apart |= boxes.low(node, axis) > high[axis] || boxes.high(node, axis) < low[axis];
            }
            if (!apart && boxes.isLeaf(node) && anyTriangle(node, test)) {
                return true;
            }
            node = apart ? boxes.after(node) : node + 1;
        }
        return false;
    }
}
