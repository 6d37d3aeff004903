package everyblade.core;

import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * What a scope tip truly shows of a row whose surface is as fine as one likes: everything is turned to where it stands, step by
 * step, criteria are compared as angles and distances, and rays are cast against the triangles. A tree of boxes keeps that
 * bearable. Shares no code with what it is held against but the numbers of the mesh.
 */
public final class FineCaster {

    /** Clock angles in a turn that are tried. */
    public static final int STEPS = 1440;

    private static final int WALL_STEPS = 60;
    private static final double TOUCH = 1e-9;

    /**
     * Airfoils that turn with the row.
     *
     * @param offset clock angle of the first where the row's first airfoil stands at clock 0, radians
     */
    private record Body(Tree tree, int count, double offset) {}

    private final Facets facets;
    private final List<Body> bodies = new ArrayList<>();
    private final List<Wall> walls;

    /** @param walls that hide */
    public FineCaster(Mesh airfoil, int count, List<Wall> walls) {
        this.facets = Facets.of(airfoil);
        this.walls = walls;
        bodies.add(new Body(new Tree(airfoil), count, 0));
    }

    /** With another row of the same ring. */
    public FineCaster with(Mesh mate, int count, double offset) {
        bodies.add(new Body(new Tree(mate), count, offset));
        return this;
    }

    /** Of each facet the steps of the airfoil's clock at which it is in sight, criteria alike in all zones. */
    public BitSet[] sees(Pose pose, Criteria criteria) {
        BitSet[] seen = new BitSet[facets.count()];
        Arrays.setAll(seen, facet -> steps(facet, pose, criteria));
        return seen;
    }

    private BitSet steps(int facet, Pose pose, Criteria criteria) {
        BitSet steps = new BitSet(STEPS);
        for (int step = 0; step < STEPS; step++) {
            // Seen from the airfoil, the scope tip runs backwards.
            double turned = Math.toRadians(pose.clock().degrees()) - 2 * Math.PI * step / STEPS;
            double[] eye = {pose.x(), pose.r() * Math.sin(turned), pose.r() * Math.cos(turned)};
            if (meets(facet, eye, turned, pose, criteria) && !hidden(facet, eye)) {
                steps.set(step);
            }
        }
        return steps;
    }

    private double[] place(int facet) {
        return new double[] {facets.centroid(facet, 0), facets.centroid(facet, 1), facets.centroid(facet, 2)};
    }

    private boolean meets(int facet, double[] eye, double turned, Pose pose, Criteria criteria) {
        double[] line = minus(place(facet), eye);
        double distance = Math.sqrt(dot(line, line));
        double[] normal = {facets.normal(facet, 0), facets.normal(facet, 1), facets.normal(facet, 2)};
        double grazing = Math.toDegrees(Math.asin(-dot(line, normal) / distance));
        if (grazing < criteria.grazing().degrees() || distance < pose.near() || distance > pose.far()) {
            return false;
        }
        double t = pose.forward().tangential();
        double r = pose.forward().radial();
        double[] forward = {
            pose.forward().axial(),
            t * Math.cos(turned) + r * Math.sin(turned),
            r * Math.cos(turned) - t * Math.sin(turned)
        };
        return Math.toDegrees(Math.acos(dot(line, forward) / distance))
                <= pose.cone().degrees() / 2;
    }

    private boolean hidden(int facet, double[] eye) {
        double[] place = place(facet);
        for (Body body : bodies) {
            for (int i = 0; i < body.count(); i++) {
                double at = body.offset() + 2 * Math.PI * i / body.count();
                int spared = i == 0 && body == bodies.get(0) ? facet : -1;
                if (body.tree().crosses(back(eye, at), back(place, at), spared)) {
                    return true;
                }
            }
        }
        return walls.stream().anyMatch(wall -> crosses(wall, place, eye));
    }

    private static double[] back(double[] point, double angle) {
        double sine = Math.sin(angle);
        double cosine = Math.cos(angle);
        return new double[] {point[0], point[1] * cosine - point[2] * sine, point[2] * cosine + point[1] * sine};
    }

    private static boolean crosses(Wall wall, double[] from, double[] to) {
        double x = from[0];
        double r = Math.hypot(from[1], from[2]);
        for (int step = 1; step <= WALL_STEPS; step++) {
            double t = (double) step / WALL_STEPS;
            double nextX = from[0] + t * (to[0] - from[0]);
            double nextR = Math.hypot(from[1] + t * (to[1] - from[1]), from[2] + t * (to[2] - from[2]));
            for (int i = 1; i < wall.curve().size(); i++) {
                MeridionalPoint a = wall.curve().get(i - 1);
                MeridionalPoint b = wall.curve().get(i);
                double side0 = (b.x() - a.x()) * (r - a.r()) - (b.r() - a.r()) * (x - a.x());
                double side1 = (b.x() - a.x()) * (nextR - a.r()) - (b.r() - a.r()) * (nextX - a.x());
                double sideA = (nextX - x) * (a.r() - r) - (nextR - r) * (a.x() - x);
                double sideB = (nextX - x) * (b.r() - r) - (nextR - r) * (b.x() - x);
                if (side0 > TOUCH != side1 > TOUCH && sideA > 0 != sideB > 0) {
                    return true;
                }
            }
            x = nextX;
            r = nextR;
        }
        return false;
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

    /** Triangles in boxes in boxes, halved at the middle of the longest side. */
    private static final class Tree {

        private static final int FEW = 4;

        private final double[][][] triangles;
        private final int[] faces;
        private final List<double[]> boxes = new ArrayList<>();
        private final List<int[]> ranges = new ArrayList<>();

        Tree(Mesh mesh) {
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
                    order,
                    from,
                    to,
                    Comparator.comparingDouble(i -> all[i][0][axis] + all[i][1][axis] + all[i][2][axis]));
            build(order, from, (from + to) / 2, all);
            range[2] = boxes.size();
            build(order, (from + to) / 2, to, all);
        }

        boolean crosses(double[] from, double[] to, int spared) {
            return crosses(0, from, to, minus(to, from), spared);
        }

        private boolean crosses(int node, double[] from, double[] to, double[] line, int spared) {
            if (!meets(boxes.get(node), from, line)) {
                return false;
            }
            int[] range = ranges.get(node);
            if (range[2] >= 0) {
                return crosses(node + 1, from, to, line, spared) || crosses(range[2], from, to, line, spared);
            }
            for (int i = range[0]; i < range[1]; i++) {
                if (faces[i] != spared && crosses(from, line, triangles[i])) {
                    return true;
                }
            }
            return false;
        }

        private static boolean meets(double[] box, double[] from, double[] line) {
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

        /** Möller & Trumbore 1997, Journal of Graphics Tools 2(1), 21–28 (from memory). */
        private static boolean crosses(double[] from, double[] line, double[][] triangle) {
            double[] ab = minus(triangle[1], triangle[0]);
            double[] ac = minus(triangle[2], triangle[0]);
            double[] p = cross(line, ac);
            double determinant = dot(ab, p);
            if (determinant == 0) {
                return false;
            }
            double[] s = minus(from, triangle[0]);
            double u = dot(s, p) / determinant;
            double[] q = cross(s, ab);
            double v = dot(line, q) / determinant;
            double t = dot(ac, q) / determinant;
            return u >= 0 && v >= 0 && u + v <= 1 && t >= 0 && t <= 1 - 1e-6;
        }
    }
}
