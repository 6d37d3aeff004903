package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.scene.Scene;
import java.util.Optional;
import java.util.stream.Collectors;

/** The map as a scene, for whoever draws it or asks what lies where. */
public final class MapScene {

    private MapScene() {}

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static Scene of(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        if (row.isEmpty()) {
            return AllRows.of(coverage, facts, style);
        }
        return coverage.rows().stream()
                .filter(one -> one.row().id().equals(row.get()))
                .findFirst()
                .map(one -> OneRow.of(coverage, facts, one, style))
                .orElseThrow(() -> new IllegalArgumentException("there is no row " + row.get() + " in " + facts.model()
                        + ": its rows are "
                        + coverage.rows().stream().map(one -> one.row().id()).collect(Collectors.joining(", "))));
    }
}
