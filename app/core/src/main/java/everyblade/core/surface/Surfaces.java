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
            throw e.of(row.id());
        }
    }

    /**
     * The facets of an airfoil at {@link Fineness#STANDARD}, each divided into patches that lie on the true surface; of a
     * mesh from a file, on its faces.
     *
     * @param position of movable vanes, if they stand at one
     * @param files the contents of the model's mesh files, by name
     * @return empty if the row has no shape
     * @throws UnusableShape if its shape gives no surface
     */
    public static Optional<Patches> patches(
            EngineModel model, Row row, Optional<Position> position, Map<String, byte[]> files) throws UnusableShape {
        if (row.shape().isEmpty()) {
            return Optional.empty();
        }
        double turned = position.map(Position::stagger).orElse(0.0);
        Optional<Grid> grid = grid(model, row, turned, Fineness.STANDARD, Patches.SPLIT);
        return Optional.of(
                grid.isPresent()
                        ? Patches.of(grid.get())
                        : Patches.of(of(model, row, turned, Fineness.STANDARD, files), Zoning.of(row)));
    }

    private static Mesh of(EngineModel model, Row row, double turned, Fineness fineness, Map<String, byte[]> files)
            throws UnusableShape {
        Optional<Grid> grid = grid(model, row, turned, fineness, 1);
        return grid.isPresent() ? grid.get().mesh() : read(row, files);
    }

    /** Empty if the surface is in a file. */
    private static Optional<Grid> grid(EngineModel model, Row row, double turned, Fineness fineness, int split)
            throws UnusableShape {
        Zoning zoning = Zoning.of(row);
        Shape shape = row.shape().orElseThrow();
        if (shape instanceof Shape.Axial axial) {
            return Optional.of(Skin.of(
                    new AxialAirfoil(axial, Annulus.of(model, axial.clearance()), turned), zoning, fineness, split));
        }
        if (shape instanceof Shape.Radial radial) {
            return Optional.of(Skin.of(new RadialAirfoil(radial), zoning, fineness, split));
        }
        if (shape instanceof Shape.Liner liner) {
            return Optional.of(LinerSector.of(liner, row.count(), zoning, fineness, split));
        }
        return Optional.empty();
    }

    private static Mesh read(Row row, Map<String, byte[]> files) throws UnusableShape {
        Zoning zoning = Zoning.of(row);
        String file = ((Shape.Mesh) row.shape().orElseThrow()).file();
        byte[] content = files.get(file);
        if (content == null) {
            throw new UnusableShape(new ShapeFault.MissingFile(file));
        }
        return ZonedMesh.of(MeshFile.read(content, file), zoning, file);
    }
}
