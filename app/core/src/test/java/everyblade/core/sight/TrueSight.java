package everyblade.core.sight;

import everyblade.core.FineCaster;
import everyblade.core.Ray;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.Map;
import java.util.Optional;

/**
 * What is truly in sight of one airfoil of a row from one pose, at each angle that is asked for, where every row between stands
 * at one place. Knows nothing of tolerances, placements and journals. Casts nothing twice.
 */
final class TrueSight {

    private static final double STEP = 360.0 / FineCaster.STEPS;

    /** Farther, mm, than any scope tip and any facet of the tests' vanes reach together. */
    private static final double FAR = 20;

    private final Facets facets;
    private final FineCaster caster;
    private final Pose pose;
    /** By facet and step of the airfoil's clock: 0 not asked yet, 1 in sight, 2 not. */
    private final byte[] known;

    /**
     * A scope tip among airfoils.
     *
     * @param row that is looked at
     * @param turning rows that keep their place to it: clock of an airfoil of each while the one looked at stands at clock 0
     * @param still rows that keep their place to the scope tip: clock of an airfoil of each
     */
    TrueSight(EngineModel model, Row row, Pose pose, Map<Row, Double> turning, Map<Row, Double> still) {
        Mesh airfoil = mesh(model, row);
        this.facets = Facets.of(airfoil);
        this.pose = pose;
        this.caster = new FineCaster(airfoil, row.count(), model.walls());
        turning.forEach((other, clock) -> caster.turning(mesh(model, other), other.count(), Math.toRadians(clock)));
        still.forEach((other, clock) -> caster.still(mesh(model, other), other.count(), Math.toRadians(clock)));
        this.known = new byte[facets.count() * FineCaster.STEPS];
    }

    private static Mesh mesh(EngineModel model, Row row) {
        try {
            return Surfaces.of(model, row, Optional.empty(), Fineness.STANDARD, Map.of())
                    .orElseThrow();
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    /** Whether a scope tip of this diameter has room among vanes of a row, one of which stands at a clock angle. */
    static boolean hasRoom(EngineModel model, Row vanes, double clock, Pose pose, double diameter) {
        Mesh mesh = mesh(model, vanes);
        int[] points = mesh.triangles();
        double[] corners = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            corners[3 * i] = mesh.x(points[i]);
            corners[3 * i + 1] = mesh.y(points[i]);
            corners[3 * i + 2] = mesh.z(points[i]);
        }
        for (int i = 0; i < vanes.count(); i++) {
            double seen = pose.clock().degrees() - clock - 360.0 * i / vanes.count();
            double[] eye = Ray.turned(new double[] {pose.x(), 0, pose.r()}, Math.toRadians(seen));
            if (clearance(corners, eye) < diameter / 2) {
                return false;
            }
        }
        return true;
    }

    /** How far a point lies from the nearest triangle, by trying points all over each that is not far off. */
    private static double clearance(double[] corners, double[] point) {
        double least = Double.POSITIVE_INFINITY;
        for (int at = 0; at < corners.length; at += 9) {
            if (Math.abs(corners[at] - point[0]) > FAR || Math.abs(corners[at + 1] - point[1]) > FAR) {
                continue;
            }
            for (int i = 0; i <= 8; i++) {
                for (int k = 0; k <= 8 - i; k++) {
                    double square = 0;
                    for (int axis = 0; axis < 3; axis++) {
                        double c = corners[at + axis]
                                + i / 8.0 * (corners[at + 3 + axis] - corners[at + axis])
                                + k / 8.0 * (corners[at + 6 + axis] - corners[at + axis]);
                        square += (c - point[axis]) * (c - point[axis]);
                    }
                    least = Math.min(least, square);
                }
            }
        }
        return Math.sqrt(least);
    }

    int facets() {
        return facets.count();
    }

    double area(int facet) {
        return facets.area(facet);
    }

    /** Whether a facet comes into sight at one of the angles that are tried while the airfoil's clock runs from one to another, degrees. */
    boolean sees(int facet, double from, double to) {
        for (long step = (long) Math.ceil(from / STEP); step <= Math.floor(to / STEP); step++) {
            if (at(facet, (int) Math.floorMod(step, (long) FineCaster.STEPS))) {
                return true;
            }
        }
        return casts(facet, from) || casts(facet, to);
    }

    private boolean at(int facet, int step) {
        int i = facet * FineCaster.STEPS + step;
        if (known[i] == 0) {
            known[i] = (byte) (casts(facet, step * STEP) ? 1 : 2);
        }
        return known[i] == 1;
    }

    private boolean casts(int facet, double clock) {
        return caster.sees(facet, clock, pose, Criteria.USUAL);
    }
}
