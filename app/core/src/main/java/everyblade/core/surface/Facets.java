package everyblade.core.surface;

/**
 * Area, centre and direction of each face of a mesh: the area is the sum over the face's fan of triangles, the centroid
 * is weighted by it, the normal is the unit vector of the face's area vector and points to where the face looks. Never
 * changes; lengths are mm, areas mm².
 */
public final class Facets {

    private static final int WIDTH = 7;

    private final double[] values;

    private Facets(double[] values) {
        this.values = values;
    }

    /**
     * The facets of a mesh, in the order of its faces.
     *
     * @throws IllegalArgumentException if a face has no area
     */
    public static Facets of(Mesh mesh) {
        double[] values = new double[WIDTH * mesh.faceCount()];
        for (int face = 0; face < mesh.faceCount(); face++) {
            measure(mesh, face, values, WIDTH * face);
        }
        return new Facets(values);
    }

    /**
     * One place without area.
     *
     * @param x mm, as y and z
     * @param towards where its surface faces, of any length but 0: components along x, y and z
     */
    static Facets place(double x, double y, double z, double[] towards) {
        double length = Math.sqrt(towards[0] * towards[0] + towards[1] * towards[1] + towards[2] * towards[2]);
        return new Facets(new double[] {0, x, y, z, towards[0] / length, towards[1] / length, towards[2] / length});
    }

    private static void measure(Mesh mesh, int face, double[] values, int at) {
        double area = 0;
        double[] moment = new double[3];
        double[] vector = new double[3];
        int a = mesh.corner(face, 0);
        for (int k = 2; k < mesh.cornerCount(face); k++) {
            int b = mesh.corner(face, k - 1);
            int c = mesh.corner(face, k);
            double[] cross = cross(mesh, a, b, c);
            double share = Math.sqrt(cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]) / 2;
            area += share;
            moment[0] += share * (mesh.x(a) + mesh.x(b) + mesh.x(c)) / 3;
            moment[1] += share * (mesh.y(a) + mesh.y(b) + mesh.y(c)) / 3;
            moment[2] += share * (mesh.z(a) + mesh.z(b) + mesh.z(c)) / 3;
            for (int i = 0; i < 3; i++) {
                vector[i] += cross[i];
            }
        }
        double length = Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
        if (!(area > 0 && length > 0)) {
            throw new FlatFace(face);
        }
        values[at] = area;
        for (int i = 0; i < 3; i++) {
            values[at + 1 + i] = moment[i] / area;
            values[at + 4 + i] = vector[i] / length;
        }
    }

    private static double[] cross(Mesh mesh, int a, int b, int c) {
        double ux = mesh.x(b) - mesh.x(a);
        double uy = mesh.y(b) - mesh.y(a);
        double uz = mesh.z(b) - mesh.z(a);
        double vx = mesh.x(c) - mesh.x(a);
        double vy = mesh.y(c) - mesh.y(a);
        double vz = mesh.z(c) - mesh.z(a);
        return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }

    /** How many facets there are. */
    public int count() {
        return values.length / WIDTH;
    }

    /** Area of a facet, mm². */
    public double area(int facet) {
        return values[WIDTH * facet];
    }

    /** Coordinate of a facet's centroid, mm; axis 0 is x, 1 y, 2 z. */
    public double centroid(int facet, int axis) {
        return values[WIDTH * facet + 1 + axis];
    }

    /** Component of a facet's unit normal; axis 0 is x, 1 y, 2 z. */
    public double normal(int facet, int axis) {
        return values[WIDTH * facet + 4 + axis];
    }

    /** Area of all facets, mm². */
    public double area() {
        double sum = 0;
        for (int facet = 0; facet < count(); facet++) {
            sum += area(facet);
        }
        return sum;
    }
}
