package everyblade.picture.section;

import everyblade.core.surface.Fineness;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A model with the surfaces that its shapes give.
 *
 * @param model what its author wrote
 * @param words in which it is told
 * @param surfaces in the order of the rows; a row without a shape, or whose shape gives no surface, has none
 */
record Drawn(EngineModel model, Words words, List<RowSurface> surfaces) {

    static Drawn of(EngineModel model, Map<String, byte[]> files, Words words) {
        List<RowSurface> surfaces = new ArrayList<>();
        for (Row row : model.rows()) {
            surface(model, row, files).ifPresent(mesh -> surfaces.add(new RowSurface(row, mesh)));
        }
        return new Drawn(model, words, List.copyOf(surfaces));
    }

    private static Optional<Mesh> surface(EngineModel model, Row row, Map<String, byte[]> files) {
        try {
            return Surfaces.of(model, row, Optional.empty(), Fineness.STANDARD, files);
        } catch (UnusableShape toldByTheCheck) {
            return Optional.empty();
        }
    }

    /** The surface of a row. */
    Optional<RowSurface> surface(Row row) {
        return surfaces.stream().filter(one -> one.row().equals(row)).findFirst();
    }
}
