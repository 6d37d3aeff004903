package everyblade.spi;

import java.io.IOException;
import java.util.List;

/**
 * Hands engine models to the program: the one interface that a plugin in code implements.
 *
 * <p>A plugin is a jar. It names its sources in {@code META-INF/services/everyblade.spi.EngineModelSource}, one class a
 * line; each is public and has a public constructor without arguments. What the program must know before it loads any
 * class stands in the jar's manifest: {@value #MANIFEST_ID}, {@value #MANIFEST_VERSION} and {@value #MANIFEST_SPI}.
 *
 * <p>A plugin sees the JDK and this package. It is given a few seconds, is asked once, and keeps nothing open: a job
 * freezes the model that it was started with, as an {@code engine.json}. So a model says nothing that a file could not.
 */
public interface EngineModelSource {

    /**
     * The version of this package, major and minor. A plugin compiled against one minor works with every later one of
     * the same major. A new component of a record without a constructor as it was, or a new abstract method, makes a new
     * major.
     */
    String SPI_VERSION = "1.2";

    /** In the manifest: what the plugin is called; letters, digits, hyphens and dots. */
    String MANIFEST_ID = "Everyblade-Plugin";

    /** In the manifest: the plugin's own version, such as {@code 1.0.0}. */
    String MANIFEST_VERSION = "Everyblade-Plugin-Version";

    /**
     * In the manifest: the versions of this package that the plugin works with, from the first one to the first one
     * that it does not work with: {@code [1.0,3.0)}. {@code 1.2} alone means {@code [1.2,2.0)}.
     */
    String MANIFEST_SPI = "Everyblade-Spi";

    /** Name of the source, for messages. */
    String id();

    /**
     * The models, read or computed now, each time the same.
     *
     * @return 1 to 100 models, ids unique
     * @throws IOException if they cannot be read; the message says what, where, why and what to do
     */
    List<EngineModel> models() throws IOException;
}
