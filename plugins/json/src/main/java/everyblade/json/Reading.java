package everyblade.json;

import everyblade.spi.EngineModel;
import java.util.List;

/** What came of reading an engine model: the model, or why there is none. */
public sealed interface Reading {

    /**
     * A model to work with.
     *
     * @param model defaults filled in
     * @param warnings in order of place; at most {@value Problem#MOST}, then one that counts the rest
     */
    record Read(EngineModel model, List<Problem> warnings) implements Reading {
        public Read {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * No model.
     *
     * @param problems at least one error; errors before warnings, each in order of place; at most
     *     {@value Problem#MOST}, then one that counts the rest
     */
    record Unreadable(List<Problem> problems) implements Reading {
        public Unreadable {
            problems = List.copyOf(problems);
            if (!Problem.anyError(problems)) {
                throw new IllegalArgumentException("unreadable needs an error to say why");
            }
        }
    }
}
