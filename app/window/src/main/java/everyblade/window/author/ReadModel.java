package everyblade.window.author;

import everyblade.core.sight.ViewScene;
import everyblade.spi.EngineModel;
import java.time.Instant;
import java.util.Map;

/**
 * An engine model that could be read, so that it can be drawn.
 *
 * @param model what its author wrote
 * @param meshes contents of its mesh files, by name; what is not there is not drawn
 * @param at when it was read
 * @param sound whether nothing refuses it
 */
public record ReadModel(EngineModel model, Map<String, byte[]> meshes, Instant at, boolean sound) {

    public ReadModel {
        meshes = Map.copyOf(meshes);
    }

    /** The engine as sight is computed with. */
    ViewScene scene() {
        return new ViewScene(model, meshes, Map.of());
    }
}
