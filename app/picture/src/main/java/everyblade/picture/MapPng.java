package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.paint.ScenePng;
import java.util.Optional;

/** The map as a PNG picture, fine enough to be read when enlarged. */
public final class MapPng {

    private MapPng() {}

    /** Of all rows, or of one, in the plain style. */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row) {
        return write(coverage, facts, row, MapStyle.PLAIN);
    }

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        return ScenePng.write(MapScene.of(coverage, facts, row, style), style.theme());
    }
}
