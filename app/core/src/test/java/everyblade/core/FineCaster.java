package everyblade.core;

import static everyblade.core.Ray.turned;

import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a scope tip truly shows of a row whose surface is as fine as one likes, where it and all that stands round it stand at
 * one place each: everything is turned to where it stands, criteria are compared as angles and distances, and rays are cast
 * against the triangles. Shares no code with what it is held against but the numbers of the mesh.
 */
public final class FineCaster {

    /** Clock angles in a turn that are tried. */
    public static final int STEPS = 1440;

    private static final int WALL_STEPS = 60;
    private static final double TOUCH = 1e-9;

    /** Equal airfoils in a ring, the first of them at a clock angle, radians. */
    private static final class Body {
        final BoxedTriangles airfoil;
        final double[] clocks;
        final double[][] middles;

        Body(Mesh mesh, int count, double clock) {
            airfoil = new BoxedTriangles(mesh);
            clocks = IntStream.range(0, count)
                    .mapToDouble(i -> clock + 2 * Math.PI * i / count)
                    .toArray();
            middles = Arrays.stream(clocks)
                    .mapToObj(at -> turned(airfoil.middle(), at))
                    .toArray(double[][]::new);
        }

        boolean crosses(double[] from, double[] to, int spared) {
            for (int i = 0; i < clocks.length; i++) {
                if (Ray.distance(from, to, middles[i]) <= airfoil.radius()
                        && airfoil.crosses(turned(from, -clocks[i]), turned(to, -clocks[i]), i == 0 ? spared : -1)) {
                    return true;
                }
            }
            return false;
        }
    }

    private final Facets facets;
    private final List<Body> turning = new ArrayList<>();
    private final List<Body> still = new ArrayList<>();
    private final List<Wall> walls;

    /** @param walls that hide */
    public FineCaster(Mesh airfoil, int count, List<Wall> walls) {
        this.facets = Facets.of(airfoil);
        this.walls = walls;
        turning.add(new Body(airfoil, count, 0));
    }

    /**
     * With another row that keeps its place to this one.
     *
     * @param clock of its first airfoil where the first of this one stands at clock 0, radians
     */
    public FineCaster turning(Mesh other, int count, double clock) {
        turning.add(new Body(other, count, clock));
        return this;
    }

    /**
     * With another row that keeps its place to the scope tip.
     *
     * @param clock of its first airfoil, radians
     */
    public FineCaster still(Mesh other, int count, double clock) {
        still.add(new Body(other, count, clock));
        return this;
    }

    /** What is in sight from a pose at the steps of the airfoil's clock, cast when it is asked for, and once only. */
    public final class FromPose {

        private final Pose pose;
        private final Criteria criteria;
        private final Seen[] at;
        private final BitSet[] asked;
        private final BitSet[] seen;

        private FromPose(Pose pose, Criteria criteria) {
            this.pose = pose;
            this.criteria = criteria;
            this.at = IntStream.range(0, STEPS)
                    .mapToObj(step -> new Seen(pose, 360.0 * step / STEPS))
                    .toArray(Seen[]::new);
            this.asked = none();
            this.seen = none();
        }

        private BitSet[] none() {
            return IntStream.range(0, facets.count())
                    .mapToObj(facet -> new BitSet(STEPS))
                    .toArray(BitSet[]::new);
        }

        /** Whether a facet is in sight at a step. */
        public boolean sees(int facet, int step) {
            if (!asked[facet].get(step)) {
                asked[facet].set(step);
                seen[facet].set(step, FineCaster.this.sees(facet, at[step], pose, criteria));
            }
            return seen[facet].get(step);
        }

        /** The same at a clock angle between steps, degrees. */
        public boolean sees(int facet, double clock) {
            return FineCaster.this.sees(facet, clock, pose, criteria);
        }
    }

    /** What is in sight from a pose. */
    public FromPose from(Pose pose, Criteria criteria) {
        return new FromPose(pose, criteria);
    }

