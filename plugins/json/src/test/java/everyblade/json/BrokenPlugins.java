package everyblade.json;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Fills a folder with jars that are broken in every way that we could think of, and two sound ones, first and last. */
final class BrokenPlugins {

    private static final String ID = "Everyblade-Plugin: p";
    private static final String VERSION = "Everyblade-Plugin-Version: 1.0.0";
    private static final String SOUND = "return " + PluginJars.MODEL.formatted("sound", 19) + ";";
    private static final String DATA = EngineJsonReader.FILE;
    private static final int MEGABYTE = 1 << 20;

    private final Path folder;
    private final PluginJars jars;

    /** @param work for what lies beside */
    BrokenPlugins(Path folder, Path work) {
        this.folder = folder;
        this.jars = new PluginJars(work);
    }

    void fill() throws IOException {
        models("a-sound", SOUND.replace("\"sound\"", "\"first\""));
        models("z-sound", SOUND.replace("\"sound\"", "\"last\""));
        thatDoNotStart();
        thatFailAtWork();
        thatEndTheirProcess();
        thatChangeWhatIsAllOnesOwn();
        thatSayWrongThingsOfThemselves();
        thatAreNoGoodJars();
        thatAreTooMuch();
    }

    private void thatDoNotStart() throws IOException {
        plugin("missing-class", Map.of());
        member("throwing-constructor", "public P() { throw new IllegalStateException(\"no table\"); }");
        member("throwing-initialiser", "static { if (true) throw new IllegalStateException(\"no row\"); }");
        member("overflowing-initialiser", "static int f(int i) { return 1 + f(i + 1); } static { f(0); }");
        member("hidden-constructor", "P(int i) { }");
        member("endless-constructor", "public P() { while (true) { Thread.onSpinWait(); } }");
        plugin("wrong-type", jars.classes("public class P extends Object {}"));
        byte[] other = jars.classes(PluginJars.source("Q", SOUND)).get("Q.class");
        plugin("wrong-name", Map.of("P.class", other));
        byte[] newer = jars.classes(PluginJars.source("P", SOUND)).get("P.class");
        ByteBuffer.wrap(newer).putShort(6, (short) 65);
        plugin("newer-java", Map.of("P.class", newer));
        plugin("no-class-file", Map.of("P.class", "garbage".getBytes(UTF_8)));
        PluginJars.write(jar("garbage-services"), Map.of(PluginJars.SERVICE, "\u0000{\n\u00ffé é".getBytes(UTF_8)));
    }

    private void thatFailAtWork() throws IOException {
        models("missing-library", "throw new NoClassDefFoundError(\"a/b/Table\");");
        models("missing-method", "throw new NoSuchMethodError(\"everyblade.spi.Row.colour()\");");
        models("throwing", "throw new java.io.IOException(\"table 7 is missing; copy it beside\");");
        models("overflowing", "return models();");
        models("out-of-memory", "return List.of(new EngineModel[Integer.MAX_VALUE]);");
        models("endless-models", """
                EngineModel one = %s.get(0);
                return new AbstractList<>() {
                    public EngineModel get(int i) { return one; }
                    public int size() { return Integer.MAX_VALUE; }
                };""".formatted(PluginJars.MODEL.formatted("again", 19)));
        models("null-list", "return null;");
        models("null-model", "return Collections.singletonList(null);");
        models("null-inside", SOUND.replace("\"In code\", Optional.empty()", "\"In code\", null"));
        models("empty-list", "return List.of();");
        models("not-a-number", SOUND.replace("Set.of(Direction.CW), 0,", "Set.of(Direction.CW), Double.NaN,"));
        models("wrong-count", SOUND.replace("19", "0"));
        models("evil-exception", """
                throw new RuntimeException() {
                    public String getMessage() { throw new IllegalStateException(); }
                    public synchronized Throwable getCause() { return this; }
                };""");
        models("long-message", "throw new RuntimeException(\"a\\nb\\u2029\".repeat(1_000_000));");
    }

    private void thatEndTheirProcess() throws IOException {
        models("exits", "System.exit(0); return null;");
        models("halts", "Runtime.getRuntime().halt(7); return null;");
        models("fills-memory", "List<byte[]> all = new ArrayList<>(); while (true) { all.add(new byte[1 << 20]); }");
        models("forges", """
                java.nio.file.Files.write(java.nio.file.Path.of("..", "transcript"),
                    new byte[] {'b', 'm', 127, 127, 127, 127, '{'});
                Runtime.getRuntime().halt(0);
                return null;""");
    }

    /** Each is sound but for what it does beside, and tells a model named after it. */
    private void thatChangeWhatIsAllOnesOwn() throws IOException {
        beside(
                "locale",
                "Locale.setDefault(Locale.forLanguageTag(\"tr\")); TimeZone.setDefault(TimeZone.getTimeZone(\"Asia/Tokyo\"));");
        beside(
                "security",
                "for (var one : java.security.Security.getProviders()) { java.security.Security.removeProvider(one.getName()); }");
        beside("properties", "System.getProperties().clear();");
        beside("endless-threads", """
                for (int i = 0; i < 20; i++) {
                    new Thread(() -> { while (true) { java.util.concurrent.locks.LockSupport.park(); } }).start();
                }""");
        beside("endless-hook", """
                Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (true) { Thread.onSpinWait(); } }));""");
        beside("loud", """
                System.out.println("kept 1".repeat(100_000)); System.err.println("refused");
                new java.io.PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out)).println("x".repeat(1 << 20));""");
        beside("closed-streams", "System.out.close(); System.err.close(); System.in.close(); System.setOut(null);");
        beside("environment", """
                if (System.getenv().keySet().stream().anyMatch(name -> !name.startsWith("L"))) {
                    throw new java.io.IOException("sees " + System.getenv());
                }""");
        beside("litter", "java.nio.file.Files.writeString(java.nio.file.Path.of(\"litter\"), \"litter\");");
    }

