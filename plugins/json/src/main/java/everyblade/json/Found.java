package everyblade.json;

import everyblade.json.jar.CodeJar;
import everyblade.spi.EngineModel;
import java.nio.file.Path;
import java.util.List;

/** What was found where an engine model was looked for: a model, or why there is none. */
public sealed interface Found {

    /** The file, folder or jar. */
    Path origin();

    /** A model to work with. */
    record Loaded(EngineModel model, Path origin, List<Problem> warnings) implements Found {
        public Loaded {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * No model.
     *
     * @param problems at least one error
     */
    record Refused(Path origin, List<Problem> problems) implements Found {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** A jar of code that was not run, so that nobody knows its models yet. */
    record Code(Path origin, CodeJar jar) implements Found {}
}
