package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is truly in sight of one airfoil of a row in an engine of the tests, where the scope tip and every vane stand at one
 * place each: criteria as {@link NaiveSight} says them, and a ray against every triangle near it, at each angle that is
 * asked for, on a surface as fine as is asked for. Knows nothing of tolerances, placements and journals. Casts nothing twice.
 */
public final class TrueSight {

    /** The radius of the hub of {@link everyblade.core.ShapedEngine}, less what rounding takes. */
    private static final double HUB = 99.99;

    private static final double STEP = 0.25;
    private static final int STEPS = (int) (360 / STEP);

    private final Mesh airfoil;
    private final Facets facets;
    private final NaiveSight criteria;
    private final List<Body> turning = new ArrayList<>();
    private final List<Body> still = new ArrayList<>();
    /** By facet and step of the airfoil's clock: 0 not asked yet, 1 in sight, 2 not. */
    private final byte[] known;

    /** The triangles of one airfoil where it stands, and a ball round them. */
    private record Body(double[] corners, int[] face, double[] middle, double radius) {

        static Body of(Mesh mesh, double clock) {
            int[] points = mesh.triangles();
            double[] corners = new double[3 * points.length];
            double[] middle = new double[3];
            for (int i = 0; i < points.length; i++) {
                double[] at = turned(mesh.x(points[i]), mesh.y(points[i]), mesh.z(points[i]), clock);
                System.arraycopy(at, 0, corners, 3 * i, 3);
                for (int k = 0; k < 3; k++) {
                    middle[k] += at[k] / points.length;
                }
            }
            double radius = 0;
            for (int i = 0; i < corners.length; i += 3) {
                radius = Math.max(
                        radius,
                        Math.hypot(
                                corners[i] - middle[0],
                                Math.hypot(corners[i + 1] - middle[1], corners[i + 2] - middle[2])));
            }
            return new Body(corners, mesh.triangleFaces(), middle, radius);
        }

        boolean crosses(double[] from, double[] to, int spared) {
            if (TrueSight.distance(from, to, middle) > radius) {
                return false;
            }
            for (int i = 0; i < face.length; i++) {
                if (face[i] != spared && passes(from, to, 9 * i)) {
                    return true;
                }
            }
            return false;
        }

        /** Whether a line passes through a triangle: its ends lie on both sides of it, and it runs inside all three edges. */
        private boolean passes(double[] from, double[] to, int at) {
            double ab = volume(from, to, at, at + 3);
            double bc = volume(from, to, at + 3, at + 6);
            double ca = volume(from, to, at + 6, at);
            if (!(ab >= 0 && bc >= 0 && ca >= 0 || ab <= 0 && bc <= 0 && ca <= 0)) {
                return false;
            }
            return side(from, at) > 0 != side(to, at) > 0;
        }

        private double volume(double[] from, double[] to, int a, int b) {
            double lx = to[0] - from[0];
            double ly = to[1] - from[1];
            double lz = to[2] - from[2];
            double ax = corners[a] - from[0];
            double ay = corners[a + 1] - from[1];
            double az = corners[a + 2] - from[2];
            double bx = corners[b] - from[0];
            double by = corners[b + 1] - from[1];
            double bz = corners[b + 2] - from[2];
            return lx * (ay * bz - az * by) + ly * (az * bx - ax * bz) + lz * (ax * by - ay * bx);
        }

        private double side(double[] point, int at) {
            double ux = corners[at + 3] - corners[at];
            double uy = corners[at + 4] - corners[at + 1];
            double uz = corners[at + 5] - corners[at + 2];
            double vx = corners[at + 6] - corners[at];
            double vy = corners[at + 7] - corners[at + 1];
            double vz = corners[at + 8] - corners[at + 2];
            return (uy * vz - uz * vy) * (point[0] - corners[at])
                    + (uz * vx - ux * vz) * (point[1] - corners[at + 1])
                    + (ux * vy - uy * vx) * (point[2] - corners[at + 2]);
        }

