package everyblade.picture.sight;

import everyblade.core.surface.Mesh;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;

/** What an airfoil sweeps in a turn, as the surfaces that its edges sweep: they hide all that the airfoil ever hides. */
final class SweptChart {

    /** On the circle of radius 200 mm a step's chord stands off by a hundredth of a millimetre or two. */
    private static final int STEPS = 240;

    private SweptChart() {}

    static Mesh by(Mesh airfoil) {
        int points = airfoil.pointCount();
        double[] places = new double[3 * points * STEPS];
        for (int step = 0; step < STEPS; step++) {
            double turned = 2 * Math.PI * step / STEPS;
            for (int point = 0; point < points; point++) {
                double r = StrictMath.hypot(airfoil.y(point), airfoil.z(point));
                int at = 3 * (step * points + point);
                places[at] = airfoil.x(point);
                places[at + 1] = r * StrictMath.sin(turned);
                places[at + 2] = r * StrictMath.cos(turned);
            }
        }
        int[] corners = edges(airfoil).stream()
                .flatMapToInt(edge -> Arrays.stream(band((int) (edge >> Integer.SIZE), edge.intValue(), points)))
                .toArray();
        int faces = corners.length / 4;
        int[] starts = new int[faces + 1];
        Arrays.setAll(starts, face -> 4 * face);
        return new Mesh(places, corners, starts, new int[faces]);
    }

    private static int[] band(int a, int b, int points) {
        int[] corners = new int[4 * STEPS];
        for (int step = 0; step < STEPS; step++) {
            int here = step * points;
            int next = (step + 1) % STEPS * points;
            corners[4 * step] = here + a;
            corners[4 * step + 1] = here + b;
            corners[4 * step + 2] = next + b;
            corners[4 * step + 3] = next + a;
        }
        return corners;
    }

    private static Set<Long> edges(Mesh mesh) {
        Set<Long> edges = new LinkedHashSet<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int a = mesh.corner(face, k);
                int b = mesh.corner(face, (k + 1) % mesh.cornerCount(face));
                if (!level(mesh, a, b)) {
                    edges.add((long) Math.min(a, b) << Integer.SIZE | Math.max(a, b));
                }
            }
        }
        return edges;
    }

    /** An edge round the axis sweeps only its own line. */
    private static boolean level(Mesh mesh, int a, int b) {
        double rise = StrictMath.hypot(mesh.y(a), mesh.z(a)) - StrictMath.hypot(mesh.y(b), mesh.z(b));
        return StrictMath.hypot(mesh.x(a) - mesh.x(b), rise) < 1e-9;
    }
}
