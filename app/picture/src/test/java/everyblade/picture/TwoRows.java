package everyblade.picture;

import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import java.nio.charset.StandardCharsets;

/**
 * An engine of two rows, invented for tests: the sight of {@code r}, 12 blades, is computed, and {@code p-r} shows some of
 * it well, some a little and some too coarsely for 0.5 mm; of {@code q}, 18 blades, {@code p-q} is stated to show the roots.
 */
public final class TwoRows {

    private static final String MODEL = """
            { "schema": "everyblade/engine-model/1", "id": "two", "name": "Two rows", "notice": "Invented for tests.",
              "walls": [ { "id": "hub", "curve": [[0, 60], [60, 60]] }, { "id": "casing", "curve": [[0, 100], [60, 100]] } ],
              "rows": [ { "id": "r", "name": "Shaped", "kind": "rotor", "count": 12, "source": "invented",
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 22, "stagger": 20, "camber": 20, "thickness": 0.08, "x": 30 },
                            { "span": 1, "chord": 22, "stagger": 50, "camber": 10, "thickness": 0.05, "x": 32 } ] } },
                        { "id": "q", "name": "Windowed", "kind": "rotor", "count": 18 } ],
              "scopeTips": [ { "id": "t", "cone": 90, "near": 2, "far": 80, "pixels": 640, "diameter": 4 } ],
              "views": [ { "id": "p-r", "row": "r", "scopeTip": "t", "stations": [
                           { "id": "near", "x": 12, "r": 85, "clock": 0, "forward": [1, 0.3, 0], "up": [0, 0, 1],
                             "within": { "mm": 0.5, "deg": 2 } } ] },
                         { "id": "p-q", "row": "q", "window": { "halfWidth": 5, "shows": ["root"] } } ] }
            """;

    private TwoRows() {}

    public static EngineModel model() {
        return ((Reading.Read) EngineJsonReader.read("two.json", MODEL.getBytes(StandardCharsets.UTF_8))).model();
    }
}