    /** Whether a facet is in sight while the airfoil stands at a clock angle, degrees; criteria are alike in all zones. */
    public boolean sees(int facet, double clock, Pose pose, Criteria criteria) {
        return sees(facet, new Seen(pose, clock), pose, criteria);
    }

    /** A scope tip and where it looks as seen from the airfoil at a clock angle, from which it runs backwards. */
    private record Seen(double clock, double[] eye, double[] forward) {

        Seen(Pose pose, double clock) {
            this(
                    Math.toRadians(clock),
                    turned(
                            new double[] {pose.x(), 0, pose.r()},
                            Math.toRadians(pose.clock().degrees() - clock)),
                    turned(
                            new double[] {
                                pose.forward().axial(),
                                pose.forward().tangential(),
                                pose.forward().radial()
                            },
                            Math.toRadians(pose.clock().degrees() - clock)));
        }
    }

    private boolean sees(int facet, Seen at, Pose pose, Criteria criteria) {
        double[] place = {facets.centroid(facet, 0), facets.centroid(facet, 1), facets.centroid(facet, 2)};
        double[] normal = {facets.normal(facet, 0), facets.normal(facet, 1), facets.normal(facet, 2)};
        double grazing = criteria.grazing().degrees();
        return InPicture.shows(pose, criteria, grazing, at.eye(), at.forward(), place, normal)
                && !hidden(facet, at.eye(), place, at.clock());
    }

    private boolean hidden(int facet, double[] eye, double[] place, double clock) {
        for (int i = 0; i < turning.size(); i++) {
            if (turning.get(i).crosses(eye, place, i == 0 ? facet : -1)) {
                return true;
            }
        }
        if (!still.isEmpty()) {
            double[] from = turned(eye, clock);
            double[] to = turned(place, clock);
            if (still.stream().anyMatch(body -> body.crosses(from, to, -1))) {
                return true;
            }
        }
        return walls.stream().anyMatch(wall -> crosses(wall, place, eye));
    }

    /** Goes along the line in steps, each of which may cross a straight piece of the wall's curve that it comes near. */
    private static boolean crosses(Wall wall, double[] from, double[] to) {
        double least = Ray.distance(new double[] {0, from[1], from[2]}, new double[] {0, to[1], to[2]}, new double[3]);
        double most = Math.max(Math.hypot(from[1], from[2]), Math.hypot(to[1], to[2]));
        for (int i = 1; i < wall.curve().size(); i++) {
            MeridionalPoint a = wall.curve().get(i - 1);
            MeridionalPoint b = wall.curve().get(i);
            boolean near = Math.max(a.r(), b.r()) >= least
                    && Math.min(a.r(), b.r()) <= most
                    && Math.max(a.x(), b.x()) >= Math.min(from[0], to[0])
                    && Math.min(a.x(), b.x()) <= Math.max(from[0], to[0]);
            if (near && crosses(a, b, from, to)) {
                return true;
            }
        }
        return false;
    }

    private static boolean crosses(MeridionalPoint a, MeridionalPoint b, double[] from, double[] to) {
        double x = from[0];
        double r = Math.hypot(from[1], from[2]);
        for (int step = 1; step <= WALL_STEPS; step++) {
            double t = (double) step / WALL_STEPS;
            double nextX = from[0] + t * (to[0] - from[0]);
            double nextR = Math.hypot(from[1] + t * (to[1] - from[1]), from[2] + t * (to[2] - from[2]));
            double side0 = (b.x() - a.x()) * (r - a.r()) - (b.r() - a.r()) * (x - a.x());
            double side1 = (b.x() - a.x()) * (nextR - a.r()) - (b.r() - a.r()) * (nextX - a.x());
            double sideA = (nextX - x) * (a.r() - r) - (nextR - r) * (a.x() - x);
            double sideB = (nextX - x) * (b.r() - r) - (nextR - r) * (b.x() - x);
            if (side0 > TOUCH != side1 > TOUCH && sideA > 0 != sideB > 0) {
                return true;
            }
            x = nextX;
            r = nextR;
        }
        return false;
    }
}
