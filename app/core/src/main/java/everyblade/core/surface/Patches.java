package everyblade.core.surface;

import everyblade.core.entry.Zoning;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The facets of an airfoil divided into patches, so fine that what one shows at its middle may stand for it: each facet has
 * at least one, and each patch belongs to one facet and lies in its zone. Never changes.
 */
public final class Patches {

    /** Into how many parts a facet is divided both ways; a power of two, so that its parts' corners are exact. */
    public static final int SPLIT = 4;

    /** The share of a patch that lies beyond the place at which its border is looked at. */
    public static final double BEYOND = 0.05;

    /** No zone has fewer patches of a mesh file's faces than this, as none of a computed shape has. */
    private static final int LEAST_IN_ZONE = 256;

    private final Mesh mesh;
    private final Facets facets;
    private final int[] start;
    private final int[] facetOf;
    private final boolean[] edge;
    private final int[][] beside;
    private final int[][] ofZone;

    private Patches(Mesh mesh, int[] start, boolean[] edge) {
        this.mesh = mesh;
        this.facets = Facets.of(mesh);
        this.start = start;
        this.facetOf = new int[mesh.faceCount()];
        for (int facet = 0; facet + 1 < start.length; facet++) {
            Arrays.fill(facetOf, start[facet], start[facet + 1], facet);
        }
        this.edge = edge;
        this.beside = Neighbours.beyondEdges(mesh);
        int zones = IntStream.range(0, count()).map(mesh::zone).max().orElse(-1) + 1;
        this.ofZone = IntStream.range(0, zones)
                .mapToObj(zone -> IntStream.range(0, count())
                        .filter(patch -> mesh.zone(patch) == zone)
                        .toArray())
                .toArray(int[][]::new);
    }

    /** @param fine whose every {@link #SPLIT} rows and columns make a facet */
    static Patches of(Grid fine) throws UnusableShape {
        Mesh mesh = fine.mesh();
        int columns = fine.columns() / SPLIT;
        int each = SPLIT * SPLIT;
        MeshBuilder sorted = points(mesh);
        int[] start = new int[mesh.faceCount() / each + 1];
        boolean[] edge = new boolean[mesh.faceCount()];
        for (int facet = 0; facet + 1 < start.length; facet++) {
            start[facet + 1] = each * (facet + 1);
            for (int part = 0; part < each; part++) {
                int row = facet / columns * SPLIT + part / SPLIT;
                int column = facet % columns * SPLIT + part % SPLIT;
                int face = row * fine.columns() + column;
                sorted.face(mesh.zone(face), corners(mesh, face));
                edge[each * facet + part] = fine.edges().test(column);
            }
        }
        return new Patches(sorted.built(), start, edge);
    }

    /** Of a mesh whose faces are the true surface: the triangles of each are divided until they are small enough. */
    static Patches of(Mesh mesh, Zoning zoning) throws UnusableShape {
        return new Dividing(mesh, zoning).patches();
    }

    private static MeshBuilder points(Mesh mesh) {
        MeshBuilder built = new MeshBuilder();
        for (int point = 0; point < mesh.pointCount(); point++) {
            built.point(mesh.x(point), mesh.y(point), mesh.z(point));
        }
        return built;
    }

    private static int[] corners(Mesh mesh, int face) {
        int[] corners = new int[mesh.cornerCount(face)];
        for (int k = 0; k < corners.length; k++) {
            corners[k] = mesh.corner(face, k);
        }
        return corners;
    }

    /** How many facets are divided. */
    public int facetCount() {
        return start.length - 1;
    }

    /** How many patches there are. */
    public int count() {
        return start[start.length - 1];
    }

    /** The first patch of a facet; its others follow. Of the number of facets, the number of patches. */
    public int first(int facet) {
        return start[facet];
    }

    /** How many patches a facet has. */
    public int count(int facet) {
        return start[facet + 1] - start[facet];
    }

    /** The facet to which a patch belongs. */
    public int facet(int patch) {
        return facetOf[patch];
    }

    /** The zone of a patch. */
    public int zone(int patch) {
        return mesh.zone(patch);
    }

    /** The patches in a zone, rising. */
    public int[] ofZone(int zone) {
        return zone < ofZone.length ? ofZone[zone].clone() : new int[0];
    }

    /** How much of a facet these of its patches take, counted from its first, mm². */
    public double area(int facet, IntPredicate which) {
        return IntStream.range(0, count(facet))
                .filter(which)
                .mapToDouble(patch -> facets.area(first(facet) + patch))
                .sum();
    }

    /** Area, middle and normal of each patch. */
    public Facets facets() {
        return facets;
    }

