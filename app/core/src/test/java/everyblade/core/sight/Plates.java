package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Station.Heading;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Single facets, flat plates and plain scope tips of which a sight arc can be worked out by hand. */
final class Plates {

    static final Zoning UNDIVIDED = new Zoning(List.of(), List.of(), List.of());

    /** Nothing but facing is asked. */
    static final Criteria FACING = new Criteria(Turn.ZERO, Map.of(), OptionalDouble.empty());

    private Plates() {}

    /** A small square facet with its middle at (x, y, z), facing along the normal. */
    static Mesh facet(double x, double y, double z, double nx, double ny, double nz) {
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double[] n = {nx / length, ny / length, nz / length};
        double[] along = Math.abs(n[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 0, 1};
        double[] u = cross(along, n);
        double size = 1e-3 / Math.sqrt(u[0] * u[0] + u[1] * u[1] + u[2] * u[2]);
        double[] v = cross(n, u);
        double[] points = new double[12];
        int[][] signs = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
        for (int i = 0; i < 4; i++) {
            points[3 * i] = x + size * (signs[i][0] * u[0] + signs[i][1] * v[0]);
            points[3 * i + 1] = y + size * (signs[i][0] * u[1] + signs[i][1] * v[1]);
            points[3 * i + 2] = z + size * (signs[i][0] * u[2] + signs[i][1] * v[2]);
        }
        return new Mesh(points, new int[] {0, 1, 2, 3}, new int[] {0, 4}, new int[] {0});
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    /** A flat plate along the axis from x = 0 to 1 in equal facets, tall up the radius, that faces clockwise. */
    static Mesh plate(int facets, double radius, double half) {
        double[] points = new double[6 * (facets + 1)];
        int[] corners = new int[4 * facets];
        int[] start = new int[facets + 1];
        for (int i = 0; i <= facets; i++) {
            points[6 * i] = (double) i / facets;
            points[6 * i + 2] = radius - half;
            points[6 * i + 3] = (double) i / facets;
            points[6 * i + 5] = radius + half;
        }
        for (int i = 0; i < facets; i++) {
            System.arraycopy(new int[] {2 * i, 2 * i + 1, 2 * i + 3, 2 * i + 2}, 0, corners, 4 * i, 4);
            start[i + 1] = 4 * (i + 1);
        }
        return new Mesh(points, corners, start, new int[facets]);
    }

    /** A wide scope tip that sees at any distance. */
    static Pose pose(double x, double r, double clock, double axial, double tangential, double radial) {
        return new Pose(
                x,
                r,
                Turn.ofDegrees(clock),
                new Heading(axial, tangential, radial),
                new Heading(0, 1, 0),
                Turn.ofDegrees(178),
                0,
                1e9,
                640);
    }

    static Pose within(Pose pose, double near, double far) {
        return new Pose(
                pose.x(), pose.r(), pose.clock(), pose.forward(), pose.up(), pose.cone(), near, far, pose.pixels());
    }

    static Pose cone(Pose pose, double cone) {
        return new Pose(
                pose.x(),
                pose.r(),
                pose.clock(),
                pose.forward(),
                pose.up(),
                Turn.ofDegrees(cone),
                pose.near(),
                pose.far(),
                pose.pixels());
    }

    static Wall cylinder(String id, double radius) {
        return new Wall(
                id, Optional.empty(), List.of(new MeridionalPoint(-100, radius), new MeridionalPoint(100, radius)));
    }

    static SightArcs sight(SightScene scene, Pose pose, Criteria criteria) {
        return SightArcs.compute(scene, pose, criteria, Progress.NONE);
    }

    /** Start and end of the one arc of a set, degrees; the start from −180° to 180°. */
    static double[] only(ArcSet arcs) {
        if (arcs.arcs().size() != 1) {
            throw new AssertionError("not one arc but " + arcs);
        }
        Arc arc = arcs.arcs().get(0);
        double start = (double) arc.start() / Circle.TICKS_PER_DEGREE;
        double from = start > 180 ? start - 360 : start;
        return new double[] {from, from + (double) arc.length() / Circle.TICKS_PER_DEGREE};
    }
}
