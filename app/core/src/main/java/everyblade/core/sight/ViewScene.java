package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
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
 */
public record ViewScene(EngineModel model, Map<String, byte[]> files, Map<String, String> vanes) {

    /** A wall so close to a liner, mm, is the liner itself. */
    private static final double SAME_WALL = 0.5;

    public ViewScene {
        files = Map.copyOf(files);
        vanes = Map.copyOf(vanes);
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

    /**
     * A row with all that turns in its ring, and the walls.
     *
     * @return empty if the row has no shape
     * @throws UnusableShape if a shape of its ring gives no surface
     */
    public Optional<Scene> ring(Row row) throws UnusableShape {
        Optional<Mesh> airfoil = airfoil(row);
        if (airfoil.isEmpty()) {
            return Optional.empty();
        }
        Scene scene = Scene.of(airfoil.get(), row.count(), Zoning.of(row));
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
     * The scene of a row with the other rows that stand between it and a scope tip: those whose axial extent meets the
     * stretch from one to the other. What turns hides all that it sweeps. So does what stands still where its phase is not
     * known, unless the scope tip itself stands in it: then it stands between two vanes, and nobody knows which.
     *
     * @param ring the scene of the row's ring
     * @param pose of the scope tip
     * @param reach how far from there the scope tip may be, mm
     */
    public Scene with(Scene ring, Row row, Pose pose, double reach) throws UnusableShape {
        Scene scene = ring;
        Meridian own = Meridian.of(ring.row().airfoil());
        double from = Math.min(own.front(), pose.x() - reach);
        double to = Math.max(own.rear(), pose.x() + reach);
        for (Row other : model.rows()) {
            boolean mate =
                    other.equals(row) || row.ring().isPresent() && other.ring().equals(row.ring());
            Optional<Mesh> shape = mate ? Optional.empty() : airfoil(other);
            if (shape.isEmpty()) {
                continue;
            }
            Meridian swept = Meridian.of(shape.get());
            if (swept.rear() > from && swept.front() < to) {
                scene = with(scene, row, other, shape.get(), swept.distance(pose.x(), pose.r()) > reach);
            }
        }
        return scene;
    }

    private static Scene with(Scene scene, Row row, Row other, Mesh shape, boolean outside) {
        boolean turns = other.kind() == RowKind.ROTOR;
        if (!turns && other.kind() == RowKind.STATOR && other.phase().isPresent()) {
            Turn phase = Turn.ofDegrees(other.phase().getAsDouble());
            if (row.kind() == RowKind.ROTOR) {
                return scene.withFixed(new Ring(shape, other.count(), phase));
            }
            if (row.phase().isPresent()) {
                Turn offset = phase.minus(Turn.ofDegrees(row.phase().getAsDouble()));
                return scene.withMate(new Ring(shape, other.count(), offset.wrapped()));
            }
        }
        return turns || outside ? scene.withSwept(shape) : scene;
    }
}
