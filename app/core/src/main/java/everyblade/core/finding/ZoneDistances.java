package everyblade.core.finding;

import everyblade.core.entry.ZoneSet;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Distances from the shapes of an engine model: straight ones, between the corners of the zones' facets. The least is
 * lowered by the longest edge of a facet, since two facets may come nearer than their corners. Cost: the square of the
 * number of corners of an airfoil, a question.
 */
public record ZoneDistances(EngineModel model) implements Distances {

    @Override
    public Optional<Span> between(Row row, ZoneSet one, ZoneSet other) {
        try {
            return Surfaces.of(model, row, Optional.empty()).map(mesh -> span(mesh, one, other));
        } catch (UnusableShape noSurface) {
            return Optional.empty();
        }
    }

    private static Span span(Mesh mesh, ZoneSet one, ZoneSet other) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        int[] others = points(mesh, other);
        for (int a : points(mesh, one)) {
            for (int b : others) {
                double distance = distance(mesh, a, b);
                least = Math.min(least, distance);
                most = Math.max(most, distance);
            }
        }
        return new Span(Length.ofMillimetres(Math.max(0, least - longestEdge(mesh))), Length.ofMillimetres(most));
    }

    private static int[] points(Mesh mesh, ZoneSet zones) {
        BitSet points = new BitSet();
        IntStream.range(0, mesh.faceCount())
                .filter(face -> zones.contains(mesh.zone(face)))
                .forEach(face ->
                        IntStream.range(0, mesh.cornerCount(face)).forEach(k -> points.set(mesh.corner(face, k))));
        return points.stream().toArray();
    }

    private static double longestEdge(Mesh mesh) {
        double longest = 0;
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int next = mesh.corner(face, (k + 1) % mesh.cornerCount(face));
                longest = Math.max(longest, distance(mesh, mesh.corner(face, k), next));
            }
        }
        return longest;
    }

    private static double distance(Mesh mesh, int a, int b) {
        double x = mesh.x(a) - mesh.x(b);
        double y = mesh.y(a) - mesh.y(b);
        double z = mesh.z(a) - mesh.z(b);
        return Math.sqrt(x * x + y * y + z * z);
    }
}
