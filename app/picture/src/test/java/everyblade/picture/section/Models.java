package everyblade.picture.section;

import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Models for tests. */
final class Models {

    private Models() {}

    static EngineModel of(String json) {
        Reading reading = EngineJsonReader.read("engine.json", json.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Read read) {
            return read.model();
        }
        throw new AssertionError(((Reading.Unreadable) reading).problems());
    }

    static EngineModel rotor37() {
        try (InputStream in = Models.class.getResourceAsStream("rotor-37/engine.json")) {
            return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One straight row between two cylinders, the same section from root to tip; lengths mm. */
    static EngineModel plate(int count, double hub, double tip, double chord, double stagger) {
        return of("""
                { "schema": "everyblade/engine-model/1", "id": "p", "name": "Plate",
                  "walls": [ { "id": "hub", "curve": [[-900, %1$s], [900, %1$s]] },
                             { "id": "casing", "curve": [[-900, %2$s], [900, %2$s]] } ],
                  "rows": [ { "id": "r", "kind": "rotor", "count": %3$d, "shape": { "type": "axial", "sections": [
                    { "span": 0, "chord": %4$s, "stagger": %5$s, "camber": 0, "thickness": 0.02, "x": 0 },
                    { "span": 1, "chord": %4$s, "stagger": %5$s, "camber": 0, "thickness": 0.02, "x": 0 } ] } } ] }
                """.formatted(hub, tip + everyblade.spi.Shape.Axial.USUAL_CLEARANCE, count, chord, stagger));
    }

    static SpanCut cut(EngineModel model, double share) {
        Drawn drawn = Drawn.of(model, java.util.Map.of(), everyblade.words.Words.of(java.util.Locale.ENGLISH));
        RowSurface surface = drawn.surfaces().get(0);
        return SpanCut.of(surface, Channel.of(model, surface), share).orElseThrow();
    }
}