    private void beside(String name, String does) throws IOException {
        models(name, does + SOUND.replace("\"sound\"", '"' + name + '"'));
    }

    private void thatSayWrongThingsOfThemselves() throws IOException {
        said("newer-spi", ID, VERSION, "Everyblade-Spi: 1.9");
        said("next-spi", ID, VERSION, "Everyblade-Spi: [2.0,4.0)");
        said("older-spi", ID, VERSION, "Everyblade-Spi: [0.1,1.0)");
        said("empty-range", ID, VERSION, "Everyblade-Spi: [2.0,1.0)");
        said("half-told", ID, "Everyblade-Spi: 1.0");
        said("strange-version", ID, "Everyblade-Plugin-Version: newest", "Everyblade-Spi: 1.0");
        said("other-jars", "Class-Path: ../lib/everyblade-json.jar");
        said("untold");
        PluginJars.write(jar("garbage-manifest"), Map.of(PluginJars.MANIFEST, "no line\nof any kind".getBytes(UTF_8)));
    }

    private void thatAreNoGoodJars() throws IOException {
        Files.writeString(jar("no-zip"), "no zip file");
        Files.write(jar("empty-file"), new byte[0]);
        byte[] whole = Files.readAllBytes(jar("a-sound"));
        Files.write(jar("cut-off"), Arrays.copyOf(whole, whole.length / 2));
        PluginJars.write(jar("no-model"), Map.of("readme.txt", new byte[0]));
        PluginJars.write(jar("slip-up"), Map.of("../../out", new byte[0], DATA, new byte[0]));
        PluginJars.write(jar("slip-inside"), Map.of("a/../../out", new byte[0], DATA, new byte[0]));
        PluginJars.write(jar("slip-root"), Map.of("/etc/out", new byte[0], DATA, new byte[0]));
        PluginJars.write(jar("slip-backslash"), Map.of("..\\out", new byte[0], DATA, new byte[0]));
        PluginJars.write(jar("slip-drive"), Map.of("C:out", new byte[0], DATA, new byte[0]));
    }

    private void thatAreTooMuch() throws IOException {
        try (RandomAccessFile hole = new RandomAccessFile(jar("huge-file").toFile(), "rw")) {
            hole.setLength(10L << 30); // ten gigabytes of nothing take no room
        }
        Map<String, byte[]> many = new TreeMap<>();
        for (int i = 0; i <= 10_000; i++) {
            many.put("e" + i, new byte[0]);
        }
        PluginJars.write(jar("many-entries"), many);
        brackets("gigabyte-of-brackets", 1024);
        brackets("deep-brackets", 16);
        brackets("long-brackets", 65);
    }

    private Path jar(String name) {
        return folder.resolve(name + ".jar");
    }

    /** A plugin whose {@code models()} does this. */
    private void models(String name, String body) throws IOException {
        plugin(name, jars.classes(PluginJars.source("P", body)));
    }

    /** A plugin that is sound but for this member of its class. */
    private void member(String name, String member) throws IOException {
        plugin(name, jars.classes(PluginJars.source("P", SOUND).replace("{ static", "{ " + member + " static")));
    }

    /** A plugin whose manifest is as it should be, with the source P. */
    private void plugin(String name, Map<String, byte[]> classes) throws IOException {
        plugin(name, PluginJars.manifest(ID, VERSION, "Everyblade-Spi: 1.0"), classes);
    }

    /** A plugin whose class must not be loaded before its manifest is read: unless it is untold, loading it fails. */
    private void said(String name, String... lines) throws IOException {
        String body = SOUND.replace("\"sound\"", '"' + name + '"');
        plugin(name, PluginJars.manifest(lines), jars.classes(PluginJars.source("P", body)));
    }

    private void plugin(String name, byte[] manifest, Map<String, byte[]> classes) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>(classes);
        entries.put(PluginJars.SERVICE, "P".getBytes(UTF_8));
        entries.put(PluginJars.MANIFEST, manifest);
        PluginJars.write(jar(name), entries);
    }

    /** So many megabytes of opening brackets. */
    private void brackets(String name, int megabytes) throws IOException {
        byte[] megabyte = new byte[MEGABYTE];
        Arrays.fill(megabyte, (byte) '[');
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar(name)))) {
            zip.setLevel(Deflater.BEST_SPEED);
            zip.putNextEntry(new ZipEntry(DATA));
            for (int i = 0; i < megabytes; i++) {
                zip.write(megabyte);
            }
        }
    }

    /** The names of the jars, without their ending. */
    List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString().replace(".jar", ""))
                    .sorted()
                    .toList();
        }
    }
}
