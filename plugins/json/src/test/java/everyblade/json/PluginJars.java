package everyblade.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Makes jars of plugins for tests.
 *
 * @param folder to work in
 */
record PluginJars(Path folder) {

    static final String SERVICE = "META-INF/services/" + EngineModelSource.class.getName();

    static final String MANIFEST = "META-INF/MANIFEST.MF";

    /** Java for a list of one model; takes an id and a count. */
    static final String MODEL = """
            List.of(new EngineModel("%s", "In code", Optional.empty(),
                List.of(new Spool("shaft", "Shaft", Direction.CW,
                    List.of(new Pad("pad", "Pad", Ratio.ONE, Set.of(Direction.CW), 0, 0, 0)))),
                List.of(),
                List.of(new Row("c1", "Rotor", RowKind.ROTOR, Optional.of("shaft"), %d, Direction.CW, 0, 2, List.of(),
                    false, List.of(), Optional.empty(), 0, OptionalDouble.empty(), Optional.empty(), Map.of(),
                    Optional.empty())),
                List.of(), List.of(), List.of()))""";

    /** A source of models in Java. */
    static String source(String name, String body) {
        return "import everyblade.spi.*; import java.util.*; public class " + name
                + " implements EngineModelSource { static final String NAME = \"" + name + "\";"
                + " public String id() { return NAME; }"
                + " public List<EngineModel> models() throws java.io.IOException { " + body + " } }";
    }

    /** A manifest that says these lines. */
    static byte[] manifest(String... lines) {
        return ("Manifest-Version: 1.0\r\n" + String.join("\r\n", lines) + "\r\n\r\n").getBytes(UTF_8);
    }

    /** Compiles the sources, into a jar that names these services and says nothing of itself. */
    Path of(String jar, List<String> services, String... sources) throws IOException {
        Map<String, byte[]> entries = classes(sources);
        entries.put(SERVICE, String.join("\n", services).getBytes(UTF_8));
        return write(folder.resolve(jar), entries);
    }

    /** The class files of these sources, by the names of their entries. */
    Map<String, byte[]> classes(String... sources) throws IOException {
        Path classes = Files.createTempDirectory(folder, "classes");
        Map<String, byte[]> entries = new TreeMap<>();
        for (String source : sources) {
            String name = source.replaceAll("(?s).*public class (\\w+) .*", "$1");
            Path file = Files.writeString(classes.resolve(name + ".java"), source);
            int status = ToolProvider.getSystemJavaCompiler()
                    .run(null, null, null, "-proc:none", "-d", classes.toString(), "-cp", spiPath(), file.toString());
            assertThat(status).as(source).isZero();
        }
        try (Stream<Path> files = Files.list(classes)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".class")).toList()) {
                entries.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return entries;
    }

    static Path write(Path jar, Map<String, byte[]> entries) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : new TreeMap<>(entries).entrySet()) {
                zip.putNextEntry(new JarEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return jar;
    }

    private static String spiPath() {
        return Path.of(URI.create(EngineModelSource.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toString()))
                .toString();
    }
}
