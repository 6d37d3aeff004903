package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.scene.Scene;
import java.util.Optional;

/** The map as a scene, for whoever draws it or asks what lies where. */
public final class MapScene {

    private MapScene() {}

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static Scene of(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        return AllRows.of(coverage, facts, style);
    }
}
