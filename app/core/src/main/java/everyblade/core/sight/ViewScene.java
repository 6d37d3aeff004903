package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Patches;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What surrounds the airfoils of a row.
 *
 * @param model the engine
 * @param files contents of its mesh files, by name
 * @param vanes positions of movable vanes by row, where they stand at one
 * @param places where the first airfoils of rows that stand still are, by row, where a journal tells: clock angles of the engine
 */
public record ViewScene(
        EngineModel model, Map<String, byte[]> files, Map<String, String> vanes, Map<String, Place> places) {

    /** A wall so close to a liner, mm, is the liner itself. */
    private static final double SAME_WALL = 0.5;

    public ViewScene {
        files = Map.copyOf(files);
        vanes = Map.copyOf(vanes);
        places = Map.copyOf(places);
    }

    /** The surroundings in an engine of which no journal tells where its vanes stand. */
    public ViewScene(EngineModel model, Map<String, byte[]> files, Map<String, String> vanes) {
        this(model, files, vanes, Map.of());
    }

    /** The surface of one airfoil of a row; empty if it has no shape. */
    public Optional<Mesh> airfoil(Row row) throws UnusableShape {
        return Surfaces.of(
                model,
                row,
                Optional.ofNullable(vanes.get(row.id())).map(row.positions()::get),
                everyblade.core.surface.Fineness.STANDARD,
                files);
    }

    /** How finely one airfoil of a row is judged; empty if it has no shape. */
    Optional<Grain> grain(Row row) throws UnusableShape {
        Optional<Patches> patches = Surfaces.patches(
                model, row, Optional.ofNullable(vanes.get(row.id())).map(row.positions()::get), files);
        return patches.isPresent()
                ? Optional.of(Grain.of(airfoil(row).orElseThrow(), patches.get()))
                : Optional.empty();
    }

    /**
     * A row with all that turns in its ring, and the walls.
     *
     * @return empty if the row has no shape
     * @throws UnusableShape if a shape of its ring gives no surface
     */
    public Optional<SightScene> ring(Row row) throws UnusableShape {
        Optional<Mesh> airfoil = airfoil(row);
        if (airfoil.isEmpty()) {
            return Optional.empty();
        }
        SightScene scene = SightScene.of(airfoil.get(), row.count(), Zoning.of(row));
        List<Row> ring = model.rows().stream()
                .filter(other -> row.ring().isPresent() && other.ring().equals(row.ring()))
                .toList();
        for (Row mate : ring) {
            Optional<Mesh> shape = mate.equals(row) ? Optional.empty() : airfoil(mate);
            if (shape.isPresent()) {
                Turn offset = offset(ring, mate).minus(offset(ring, row));
                scene = scene.withMate(new Ring(shape.get(), mate.count(), offset.wrapped()));
            }
        }
        for (Wall wall : model.walls()) {
            if (row.kind() != RowKind.LINER || !same(wall, scene.facets())) {
                scene = scene.withWall(wall);
            }
        }
        return Optional.of(scene);
    }

    /** The first row of a ring stands where it stands; the others are offset by their share of a pitch. */
    private static Turn offset(List<Row> ring, Row row) {
        return ring.get(0).equals(row) ? Turn.ZERO : Turn.ofDegrees(row.ringOffset() * 360 / row.count());
    }

    private static boolean same(Wall wall, Facets facets) {
        for (int facet = 0; facet < facets.count(); facet++) {
            double x = facets.centroid(facet, 0);
            double r = Math.hypot(facets.centroid(facet, 1), facets.centroid(facet, 2));
            if (Meridian.distance(wall.curve(), x, r) < SAME_WALL) {
                return true;
            }
        }
        return false;
    }

    /**
     * The rows of other rings whose axial extent meets the stretch from a row to a scope tip.
     *
     * @param ring the scene of the row's ring
     * @param pose of the scope tip
     * @param reach how far from there the scope tip may be, mm
     */
    public List<Row> between(SightScene ring, Row row, Pose pose, double reach) throws UnusableShape {
        return Neighbour.between(this, this::swept, Meridian.of(ring.row().airfoil()), row, pose, reach).stream()
                .map(Neighbour::row)
                .toList();
    }

    /** One airfoil of a row; empty if it has no shape. */
    Optional<Swept> swept(Row row) throws UnusableShape {
        return airfoil(row).map(Swept::of);
    }
}
