package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.svg.SvgWriter;
import java.util.Optional;

/** The map as SVG text: the same bytes for the same job, whatever the machine and its locale. */
public final class MapSvg {

    private MapSvg() {}

    /** Of all rows, or of one, in the plain style. */
    public static String write(Coverage coverage, MapFacts facts, Optional<String> row) {
        return write(coverage, facts, row, MapStyle.PLAIN);
    }

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static String write(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        return SvgWriter.write(MapScene.of(coverage, facts, row, style), style.theme());
    }
}
