package everyblade.practice.harm;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Where on an airfoil its edges, its tip and the corners between them are: what a mesh and its zones tell. */
final class Anatomy {

    private final Mesh mesh;
    private final Facets facets;
    private final Zoning zoning;
    private final List<Side> edges = new ArrayList<>();
    private final List<Side> tip = new ArrayList<>();

    /**
     * A side of a face that lies at an edge or at the tip.
     *
     * @param face one face that it is of
     * @param from point of the mesh
     * @param to point of the mesh
     */
    record Side(int face, int from, int to) {}

    /** The parts of one airfoil. */
    public Anatomy(Mesh mesh, Zoning zoning) {
        this.mesh = mesh;
        this.facets = Facets.of(mesh);
        this.zoning = zoning;
        Map<Long, List<Side>> sides = new LinkedHashMap<>();
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int a = mesh.corner(face, k);
                int b = mesh.corner(face, (k + 1) % mesh.cornerCount(face));
                sides.computeIfAbsent((long) Math.min(a, b) << 32 | Math.max(a, b), key -> new ArrayList<>())
                        .add(new Side(face, a, b));
            }
        }
        sides.values().forEach(this::sort);
    }

    private void sort(List<Side> together) {
        Side first = together.get(0);
        int zone = mesh.zone(first.face());
        if (together.size() == 2
                && zoning.atEdge(zone)
                && side(zone) != side(mesh.zone(together.get(1).face()))) {
            edges.add(first);
            edges.add(together.get(1));
        } else if (together.size() == 1
                && span(zone) == Math.max(1, zoning.spans().size()) - 1) {
            tip.add(first);
        }
    }

    private int side(int zone) {
        return zone
                / Math.max(1, zoning.chords().size())
                % Math.max(1, zoning.sides().size());
    }

    private int span(int zone) {
        return zone
                / Math.max(1, zoning.chords().size())
                / Math.max(1, zoning.sides().size());
    }

    /** The surface. */
    public Mesh mesh() {
        return mesh;
    }

    /** Its facets. */
    public Facets facets() {
        return facets;
    }

    /** Sides of faces along the leading and trailing edges, each of both faces. */
    List<Side> edges() {
        return edges;
    }

    /** Sides of faces along the tip. */
    List<Side> tip() {
        return tip;
    }

    /** Those of the edges that end at the tip. */
    List<Side> corners() {
        Map<Integer, Integer> ends = new HashMap<>();
        tip.forEach(side -> {
            ends.merge(side.from(), 1, Integer::sum);
            ends.merge(side.to(), 1, Integer::sum);
        });
        return edges.stream()
                .filter(side -> ends.containsKey(side.from()) || ends.containsKey(side.to()))
                .map(side -> ends.containsKey(side.to()) ? side : new Side(side.face(), side.to(), side.from()))
                .toList();
    }

    Vector point(int index) {
        return new Vector(mesh.x(index), mesh.y(index), mesh.z(index));
    }

    Vector centroid(int face) {
        return new Vector(facets.centroid(face, 0), facets.centroid(face, 1), facets.centroid(face, 2));
    }

    Vector normal(int face) {
        return new Vector(facets.normal(face, 0), facets.normal(face, 1), facets.normal(face, 2));
    }

    /** The names of all zones that come so near a place, the zone of this face first. */
    List<String> zones(int face, Vector at, double within) {
        List<String> names = zoning.names();
        List<String> found = new ArrayList<>(List.of(names.get(mesh.zone(face))));
        for (int other = 0; other < mesh.faceCount(); other++) {
            int each = other;
            boolean near = centroid(other).minus(at).length() < within
                    || IntStream.range(0, mesh.cornerCount(other))
                            .anyMatch(k -> point(mesh.corner(each, k)).minus(at).length() < within);
            String name = names.get(mesh.zone(other));
            if (near && !found.contains(name)) {
                found.add(name);
            }
        }
        return found;
    }
}
