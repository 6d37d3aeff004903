package everyblade.practice;

import everyblade.core.sight.ViewScene;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import java.nio.file.Path;
import java.util.Map;

/** The engine models that come with the program. */
public final class Engines {

    private Engines() {}

    public static ViewScene scene(String id) {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        if (EngineJsonReader.read(file) instanceof Reading.Read read) {
            return new ViewScene(read.model(), Map.of(), Map.of());
        }
        throw new AssertionError(file + " cannot be read");
    }
}
