package everyblade.core.sight;

import everyblade.core.InPicture;
import everyblade.core.Ray;
import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a facet is in sight while the airfoil stands at one angle, as one would say it: everything is turned to where it
 * stands, criteria are compared as angles and distances, and a ray is cast against every triangle. Shares no code
 * with what it is held against.
 */
final class NaiveSight {

    private static final int WALL_STEPS = 800;

    private final Mesh airfoil;
    private final Facets facets;
    private final int count;
    private final Zoning zoning;
    private final Pose pose;
    private final Criteria criteria;
    private final List<Ring> mates = new ArrayList<>();
    private final List<Ring> fixed = new ArrayList<>();
    private final List<Wall> walls = new ArrayList<>();

    NaiveSight(Mesh airfoil, int count, Zoning zoning, Pose pose, Criteria criteria) {
        this.airfoil = airfoil;
        this.facets = Facets.of(airfoil);
        this.count = count;
        this.zoning = zoning;
        this.pose = pose;
        this.criteria = criteria;
    }

    NaiveSight withMate(Ring mate) {
        mates.add(mate);
        return this;
    }

    NaiveSight withFixed(Ring ring) {
        fixed.add(ring);
        return this;
    }

    NaiveSight withWall(Wall wall) {
        walls.add(wall);
        return this;
    }

    /** Whether the facet is in sight while the airfoil stands at this clock angle, degrees. */
    boolean sees(int facet, double clock) {
        return meetsCriteria(facet, clock) && !isHidden(facet, clock, eye(), place(facet, clock));
    }

    /** Whether it would be if nothing hid it. */
    boolean meetsCriteria(int facet, double clock) {
        double[] normal = turned(facets.normal(facet, 0), facets.normal(facet, 1), facets.normal(facet, 2), clock);
        double[] forward = turned(
                pose.forward().axial(),
                pose.forward().tangential(),
                pose.forward().radial(),
                pose.clock().degrees());
        double least = criteria.grazing(zoning, airfoil.zone(facet)).degrees();
        return InPicture.shows(pose, criteria, least, eye(), forward, place(facet, clock), normal);
    }

    /** Where the scope tip stands. */
    double[] eye() {
        return turned(pose.x(), 0, pose.r(), pose.clock().degrees());
    }

    /** Where the middle of a facet stands. */
    double[] place(int facet, double clock) {
        return turned(facets.centroid(facet, 0), facets.centroid(facet, 1), facets.centroid(facet, 2), clock);
    }

    private boolean isHidden(int facet, double clock, double[] eye, double[] place) {
        Ring own = new Ring(airfoil, count);
        if (hides(own, clock, eye, place, facet) || walls.stream().anyMatch(wall -> hides(wall, eye, place))) {
            return true;
        }
        return mates.stream().anyMatch(mate -> hides(mate, clock, eye, place, -1))
                || fixed.stream().anyMatch(ring -> hides(ring, 0, eye, place, -1));
    }

    private static boolean hides(Ring ring, double clock, double[] eye, double[] place, int spared) {
        Mesh mesh = ring.airfoil();
        for (int i = 0; i < ring.count(); i++) {
            double at =
                    clock + ring.offset().plus(Turn.ofFraction(i, ring.count())).degrees();
            for (int face = 0; face < mesh.faceCount(); face++) {
                if (i == 0 && face == spared) {
                    continue;
                }
                for (int k = 2; k < mesh.cornerCount(face); k++) {
                    if (!Double.isNaN(Ray.meets(
                            eye,
                            place,
                            corner(mesh, face, 0, at),
                            corner(mesh, face, k - 1, at),
                            corner(mesh, face, k, at)))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    static double[] corner(Mesh mesh, int face, int k, double clock) {
        int point = mesh.corner(face, k);
        return turned(mesh.x(point), mesh.y(point), mesh.z(point), clock);
    }

    /** Goes along the line in steps, each of which may cross a straight piece of the wall's curve in the plane of x and radius. */
    private static boolean hides(Wall wall, double[] eye, double[] place) {
        double x = place[0];
        double r = Math.hypot(place[1], place[2]);
        for (int step = 1; step <= WALL_STEPS; step++) {
            double t = (double) step / WALL_STEPS;
            double nextX = place[0] + t * (eye[0] - place[0]);
            double nextR = Math.hypot(place[1] + t * (eye[1] - place[1]), place[2] + t * (eye[2] - place[2]));
            for (int i = 1; i < wall.curve().size(); i++) {
                if (cross(
                        x,
                        r,
                        nextX,
                        nextR,
                        wall.curve().get(i - 1),
                        wall.curve().get(i))) {
                    return true;
                }
            }
            x = nextX;
            r = nextR;
        }
        return false;
    }

    private static boolean cross(double x0, double r0, double x1, double r1, MeridionalPoint a, MeridionalPoint b) {
        double side0 = (b.x() - a.x()) * (r0 - a.r()) - (b.r() - a.r()) * (x0 - a.x());
        double side1 = (b.x() - a.x()) * (r1 - a.r()) - (b.r() - a.r()) * (x1 - a.x());
        double sideA = (x1 - x0) * (a.r() - r0) - (r1 - r0) * (a.x() - x0);
        double sideB = (x1 - x0) * (b.r() - r0) - (r1 - r0) * (b.x() - x0);
        return side0 > 0 != side1 > 0 && sideA > 0 != sideB > 0;
    }

    private static double[] turned(double x, double y, double z, double clock) {
        return Ray.turned(new double[] {x, y, z}, Math.toRadians(clock));
    }
}
