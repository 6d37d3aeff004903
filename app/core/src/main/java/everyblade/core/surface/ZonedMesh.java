package everyblade.core.surface;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import java.util.Arrays;

/**
 * A mesh from a file, divided into the zones of a row by where its facets' centroids lie, since the file says nothing of
 * them; a facet across a border belongs wholly to one side of it.
 *
 * <p>Of an airfoil, span is the share of the way from the least to the greatest radius of all points, chord that from the
 * least to the greatest x. The suction side is what faces to the convex side of the plane between the faces: the clockwise
 * side of the line from the foremost to the rearmost tenth if the surface as a whole lies on that side or has no camber,
 * else the other. Of a liner, the outer wall is what faces the axis and the halves are those of x.
 */
final class ZonedMesh {

    private static final double EDGE = 0.1;
    private static final double STRAIGHT = 1e-6;

    private final Mesh mesh;
    private final Facets facets;
    private final Zoning zoning;
    private final double[] least = new double[2];
    private final double[] most = new double[2];

    private ZonedMesh(Mesh mesh, Zoning zoning) {
        this.mesh = mesh;
        this.facets = Facets.of(mesh);
        this.zoning = zoning;
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int point = 0; point < mesh.pointCount(); point++) {
            double[] place = {mesh.x(point), StrictMath.hypot(mesh.y(point), mesh.z(point))};
            for (int i = 0; i < 2; i++) {
                least[i] = Math.min(least[i], place[i]);
                most[i] = Math.max(most[i], place[i]);
            }
        }
    }

    /** @throws UnusableShape if a zone would have no facet */
    static Mesh of(Mesh mesh, Zoning zoning, String file) throws UnusableShape {
        ZonedMesh zoned = new ZonedMesh(mesh, zoning);
        MeshBuilder built = new MeshBuilder();
        for (int point = 0; point < mesh.pointCount(); point++) {
            built.point(mesh.x(point), mesh.y(point), mesh.z(point));
        }
        boolean[] used = new boolean[zoning.size()];
        int[] sides = zoned.sides();
        for (int face = 0; face < mesh.faceCount(); face++) {
            int zone = zoned.zone(face, sides[face]);
            used[zone] = true;
            int[] corners = new int[mesh.cornerCount(face)];
            for (int k = 0; k < corners.length; k++) {
                corners[k] = mesh.corner(face, k);
            }
            built.face(zone, corners);
        }
        for (int zone = 0; zone < used.length; zone++) {
            if (!used[zone]) {
                throw new UnusableShape(new ShapeFault.EmptyZone(
                        file, ZonePhrase.named(zoning.names().get(zone))));
            }
        }
        return built.built();
    }

    private int zone(int face, int side) {
        boolean liner = zoning.spans().contains("outer") || zoning.chords().contains("forward");
        double x = share(0, facets.centroid(face, 0));
        int spanCount = Math.max(1, zoning.spans().size());
        int sideCount = Math.max(1, zoning.sides().size());
        int chordCount = Math.max(1, zoning.chords().size());
        int span = liner
                ? Math.min(outward(face) > 0 ? 1 : 0, spanCount - 1)
                : Divisions.band(share(1, radius(face)), spanCount);
        int chord = chordCount == 3 ? Divisions.chordBand(x) : Divisions.band(x, chordCount);
        return (span * sideCount + Math.min(side, sideCount - 1)) * chordCount + chord;
    }

    private double share(int axis, double value) {
        double range = most[axis] - least[axis];
        return range > 0 ? (value - least[axis]) / range : 0;
    }

    private double radius(int face) {
        return StrictMath.hypot(facets.centroid(face, 1), facets.centroid(face, 2));
    }

    private double outward(int face) {
        return facets.normal(face, 1) * facets.centroid(face, 1) + facets.normal(face, 2) * facets.centroid(face, 2);
    }

    /** How far clockwise a facet lies, mm along the circle. */
    private double clockwise(int face) {
        return radius(face) * StrictMath.atan2(facets.centroid(face, 1), facets.centroid(face, 2));
    }

    /** 0 for the pressure, 1 for the suction side of each face. */
    private int[] sides() {
        double[] front = middle(0, EDGE);
        double[] rear = middle(1 - EDGE, 1);
        double[] whole = middle(0, 1);
        double dx = rear[0] - front[0];
        double dv = rear[1] - front[1];
        double bulge = (whole[1] - front[1]) * dx - (whole[0] - front[0]) * dv;
        int convex = bulge >= -STRAIGHT * (dx * dx + dv * dv) ? 1 : -1;
        int[] sides = new int[mesh.faceCount()];
        for (int face = 0; face < sides.length; face++) {
            double r = radius(face);
            double towards = r == 0
                    ? facets.normal(face, 1)
                    : (facets.normal(face, 1) * facets.centroid(face, 2)
                                    - facets.normal(face, 2) * facets.centroid(face, 1))
                            / r;
            double left = towards * dx - facets.normal(face, 0) * dv;
            sides[face] = left * convex > 0 ? 1 : 0;
        }
        return sides;
    }

    /** Mean of x and of the way round, by area, of the facets between two shares of x. */
    private double[] middle(double from, double to) {
        double area = 0;
        double x = 0;
        double v = 0;
        for (int face = 0; face < mesh.faceCount(); face++) {
            double share = share(0, facets.centroid(face, 0));
            if (share >= from && share <= to) {
                area += facets.area(face);
                x += facets.area(face) * facets.centroid(face, 0);
                v += facets.area(face) * clockwise(face);
            }
        }
        return area > 0 ? new double[] {x / area, v / area} : new double[] {from == 0 ? least[0] : most[0], 0};
    }
}
