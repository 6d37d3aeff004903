package everyblade.picture.sight;

import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The facets of one airfoil as rectangles of a grid, each of its two sides for itself: column widths and line heights are in
 * proportion to the area that the facets of the column or line have together, so that equal areas of the picture are about
 * equal areas of the surface.
 *
 * @param sides side of each facet: 0 pressure or outer, 1 suction or inner
 * @param columns column of each facet, from the leading edge or the front
 * @param lines line of each facet, from the root; of a liner round the sector
 * @param columnEnds where columns end, rising shares up to 1, 0 first
 * @param lineEnds where lines end
 */
record Unrolling(int[] sides, int[] columns, int[] lines, double[][] columnEnds, double[][] lineEnds) {

    /** The grid of a surface; empty if its facets do not follow each other in strips, as those of a mesh file may not. */
    static Optional<Unrolling> of(Mesh mesh, RowKind kind) {
        List<List<Integer>> strips = strips(mesh);
        int length = strips.get(0).size();
        if (length < 2 || strips.size() < 2 || strips.stream().anyMatch(strip -> strip.size() != length)) {
            return Optional.empty();
        }
        Facets facets = Facets.of(mesh);
        int[] sides = new int[mesh.faceCount()];
        int[] columns = new int[sides.length];
        int[] lines = new int[sides.length];
        int[] used = new int[2];
        boolean liner = kind == RowKind.LINER;
        for (int s = 0; s < strips.size(); s++) {
            int side = liner ? wall(facets, strips.get(s).get(0)) : s % 2;
            for (int i = 0; i < length; i++) {
                int facet = strips.get(s).get(i);
                sides[facet] = side;
                columns[facet] = liner ? used[side] : i;
                lines[facet] = liner ? i : used[side];
            }
            used[side]++;
        }
        if (used[0] == 0 || used[1] == 0) {
            return Optional.empty();
        }
        double[][] columnEnds = new double[2][];
        double[][] lineEnds = new double[2][];
        for (int side = 0; side < 2; side++) {
            columnEnds[side] = ends(facets, sides, side, columns, liner ? used[side] : length);
            lineEnds[side] = ends(facets, sides, side, lines, liner ? length : used[side]);
        }
        return Optional.of(new Unrolling(sides, columns, lines, columnEnds, lineEnds));
    }

    /** Facets that follow each other and share an edge. */
    private static List<List<Integer>> strips(Mesh mesh) {
        List<List<Integer>> strips = new ArrayList<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            if (face == 0 || !shareAnEdge(mesh, face - 1, face)) {
                strips.add(new ArrayList<>());
            }
            strips.get(strips.size() - 1).add(face);
        }
        return strips;
    }

    private static boolean shareAnEdge(Mesh mesh, int a, int b) {
        int shared = 0;
        for (int i = 0; i < mesh.cornerCount(a); i++) {
            for (int k = 0; k < mesh.cornerCount(b); k++) {
                shared += mesh.corner(a, i) == mesh.corner(b, k) ? 1 : 0;
            }
        }
        return shared >= 2;
    }

    /** 0 for the outer wall, which faces the axis. */
    private static int wall(Facets facets, int facet) {
        double outward = facets.normal(facet, 1) * facets.centroid(facet, 1)
                + facets.normal(facet, 2) * facets.centroid(facet, 2);
        return outward < 0 ? 0 : 1;
    }

    private static double[] ends(Facets facets, int[] sides, int side, int[] places, int count) {
        double[] ends = new double[count + 1];
        double all = 0;
        for (int facet = 0; facet < sides.length; facet++) {
            if (sides[facet] == side) {
                ends[places[facet] + 1] += facets.area(facet);
                all += facets.area(facet);
            }
        }
        double sum = 0;
        for (int i = 0; i <= count; i++) {
            sum += ends[i];
            ends[i] = sum / all;
        }
        return ends;
    }

    /** Where a facet's column begins, share of its side's width. */
    double from(int facet) {
        return columnEnds[sides[facet]][columns[facet]];
    }

    /** Where its column ends. */
    double to(int facet) {
        return columnEnds[sides[facet]][columns[facet] + 1];
    }

    /** Where its line begins, share of its side's height. */
    double low(int facet) {
        return lineEnds[sides[facet]][lines[facet]];
    }

    /** Where its line ends. */
    double high(int facet) {
        return lineEnds[sides[facet]][lines[facet] + 1];
    }
}
