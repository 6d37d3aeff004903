package everyblade.spi;

import java.io.IOException;
import java.util.List;

/**
 * Hands engine models to the program: the one interface that a plugin implements.
 *
 * <p>A plugin in code is named in its jar's {@code META-INF/services/everyblade.spi.EngineModelSource} and has a public
 * constructor without arguments.
 */
public interface EngineModelSource {

    /** Name of the source, for messages: a plugin's own name, or the folder that the models come from. */
    String id();

    /**
     * The models, read or computed now.
     *
     * @return at least one model, ids unique
     * @throws IOException if they cannot be read; the message says what, where, why and what to do
     */
    List<EngineModel> models() throws IOException;
}
