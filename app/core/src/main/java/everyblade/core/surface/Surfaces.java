package everyblade.core.surface;

import everyblade.core.entry.Zoning;
import everyblade.spi.EngineModel;
import everyblade.spi.Position;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.util.Map;
import java.util.Optional;

/** The surface of one airfoil of a row, standing at clock 0. Every zone of the row has facets. */
public final class Surfaces {

    private Surfaces() {}

    /**
     * The airfoil as coverage is computed with, at {@link Fineness#STANDARD}, of a row whose shape is not in a file.
     *
     * @param position of movable vanes, if they stand at one
     * @return empty if the row has no shape
     * @throws UnusableShape if its shape gives no surface
     */
    public static Optional<Mesh> of(EngineModel model, Row row, Optional<Position> position) throws UnusableShape {
        return of(model, row, position, Fineness.STANDARD, Map.of());
    }

    /**
     * The airfoil of a row.
     *
     * @param position of movable vanes, if they stand at one: its stagger is added to that of every section; without
     *     effect on other shapes than axial ones
     * @param fineness without effect on a mesh from a file
     * @param files the contents of the model's mesh files, by name
     * @return empty if the row has no shape
     * @throws UnusableShape if its shape gives no surface
     */
    public static Optional<Mesh> of(
            EngineModel model, Row row, Optional<Position> position, Fineness fineness, Map<String, byte[]> files)
            throws UnusableShape {
        if (row.shape().isEmpty()) {
            return Optional.empty();
        }
        double turned = position.map(Position::stagger).orElse(0.0);
        try {
            return Optional.of(of(model, row, turned, fineness, files));
        } catch (UnusableShape e) {
            throw new UnusableShape("row " + row.id() + ": " + e.getMessage());
        }
    }

    private static Mesh of(EngineModel model, Row row, double turned, Fineness fineness, Map<String, byte[]> files)
            throws UnusableShape {
        Zoning zoning = Zoning.of(row);
        Shape shape = row.shape().orElseThrow();
        if (shape instanceof Shape.Axial axial) {
            return Skin.of(new AxialAirfoil(axial, Annulus.of(model), turned), zoning, fineness);
        }
        if (shape instanceof Shape.Radial radial) {
            return Skin.of(new RadialAirfoil(radial), zoning, fineness);
        }
        if (shape instanceof Shape.Liner liner) {
            return LinerSector.of(liner, row.count(), zoning, fineness);
        }
        String file = ((Shape.Mesh) shape).file();
        byte[] content = files.get(file);
        if (content == null) {
            throw new UnusableShape("the mesh file " + file
                    + " is not there, so that nothing is known of the surface; put it beside engine.json");
        }
        return ZonedMesh.of(MeshFile.read(content, file), zoning, file);
    }
}
