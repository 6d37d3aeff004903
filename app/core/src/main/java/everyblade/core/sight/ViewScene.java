package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Optional;

/** What surrounds the airfoils of a row: its ring with all that turns in it, and the walls. */
public final class ViewScene {

    private ViewScene() {}

    /**
     * The scene of a row.
     *
     * @return empty if the row has no shape
     * @throws UnusableShape if a shape of its ring gives no surface
     */
    public static Optional<Scene> of(EngineModel model, Row row) throws UnusableShape {
        Optional<Mesh> airfoil = Surfaces.of(model, row, Optional.empty());
        if (airfoil.isEmpty()) {
            return Optional.empty();
        }
        Scene scene = Scene.of(airfoil.get(), row.count(), Zoning.of(row));
        List<Row> ring = model.rows().stream()
                .filter(other -> row.ring().isPresent() && other.ring().equals(row.ring()))
                .toList();
        for (Row mate : ring) {
            Optional<Mesh> shape = mate.equals(row) ? Optional.empty() : Surfaces.of(model, mate, Optional.empty());
            if (shape.isPresent()) {
                Turn offset = offset(ring, mate).minus(offset(ring, row));
                scene = scene.withMate(new Ring(shape.get(), mate.count(), offset.wrapped()));
            }
        }
        for (Wall wall : model.walls()) {
            scene = scene.withWall(wall);
        }
        return Optional.of(scene);
    }

    /** The first row of a ring stands where it stands; the others are offset by their share of a pitch. */
    private static Turn offset(List<Row> ring, Row row) {
        return ring.get(0).equals(row) ? Turn.ZERO : Turn.ofDegrees(row.ringOffset() * 360 / row.count());
    }
}
