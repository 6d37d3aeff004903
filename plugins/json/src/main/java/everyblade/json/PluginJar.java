package everyblade.json;

import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Opens a jar that holds an {@code engine.json} at its root, or classes that hand over models. Each jar has a class
 * loader of its own that sees the JDK and the plugin interface and nothing else of the program, so that neither can
 * disturb the other by its libraries.
 */
final class PluginJar {

    /** A damaged list of services can name more than could be meant, and fail at each. */
    private static final int MOST_SOURCES = 100;

    private PluginJar() {}

    static List<Found> open(Path jar) {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry data = zip.getEntry(EngineJsonReader.FILE);
            if (data != null) {
                try (InputStream in = zip.getInputStream(data)) {
                    String name = jar + "!/" + EngineJsonReader.FILE;
                    return ModelShelf.admit(new JsonModelSource(name, EngineJsonReader.read(name, in)), jar);
                }
            }
        } catch (IOException | RuntimeException e) {
            return ModelShelf.refused(jar, "is no readable jar: " + Wording.plain(String.valueOf(e)));
        }
        return fromClasses(jar);
    }

    private static List<Found> fromClasses(Path jar) {
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, new SpiAlone())) {
            List<Found> found = new ArrayList<>();
            Iterator<EngineModelSource> sources =
                    ServiceLoader.load(EngineModelSource.class, loader).iterator();
            for (int step = 0; step < MOST_SOURCES; step++) {
                try {
                    if (!sources.hasNext()) {
                        break;
                    }
                    found.addAll(ModelShelf.admit(sources.next(), jar));
                } catch (ServiceConfigurationError | LinkageError | RuntimeException e) {
                    found.addAll(ModelShelf.refused(jar, "failed to start: " + Wording.plain(String.valueOf(e))));
                }
            }
            return found.isEmpty()
                    ? ModelShelf.refused(jar, "holds neither engine.json nor a source of models")
                    : found;
        } catch (IOException e) {
            return ModelShelf.refused(jar, "cannot be closed: " + Wording.plain(String.valueOf(e)));
        }
    }

    /** Sees the JDK and the plugin interface. */
    private static final class SpiAlone extends ClassLoader {

        private static final String SPI = EngineModelSource.class.getPackageName() + ".";

        SpiAlone() {
            super(ClassLoader.getPlatformClassLoader());
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            if (name.startsWith(SPI)) {
                return Class.forName(name, false, EngineModelSource.class.getClassLoader());
            }
            throw new ClassNotFoundException(name);
        }
    }
}