        /** How far a point lies from the nearest triangle, by trying points all over each. */
        double clearance(double[] point) {
            double least = Double.POSITIVE_INFINITY;
            for (int at = 0; at < corners.length; at += 9) {
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
    }

    /**
     * A scope tip among airfoils.
     *
     * @param row that is looked at
     * @param turning rows that keep their place to it: clock of an airfoil of each while the one looked at stands at clock 0
     * @param still rows that keep their place to the scope tip: clock of an airfoil of each
     */
    public TrueSight(
            EngineModel model,
            Row row,
            Fineness fineness,
            Pose pose,
            Criteria asked,
            Map<Row, Double> turning,
            Map<Row, Double> still) {
        airfoil = mesh(model, row, fineness);
        facets = Facets.of(airfoil);
        criteria = new NaiveSight(airfoil, row.count(), Zoning.of(row), pose, asked);
        add(this.turning, airfoil, row.count(), 0);
        turning.forEach((other, clock) -> add(this.turning, mesh(model, other, fineness), other.count(), clock));
        still.forEach((other, clock) -> add(this.still, mesh(model, other, fineness), other.count(), clock));
        known = new byte[facets.count() * STEPS];
    }

    private static Mesh mesh(EngineModel model, Row row, Fineness fineness) {
        try {
            return Surfaces.of(model, row, Optional.empty(), fineness, Map.of()).orElseThrow();
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    private static void add(List<Body> bodies, Mesh mesh, int count, double clock) {
        for (int i = 0; i < count; i++) {
            bodies.add(Body.of(mesh, clock + 360.0 * i / count));
        }
    }

    /** Whether a scope tip of this diameter has room among vanes of a row, one of which stands at a clock angle. */
    public static boolean hasRoom(EngineModel model, Row vanes, double clock, Pose pose, double diameter) {
        double[] eye = turned(pose.x(), 0, pose.r(), pose.clock().degrees());
        Mesh mesh = mesh(model, vanes, Fineness.STANDARD);
        for (int i = 0; i < vanes.count(); i++) {
            Body vane = Body.of(mesh, clock + 360.0 * i / vanes.count());
            if (distance(eye, eye, vane.middle()) < vane.radius() + diameter && vane.clearance(eye) < diameter / 2) {
                return false;
            }
        }
        return true;
    }

    public int facets() {
        return facets.count();
    }

    public double area(int facet) {
        return facets.area(facet);
    }

    public int zone(int facet) {
        return airfoil.zone(facet);
    }

    /** Whether a facet comes into sight at one of the angles that are tried while the airfoil's clock runs from one to another, degrees. */
    public boolean sees(int facet, double from, double to) {
        for (long step = (long) Math.ceil(from / STEP); step <= Math.floor(to / STEP); step++) {
            if (at(facet, (int) Math.floorMod(step, (long) STEPS))) {
                return true;
            }
        }
        return casts(facet, from) || casts(facet, to);
    }

    private boolean at(int facet, int step) {
        int i = facet * STEPS + step;
        if (known[i] == 0) {
            known[i] = (byte) (casts(facet, step * STEP) ? 1 : 2);
        }
        return known[i] == 1;
    }

    private boolean casts(int facet, double clock) {
        if (!criteria.meetsCriteria(facet, clock)) {
            return false;
        }
        double[] eye = criteria.eye();
        double[] place = criteria.place(facet, clock);
        if (nearest(eye, place) < HUB || still.stream().anyMatch(body -> body.crosses(eye, place, -1))) {
            return false;
        }
        // The rows that keep their place to the airfoil stand as if it were at clock 0: it is the line that is turned.
        double[] from = turned(eye[0], eye[1], eye[2], -clock);
        double[] to = turned(place[0], place[1], place[2], -clock);
        for (int i = 0; i < turning.size(); i++) {
            if (turning.get(i).crosses(from, to, i == 0 ? facet : -1)) {
                return false;
            }
        }
        return true;
    }

    /** How near the straight line between two points comes to the axis. */
    private static double nearest(double[] from, double[] to) {
        double[] a = {0, from[1], from[2]};
        double[] b = {0, to[1], to[2]};
        return distance(a, b, new double[3]);
    }

    private static double distance(double[] from, double[] to, double[] point) {
        double along = 0;
        double square = 0;
        for (int k = 0; k < 3; k++) {
            along += (point[k] - from[k]) * (to[k] - from[k]);
            square += (to[k] - from[k]) * (to[k] - from[k]);
        }
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, along / square));
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double off = from[k] + t * (to[k] - from[k]) - point[k];
            sum += off * off;
        }
        return Math.sqrt(sum);
    }

    private static double[] turned(double x, double y, double z, double clock) {
        double angle = Math.toRadians(clock);
        return new double[] {x, y * Math.cos(angle) + z * Math.sin(angle), z * Math.cos(angle) - y * Math.sin(angle)};
    }

    /** A pose somewhere within a tolerance, each part of it evenly. */
    static Pose within(Pose nominal, double mm, double deg, java.util.random.RandomGenerator random) {
        double[] off = random.doubles(3, -1, 1).map(share -> share * mm).toArray();
        double tilt = Math.toRadians(deg) * random.nextDouble();
        double way = 2 * Math.PI * random.nextDouble();
        double[] f = {
            nominal.forward().axial(),
            nominal.forward().tangential(),
            nominal.forward().radial()
        };
        double[] u = cross(f, Math.abs(f[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 1, 0});
        double length = Math.sqrt(u[0] * u[0] + u[1] * u[1] + u[2] * u[2]);
        double[] v = cross(f, u);
        double[] forward = new double[3];
        for (int k = 0; k < 3; k++) {
            double across = (Math.cos(way) * u[k] + Math.sin(way) * v[k]) / length;
            forward[k] = Math.cos(tilt) * f[k] + Math.sin(tilt) * across;
        }
        double turn = Math.atan2(off[1], nominal.r() + off[2]);
        double tangential = forward[1] * Math.cos(turn) - forward[2] * Math.sin(turn);
        double radial = forward[2] * Math.cos(turn) + forward[1] * Math.sin(turn);
        return new Pose(
                nominal.x() + off[0],
                Math.hypot(off[1], nominal.r() + off[2]),
                nominal.clock().plus(Turn.ofDegrees(Math.toDegrees(turn))),
                new everyblade.spi.Station.Heading(forward[0], tangential, radial),
                nominal.up(),
                nominal.cone(),
                nominal.near(),
                nominal.far(),
                nominal.pixels());
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
