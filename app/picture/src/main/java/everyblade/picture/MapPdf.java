package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.paint.ScenePdf;
import java.util.Optional;

/** The map as a PDF page in its true size, lines and words kept as such, its font embedded. */
public final class MapPdf {

    private MapPdf() {}

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
        return ScenePdf.write(MapScene.of(coverage, facts, row, style), style.theme());
    }
}
