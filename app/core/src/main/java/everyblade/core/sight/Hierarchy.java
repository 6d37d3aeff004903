package everyblade.core.sight;

import everyblade.core.surface.BoxTree;
import everyblade.core.surface.Mesh;

/** The triangles of one mesh with the boxes around them, in flat arrays, as a bundle of rays walks them. Never changes. */
final class Hierarchy {

    private static final int BOX = 6;
    private static final int TRIANGLE = 9;

    private final BoxTree tree;
    /** Middle and half width of each box along x, y, z. */
    private final double[] boxes;
    /** In the order of the tree. */
    private final double[] triangles;

    private final int[] faces;

    /** The triangles of a mesh. */
    Hierarchy(Mesh mesh) {
        double[] corners = corners(mesh);
        tree = new BoxTree(corners);
        boxes = new double[BOX * tree.nodes()];
        for (int node = 0; node < tree.nodes(); node++) {
            for (int axis = 0; axis < 3; axis++) {
                boxes[BOX * node + axis] = (tree.low(node, axis) + tree.high(node, axis)) / 2;
                boxes[BOX * node + 3 + axis] = (tree.high(node, axis) - tree.low(node, axis)) / 2;
            }
        }
        int[] face = mesh.triangleFaces();
        triangles = new double[corners.length];
        faces = new int[face.length];
        for (int i = 0; i < face.length; i++) {
            System.arraycopy(corners, TRIANGLE * tree.triangle(i), triangles, TRIANGLE * i, TRIANGLE);
            faces[i] = face[tree.triangle(i)];
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

    /**
     * Takes away what the triangles shade.
     *
     * @param open parameters of the fan's piece of a circle to which light comes through
     * @param spared a face that does not hide; −1 for none
     */
    void shade(RayBundle fan, IntervalSet open, int spared) {
        int node = 0;
        while (node < tree.nodes()) {
            int at = BOX * node;
            if (fan.misses(boxes[at], boxes[at + 1], boxes[at + 2], boxes[at + 3], boxes[at + 4], boxes[at + 5])) {
                node = tree.after(node);
                continue;
            }
            if (tree.isLeaf(node)) {
                for (int i = tree.from(node); i < tree.to(node); i++) {
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
