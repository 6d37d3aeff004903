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
import java.util.regex.Pattern;

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
                    "the mesh file " + file.get() + " of the row " + row.id() + " is not there",
                    "nothing is known of the surface",
                    "put it beside engine.json, or correct its name"));
            return Optional.empty();
        }
        try {
            Optional<Mesh> mesh = Surfaces.of(model, row, Optional.empty(), Fineness.STANDARD, files);
            return mesh.map(one -> CheckedSurface.of(index, row, one));
        } catch (UnusableShape unusable) {
            flaws.add(unusable(file.isPresent() ? Flaw.Kind.BAD_MESH : Flaw.Kind.NO_SURFACE, index, row, unusable));
            return Optional.empty();
        }
    }

    /** What follows the last semicolon of the message is what to do. */
    private static Flaw unusable(Flaw.Kind kind, int index, Row row, UnusableShape unusable) {
        String subject = "row " + row.id() + ": ";
        String message = unusable.getMessage().replaceFirst("^" + Pattern.quote(subject), "");
        int end = message.lastIndexOf("; ");
        return new Flaw(
                kind,
                new CheckedPart.ShapeOf(index),
                "the shape of the row " + row.id() + " gives no surface",
                end < 0 ? message : message.substring(0, end),
                end < 0 ? "correct the shape" : message.substring(end + 2));
    }
}
