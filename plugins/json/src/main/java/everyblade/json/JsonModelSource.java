package everyblade.json;

import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import java.nio.file.Path;
import java.util.List;

/** The data-only plugin: hands over the one model of an {@code engine.json}. */
public final class JsonModelSource implements EngineModelSource {

    private final String id;
    private final Reading reading;

    JsonModelSource(String id, Reading reading) {
        this.id = id;
        this.reading = reading;
    }

    /** The model in a file; it is read now. */
    public static JsonModelSource of(Path file) {
        return new JsonModelSource(file.toString(), EngineJsonReader.read(file));
    }

    @Override
    public String id() {
        return id;
    }

    /** What came of reading. */
    public Reading reading() {
        return reading;
    }

    /** @throws UnreadableModel if there is no model, with the problems */
    @Override
    public List<EngineModel> models() throws UnreadableModel {
        if (reading instanceof Reading.Read read) {
            return List.of(read.model());
        }
        throw new UnreadableModel((Reading.Unreadable) reading);
    }
}
