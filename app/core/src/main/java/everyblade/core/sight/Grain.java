package everyblade.core.sight;

import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Neighbours;
import everyblade.core.surface.Patches;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How finely an airfoil is judged: its facets divided into patches, and which facets lie beside which. Never changes.
 *
 * @param patches of its facets
 * @param around of each facet those that share a point with it
 * @param smooth of each facet those beyond its edges to which the surface goes on without a sharp bend
 * @param corners of each facet its patches at its corners, counted from its first
 * @param rim of these, those where the surface ends or bends sharply
 */
public record Grain(Patches patches, int[][] around, int[][] smooth, int[][] corners, int[][] rim) {

    /** Cosine of 60°: beyond a sharper bend another part of the airfoil begins. */
    private static final double BEND = 0.5;

    /** The grain of an airfoil with these facets. */
    static Grain of(Mesh airfoil, Patches patches) {
        Facets facets = Facets.of(airfoil);
        int[][] beyond = Neighbours.beyondEdges(airfoil);
        int[][] smooth = IntStream.range(0, beyond.length)
                .mapToObj(facet -> Arrays.stream(beyond[facet])
                        .filter(other -> other >= 0 && cosine(facets, facet, other) > BEND)
                        .toArray())
                .toArray(int[][]::new);
        int[][] corners = IntStream.range(0, beyond.length)
                .mapToObj(facet -> corners(airfoil, patches, facet))
                .toArray(int[][]::new);
        int[][] rim = IntStream.range(0, beyond.length)
                .mapToObj(facet -> Arrays.stream(corners[facet])
                        .filter(corner -> nearEnd(patches, patches.first(facet) + corner))
                        .toArray())
                .toArray(int[][]::new);
        return new Grain(patches, Neighbours.atPoints(airfoil), smooth, corners, rim);
    }

    private static double cosine(Facets facets, int a, int b) {
        return facets.normal(a, 0) * facets.normal(b, 0)
                + facets.normal(a, 1) * facets.normal(b, 1)
                + facets.normal(a, 2) * facets.normal(b, 2);
    }

    /** Of the patches that meet in a corner one may lie along the one edge and one along the other. */
    private static boolean nearEnd(Patches patches, int patch) {
        return atEnd(patches, patch)
                || IntStream.range(0, patches.edges(patch))
                        .map(edge -> patches.beyond(patch, edge))
                        .anyMatch(beside -> atEnd(patches, beside));
    }

    private static boolean atEnd(Patches patches, int patch) {
        return IntStream.range(0, patches.edges(patch))
                .map(edge -> patches.beyond(patch, edge))
                .anyMatch(beyond -> beyond < 0 || cosine(patches.facets(), patch, beyond) <= BEND);
    }

    private static int[] corners(Mesh airfoil, Patches patches, int facet) {
        return IntStream.range(0, airfoil.cornerCount(facet))
                .map(k -> nearest(airfoil, airfoil.corner(facet, k), patches, facet))
                .distinct()
                .toArray();
    }

    private static int nearest(Mesh airfoil, int point, Patches patches, int facet) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int patch = 0; patch < patches.count(facet); patch++) {
            int at = patches.first(facet) + patch;
            double x = patches.facets().centroid(at, 0) - airfoil.x(point);
            double y = patches.facets().centroid(at, 1) - airfoil.y(point);
            double z = patches.facets().centroid(at, 2) - airfoil.z(point);
            double distance = x * x + y * y + z * z;
            if (distance < least) {
                least = distance;
                nearest = patch;
            }
        }
        return nearest;
    }
}
