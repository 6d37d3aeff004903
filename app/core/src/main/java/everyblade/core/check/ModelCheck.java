package everyblade.core.check;

import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds what is wrong with the surfaces of a model, without computing sight. A row whose shape gives no surface is told as
 * such and is left out of the rest.
 */
public final class ModelCheck {

    private ModelCheck() {}

    /**
     * The flaws of a model, in the order of its rows and views.
     *
     * @param files the contents of its mesh files, by name; those that are not there are told
     */
    public static List<Flaw> of(EngineModel model, Map<String, byte[]> files) {
        List<Flaw> flaws = new ArrayList<>();
        List<CheckedSurface> surfaces = new ArrayList<>();
        for (int i = 0; i < model.rows().size(); i++) {
            surface(model, i, files, flaws).ifPresent(surfaces::add);
        }
        surfaces.forEach(surface -> MeshCheck.of(surface, flaws));
        surfaces.forEach(surface -> ChordCheck.of(surface, flaws));
        List<CheckedSurface> airfoils =
                surfaces.stream().filter(CheckedSurface::isAirfoil).toList();
        new AirfoilCheck(model, airfoils, flaws).run();
        new StationCheck(model, airfoils, flaws).run();
        new AimCheck(model, files, surfaces, flaws).run();
        return List.copyOf(flaws);
    }

    private static Optional<CheckedSurface> surface(
            EngineModel model, int index, Map<String, byte[]> files, List<Flaw> flaws) {
        Row row = model.rows().get(index);
        Optional<String> file = row.shape().map(shape -> shape instanceof Shape.Mesh mesh ? mesh.file() : null);
        if (file.isPresent() && !files.containsKey(file.get())) {
            flaws.add(new Flaw(
                    Flaw.Kind.MISSING_MESH,
                    new CheckedPart.ShapeOf(index),
                    new Wrong.MissingMesh(file.get(), row.id()),
                    Wrong.Because.NOTHING_KNOWN,
                    Wrong.Mend.PUT_MESH_BESIDE));
            return Optional.empty();
        }
        try {
            Optional<Mesh> mesh = Surfaces.of(model, row, Optional.empty(), Fineness.STANDARD, files);
            return mesh.map(one -> CheckedSurface.of(index, row, one));
        } catch (UnusableShape unusable) {
            flaws.add(new Flaw(
                    file.isPresent() ? Flaw.Kind.BAD_MESH : Flaw.Kind.NO_SURFACE,
                    new CheckedPart.ShapeOf(index),
                    new Wrong.NoSurface(row.id()),
                    unusable.told().fault(),
                    unusable.told().mend()));
            return Optional.empty();
        }
    }
}
