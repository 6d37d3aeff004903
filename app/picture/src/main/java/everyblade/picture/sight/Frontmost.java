package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Lens;
import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which surface is nearest at the middle of each picture element of a round field, by a depth buffer. Faces hide from either
 * side. Costs what the triangles and their picture elements cost; a surface wholly outside the cone costs next to nothing.
 */
final class Frontmost {

    /** What lies nothing ahead cannot be drawn; surfaces are cut this far ahead of the scope tip, mm. */
    private static final double CUT = 1e-3;

    /** Where no surface is. */
    static final int NOTHING = -1;

    private final Lens lens;
    private final int size;
    private final List<Body> bodies = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>(List.of(0));
    private final int[] face;
    private final double[] nearness;
    private final float[] facing;

    /** An empty field, so many picture elements across. */
    Frontmost(Lens lens, int size) {
        this.lens = lens;
        this.size = size;
        face = new int[size * size];
        nearness = new double[size * size];
        facing = new float[size * size];
        Arrays.fill(face, NOTHING);
    }

    /**
     * One face of one surface.
     *
     * @param body it is of
     * @param copy index of its clock in the body
     * @param face of the mesh
     */
    record Place(Body body, int copy, int face) {}

    /** Adds surfaces. */
    void draw(Body body) {
        int first = starts.get(bodies.size());
        int faces = body.mesh().faceCount();
        bodies.add(body);
        starts.add(first + faces * body.clocks().size());
        for (int copy = 0; copy < body.clocks().size(); copy++) {
            draw(body.mesh(), body.clocks().get(copy), first + faces * copy);
        }
    }

    /** A number that stands for the face nearest at a picture element, or {@link #NOTHING}. */
    int at(int column, int line) {
        return face[line * size + column];
    }

    /** The face that a number stands for. */
    Place place(int number) {
        int index = 0;
        while (starts.get(index + 1) <= number) {
            index++;
        }
        Body body = bodies.get(index);
        int within = number - starts.get(index);
        return new Place(
                body, within / body.mesh().faceCount(), within % body.mesh().faceCount());
    }

    /** The number of a face. */
    int number(Body body, int copy, int of) {
        return starts.get(bodies.indexOf(body)) + copy * body.mesh().faceCount() + of;
    }

    /** How far ahead of the scope tip it lies, mm along the optical axis. */
    double depth(int column, int line) {
        return 1 / nearness[line * size + column];
    }

    /** The cosine of the angle between line of sight and the outward normal there, negative where its inner side shows. */
    double facing(int column, int line) {
        return facing[line * size + column];
    }

    private void draw(Mesh mesh, Turn clock, int id) {
        double turned = Math.toRadians(clock.wrapped().degrees());
        double sine = StrictMath.sin(turned);
        double cosine = StrictMath.cos(turned);
        double[][] seen = new double[mesh.pointCount()][];
        boolean ahead = false;
        for (int point = 0; point < seen.length; point++) {
            double y = mesh.y(point);
            double z = mesh.z(point);
            seen[point] = lens.seen(mesh.x(point), y * cosine + z * sine, z * cosine - y * sine);
            ahead |= seen[point][2] > CUT;
        }
        if (!ahead) {
            return;
        }
        for (int at = 0; at < mesh.faceCount(); at++) {
            for (int k = 2; k < mesh.cornerCount(at); k++) {
                cut(id + at, seen[mesh.corner(at, 0)], seen[mesh.corner(at, k - 1)], seen[mesh.corner(at, k)]);
            }
        }
    }

    /** Leaves of a triangle what lies ahead: nothing, a triangle, or a four-sided part. */
    private void cut(int id, double[]... corners) {
        double[][] kept = new double[4][];
        int count = 0;
        for (int k = 0; k < 3; k++) {
            double[] here = corners[k];
            double[] next = corners[(k + 1) % 3];
            if (here[2] >= CUT) {
                kept[count++] = here;
            }
            if (here[2] >= CUT != next[2] >= CUT) {
                double share = (CUT - here[2]) / (next[2] - here[2]);
                kept[count++] =
                        new double[] {here[0] + share * (next[0] - here[0]), here[1] + share * (next[1] - here[1]), CUT
                        };
            }
        }
        for (int k = 2; k < count; k++) {
            fill(id, normal(corners), kept[0], kept[k - 1], kept[k]);
        }
    }

    private static double[] normal(double[]... corners) {
        double[] u = new double[3];
        double[] v = new double[3];
        for (int i = 0; i < 3; i++) {
            u[i] = corners[1][i] - corners[0][i];
            v[i] = corners[2][i] - corners[0][i];
        }
        // Right, up and ahead make a left-handed frame, so the product is turned about.
        double[] n = {v[1] * u[2] - v[2] * u[1], v[2] * u[0] - v[0] * u[2], v[0] * u[1] - v[1] * u[0]};
        double length = length(n);
        return length == 0 ? n : new double[] {n[0] / length, n[1] / length, n[2] / length};
    }

    private void fill(int id, double[] normal, double[] a, double[] b, double[] c) {
        double[] x = {lens.across(a), lens.across(b), lens.across(c)};
        double[] y = {lens.down(a), lens.down(b), lens.down(c)};
        double area = (x[1] - x[0]) * (y[2] - y[0]) - (y[1] - y[0]) * (x[2] - x[0]);
        if (area == 0) {
            return;
        }
        // In the picture plane it is the inverse of the depth that is linear.
        double[] near = {1 / a[2] / area, 1 / b[2] / area, 1 / c[2] / area};
        double low = Math.min(y[0], Math.min(y[1], y[2]));
        double high = Math.max(y[0], Math.max(y[1], y[2]));
        int toLine = (int) Math.min(size - 1, Math.floor(high - 0.5));
        for (int line = (int) Math.max(0, Math.ceil(low - 0.5)); line <= toLine; line++) {
            fill(id, normal, x, y, near, area > 0 ? 1 : -1, line);
        }
    }

    /** One line of a triangle: its corners' shares are linear along it, and none may be negative within. */
    private void fill(int id, double[] normal, double[] x, double[] y, double[] near, int sense, int line) {
        double down = line + 0.5;
        double from = 0.5;
        double to = size - 0.5;
        double constant = 0;
        double slope = 0;
        for (int k = 0; k < 3; k++) {
            int p = (k + 1) % 3;
            int q = (k + 2) % 3;
            double share = x[p] * (y[q] - down) - x[q] * (y[p] - down);
            double rise = y[p] - y[q];
            constant += share * near[k];
            slope += rise * near[k];
            if (rise * sense > 0) {
                from = Math.max(from, -share / rise);
            } else if (rise * sense < 0) {
                to = Math.min(to, -share / rise);
            } else if (share * sense < 0) {
                return;
            }
        }
        int last = (int) Math.floor(to - 0.5);
        for (int column = (int) Math.ceil(from - 0.5); column <= last; column++) {
            double nearer = constant + slope * (column + 0.5);
            int at = line * size + column;
            if (nearer > nearness[at]) {
                nearness[at] = nearer;
                face[at] = id;
                double[] towards = lens.towards(column, line);
                facing[at] = (float) (-(normal[0] * towards[0] + normal[1] * towards[1] + normal[2]) / length(towards));
            }
        }
    }

    private static double length(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }
}
