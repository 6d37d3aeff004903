package everyblade.json.jar;

import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Iterator;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets the code in one jar hand over its models, each as text, in the process where this is called: whatever one source
 * of them throws, the next one is asked too. The class loader is open no longer than that.
 */
final class Sources {

    /** Where a jar names its sources. */
    static final String SERVICE = "META-INF/services/" + EngineModelSource.class.getName();

    /** A damaged list of services can name more than could be meant, and fail at each. */
    static final int MOST_SOURCES = 100;

    /** A list of models need not end. */
    static final int MOST_MODELS = 100;

    private static final Pattern CLASS_VERSION = Pattern.compile("class file version ([0-9]{1,4})");

    /** Class files of Java 1 have version 45. */
    private static final int BEFORE_JAVA_1 = 44;

    private final CodeJar jar;
    private final String data;
    private final Function<EngineModel, byte[]> asText;
    private final Consumer<Handed> to;
    private boolean any;

    /** @param data name of the file that its models could be */
    Sources(CodeJar jar, String data, Function<EngineModel, byte[]> asText, Consumer<Handed> to) {
        this.jar = jar;
        this.data = data;
        this.asText = asText;
        this.to = to;
    }

    void handOver() throws IOException {
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {jar.jar().toUri().toURL()}, new SpiAlone())) {
            Thread.currentThread().setContextClassLoader(loader);
            step(ServiceLoader.load(EngineModelSource.class, loader).iterator());
        }
        if (!any) {
            hand(new Handed.Failed(new Complaint(
                    Fault.NO_MODEL,
                    "the jar holds neither " + data + " nor a source of models",
                    "there is nothing to load",
                    "put " + data + " at its root, or name a class in " + SERVICE)));
        }
    }

    private void step(Iterator<EngineModelSource> sources) {
        for (int step = 0; step < MOST_SOURCES && !Thread.currentThread().isInterrupted(); step++) {
            EngineModelSource source;
            try {
                if (!sources.hasNext()) {
                    return;
                }
                source = sources.next();
            } catch (Throwable thrown) { // a plugin may throw anything, and none of it concerns the program
                failed("does not start", thrown);
                continue;
            }
            models(source);
        }
    }

    private void models(EngineModelSource source) {
        try {
            int count = 0;
            for (EngineModel model : source.models()) {
                if (++count > MOST_MODELS) {
                    failed("hands over more than " + MOST_MODELS + " models", "the rest is left out");
                    return;
                }
                hand(new Handed.Model(jar.file(), asText.apply(model), jar.doubts()));
            }
            if (count == 0) {
                failed("hands over no model", "its list of models is empty");
            }
        } catch (Throwable thrown) { // as above
            failed("fails while it hands over its models", thrown);
        }
    }

    private void failed(String what, Throwable thrown) {
        Optional<LinkageError> linkage = JarRefusal.cause(thrown, LinkageError.class)
                .filter(error -> !(error instanceof ExceptionInInitializerError));
        if (linkage.orElse(null) instanceof UnsupportedClassVersionError newer) {
            Matcher version = CLASS_VERSION.matcher(JarRefusal.of(newer));
            String java =
                    version.find() ? "Java " + (Integer.parseInt(version.group(1)) - BEFORE_JAVA_1) : "a later Java";
            hand(new Handed.Failed(new Complaint(
                    Fault.NEWER_JAVA,
                    "the plugin " + jar.plugin() + " is compiled for " + java,
                    "this is Java " + Runtime.version().feature(),
                    "use a newer Java, or ask its author to compile it for Java 17")));
        } else if (linkage.isPresent()) {
            hand(new Handed.Failed(new Complaint(
                    Fault.PLUGIN_FAILED,
                    "the plugin " + jar.plugin() + " " + what,
                    JarRefusal.of(thrown),
                    "its author must put into the jar what it needs beyond the JDK, and compile it against version "
                            + EngineModelSource.SPI_VERSION + " of the plugin interface")));
        } else {
            failed(what, JarRefusal.of(thrown));
        }
    }

    private void failed(String what, String why) {
        hand(new Handed.Failed(new Complaint(
                Fault.PLUGIN_FAILED,
                "the plugin " + jar.plugin() + " " + what,
                why,
                "ask its author, or take it out of the folder")));
    }

    private void hand(Handed one) {
        any = true;
        to.accept(one);
    }
}