    /** Whether a patch lies at the very edge of an airfoil, in its outermost strip at the leading or trailing edge. */
    public boolean atEdge(int patch) {
        return edge[patch];
    }

    /** How many edges a patch has. */
    public int edges(int patch) {
        return beside[patch].length;
    }

    /** The patch beyond an edge of a patch; −1 where the surface ends. */
    public int beyond(int patch, int edge) {
        return beside[patch][edge];
    }

    /**
     * A place just short of the middle of an edge of a patch, facing as the patches on both sides of it do; there must be one
     * beyond. Where it is in sight, no more of the patch is cut off there than {@link #BEYOND}.
     */
    public Facets border(int patch, int edge) {
        int beyond = beside[patch][edge];
        int a = mesh.corner(patch, edge);
        int b = mesh.corner(patch, (edge + 1) % mesh.cornerCount(patch));
        double[] towards = new double[3];
        for (int axis = 0; axis < towards.length; axis++) {
            towards[axis] = facets.normal(patch, axis) + facets.normal(beyond, axis);
        }
        double back = 2 * BEYOND;
        return Facets.place(
                Between.mix((mesh.x(a) + mesh.x(b)) / 2, facets.centroid(patch, 0), back),
                Between.mix((mesh.y(a) + mesh.y(b)) / 2, facets.centroid(patch, 1), back),
                Between.mix((mesh.z(a) + mesh.z(b)) / 2, facets.centroid(patch, 2), back),
                towards);
    }

    /** Under way: a mesh file's faces are divided. */
    private static final class Dividing {

        /** How much of the chord the outermost strip takes, as of computed shapes. */
        private static final double STRIP = Divisions.EDGE / 16;

        private final Mesh mesh;
        private final MeshBuilder built = new MeshBuilder();
        private final Map<List<Double>, Integer> known = new HashMap<>();
        private final double[] areas;
        private int count;

        Dividing(Mesh mesh, Zoning zoning) {
            this.mesh = mesh;
            this.areas = new double[zoning.size()];
        }

        Patches patches() throws UnusableShape {
            Facets facets = Facets.of(mesh);
            for (int face = 0; face < mesh.faceCount(); face++) {
                areas[mesh.zone(face)] += facets.area(face);
            }
            int[] start = new int[mesh.faceCount() + 1];
            for (int face = 0; face < mesh.faceCount(); face++) {
                double least = areas[mesh.zone(face)] / LEAST_IN_ZONE;
                double triangle = facets.area(face) / (mesh.cornerCount(face) - 2);
                int split = triangle <= least ? 1 : triangle <= 4 * least ? SPLIT / 2 : SPLIT;
                for (int k = 2; k < mesh.cornerCount(face); k++) {
                    divide(face, k, split);
                }
                start[face + 1] = count;
            }
            Mesh fine = built.built();
            return new Patches(fine, start, atEdge(fine));
        }

        private void divide(int face, int k, int split) {
            for (int i = 0; i < split; i++) {
                for (int j = 0; i + j < split; j++) {
                    int[] up = {
                        node(face, k, i, j, split), node(face, k, i + 1, j, split), node(face, k, i, j + 1, split)
                    };
                    built.face(mesh.zone(face), up);
                    count++;
                    if (i + j + 1 < split) {
                        int last = node(face, k, i + 1, j + 1, split);
                        built.face(mesh.zone(face), up[1], last, up[2]);
                        count++;
                    }
                }
            }
        }

        private int node(int face, int k, int i, int j, int split) {
            double b = (double) i / split;
            double c = (double) j / split;
            double a = 1 - b - c;
            int p = mesh.corner(face, 0);
            int q = mesh.corner(face, k - 1);
            int r = mesh.corner(face, k);
            double[] at = {
                a * mesh.x(p) + b * mesh.x(q) + c * mesh.x(r),
                a * mesh.y(p) + b * mesh.y(q) + c * mesh.y(r),
                a * mesh.z(p) + b * mesh.z(q) + c * mesh.z(r)
            };
            return known.computeIfAbsent(List.of(at[0], at[1], at[2]), place -> built.point(at));
        }

        private static boolean[] atEdge(Mesh fine) {
            Facets facets = Facets.of(fine);
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int point = 0; point < fine.pointCount(); point++) {
                least = Math.min(least, fine.x(point));
                most = Math.max(most, fine.x(point));
            }
            boolean[] edge = new boolean[fine.faceCount()];
            for (int patch = 0; patch < edge.length; patch++) {
                double share = (facets.centroid(patch, 0) - least) / (most - least);
                edge[patch] = share < STRIP || share > 1 - STRIP;
            }
            return edge;
        }
    }
}
