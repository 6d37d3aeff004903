package everyblade.picture.section;

import everyblade.core.surface.Mesh;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One airfoil of a row, asked by radius: where it is cut by a cylinder round the axis.
 *
 * @param row of the airfoil
 * @param mesh of the airfoil, standing at clock 0
 */
record RowSurface(Row row, Mesh mesh) {

    /** How many cylinders tell an outline. */
    private static final int LEVELS = 24;

    /** How far inside the least and greatest radius the outermost cylinders lie, as a share of the way between. */
    private static final double INSET = 0.004;

    /**
     * What an airfoil takes of a cylinder.
     *
     * @param radius of the cylinder, mm
     * @param front least x, mm
     * @param rear greatest x, mm
     * @param first least clock angle, radians
     * @param last greatest clock angle, radians
     */
    record Extent(double radius, double front, double rear, double first, double last) {}

    double leastRadius() {
        return mesh.leastRadius();
    }

    double mostRadius() {
        return mesh.mostRadius();
    }

    /** From the root to the tip. */
    List<Extent> outline() {
        double least = leastRadius();
        double height = mostRadius() - least;
        List<Extent> outline = new ArrayList<>();
        for (int i = 0; i <= LEVELS; i++) {
            double share = INSET + (1 - 2 * INSET) * i / LEVELS;
            extent(least + height * share).ifPresent(outline::add);
        }
        return outline;
    }

    /** Empty if the cylinder misses the airfoil. */
    Optional<Extent> extent(double radius) {
        List<double[]> cut = cut(radius);
        if (cut.isEmpty()) {
            return Optional.empty();
        }
        double front = Double.POSITIVE_INFINITY;
        double rear = Double.NEGATIVE_INFINITY;
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (double[] point : cut) {
            front = Math.min(front, point[0]);
            rear = Math.max(rear, point[0]);
            first = Math.min(first, point[1]);
            last = Math.max(last, point[1]);
        }
        return Optional.of(new Extent(radius, front, rear, first, last));
    }

    /** Where edges of the airfoil's faces meet a cylinder: x and clock angle of each place. */
    private List<double[]> cut(double radius) {
        List<double[]> places = new ArrayList<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            int corners = mesh.cornerCount(face);
            for (int k = 0; k < corners; k++) {
                int from = mesh.corner(face, k);
                int to = mesh.corner(face, (k + 1) % corners);
                double fromR = StrictMath.hypot(mesh.y(from), mesh.z(from)) - radius;
                double toR = StrictMath.hypot(mesh.y(to), mesh.z(to)) - radius;
                if (fromR > 0 != toR > 0) {
                    places.add(at(from, to, fromR / (fromR - toR)));
                }
            }
        }
        return places;
    }

    /** x and clock angle at a share of the way between two points. */
    private double[] at(int from, int to, double share) {
        double y = mesh.y(from) + share * (mesh.y(to) - mesh.y(from));
        double z = mesh.z(from) + share * (mesh.z(to) - mesh.z(from));
        return new double[] {mesh.x(from) + share * (mesh.x(to) - mesh.x(from)), StrictMath.atan2(y, z)};
    }
}
