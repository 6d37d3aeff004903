package everyblade.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.CodeDoor;
import everyblade.json.jar.CodeJar;
import everyblade.json.jar.Fault;
import everyblade.json.jar.Handed;
import everyblade.json.jar.JarPatience;
import everyblade.json.jar.JarReader;
import everyblade.json.jar.Transcript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JarReaderTest {

    /** That never loses its patience. */
    private static final CodeDoor DOOR = ModelShelf.ownProcess((clock, processor) -> false);

    @TempDir
    Path folder;

    private static List<Handed> open(Path jar, CodeDoor door) {
        return new JarReader(EngineJsonReader.FILE, door).open(jar);
    }

    private static String source(String name, String id) {
        return PluginJars.source(name, "return " + PluginJars.MODEL.formatted(id, 19) + ";");
    }

    /** Java that leaves an empty file there. */
    private static String touch(Path file) {
        return "java.nio.file.Files.createFile(java.nio.file.Path.of(\"%s\"));"
                .formatted(file.toString().replace("\\", "\\\\"));
    }

    @Test
    void keeps_what_was_handed_over_before_it_lost_its_patience() throws IOException {
        Path asleep = folder.resolve("asleep");
        String sleeping = PluginJars.source(
                "Sleeps",
                touch(asleep) + "while (true) { try { Thread.sleep(3_600_000); } catch (InterruptedException e) { } }");
        Path jar = new PluginJars(folder).of("p.jar", List.of("Good", "Sleeps"), source("Good", "good"), sleeping);
        JarPatience untilItSleeps = (clock, processor) -> Files.exists(asleep);

        List<Handed> handed = open(jar, ModelShelf.ownProcess(untilItSleeps));

        assertThat(handed).hasSize(2);
        assertThat(handed.get(0))
                .isInstanceOfSatisfying(
                        Handed.Model.class,
                        model -> assertThat(new String(model.engineJson(), UTF_8))
                                .contains("\"good\""));
        assertThat(handed.get(1))
                .isInstanceOfSatisfying(
                        Handed.Failed.class,
                        failed -> assertThat(failed.complaint().fault()).isEqualTo(Fault.PLUGIN_TOO_SLOW));
        assertThat(ProcessHandle.current().descendants()).isEmpty();
    }

    @Test
    void says_what_there_is_to_know_of_code_without_running_it() throws Exception {
        Path touched = folder.resolve("touched");
        Path jar = touching(
                "p.jar",
                touched,
                PluginJars.manifest("Everyblade-Plugin: p", "Everyblade-Plugin-Version: 1.0", "Everyblade-Spi: 1.0"));

        String hash =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar)));
        assertThat(open(jar, CodeDoor.SHUT)).singleElement().isInstanceOfSatisfying(Handed.Code.class, code -> {
            assertThat(code.jar().plugin()).isEqualTo("p 1.0");
            assertThat(code.jar().signer()).isEmpty();
            assertThat(code.jar().sha256()).isEqualTo(hash);
        });
        assertThat(touched).doesNotExist();
    }

    @Test
    void asks_no_class_of_a_plugin_that_does_not_fit() throws IOException {
        Path touched = folder.resolve("touched");
        open(
                touching(
                        "newer.jar",
                        touched,
                        PluginJars.manifest(
                                "Everyblade-Plugin: p", "Everyblade-Plugin-Version: 1.0", "Everyblade-Spi: 9.0")),
                DOOR);
        assertThat(touched).doesNotExist();

        open(touching("fits.jar", touched, PluginJars.manifest("Made-By: hand")), DOOR);
        assertThat(touched).exists();
    }

    @Test
    void does_not_run_a_jar_that_is_another_one_than_was_agreed_to() throws IOException {
        Path touched = folder.resolve("touched");
        Path jar = touching("p.jar", touched, PluginJars.manifest("Made-By: hand"));

        List<Handed> handed = open(jar, code -> {
            try {
                Files.write(jar, new byte[] {0}, java.nio.file.StandardOpenOption.APPEND);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            return DOOR.open(code);
        });

        assertThat(handed)
                .singleElement()
                .isInstanceOfSatisfying(
                        Handed.Failed.class,
                        failed -> assertThat(failed.complaint().what()).endsWith("has just changed"));
        assertThat(touched).doesNotExist();
    }

    @Test
    void names_who_has_signed_a_jar_and_refuses_one_that_was_changed_since() throws Exception {
        Path jar = new PluginJars(folder).of("s.jar", List.of("Good"), source("Good", "good"));
        signed(jar);

        assertThat(open(jar, CodeDoor.SHUT))
                .singleElement()
                .isInstanceOfSatisfying(
                        Handed.Code.class,
                        code -> assertThat(code.jar().signer()).contains("CN=A. Author"));

        Map<String, byte[]> entries = entries(jar);
        entries.put("Good.class", new byte[] {1});
        assertThat(open(PluginJars.write(folder.resolve("t.jar"), entries), CodeDoor.SHUT))
                .singleElement()
                .isInstanceOfSatisfying(
                        Handed.Failed.class,
                        failed -> assertThat(failed.complaint().what()).contains("changed after it was signed"));

        entries = entries(jar);
        entries.put("Added.class", new byte[] {1});
        assertThat(open(PluginJars.write(folder.resolve("u.jar"), entries), CodeDoor.SHUT))
                .singleElement()
                .isInstanceOfSatisfying(
                        Handed.Code.class,
                        code -> assertThat(code.jar().signer()).isEmpty());
    }

    @Test
    void reads_of_a_damaged_transcript_what_is_sound_and_says_that_it_is_not_whole() throws IOException {
        CodeJar jar = new CodeJar(Path.of("p.jar"), "0".repeat(64), "p", Optional.empty(), "p.jar as x", List.of());
        byte[] whole = Transcript.of(List.of(
                new Handed.Model("p.jar as x", "{}".getBytes(UTF_8), List.of()),
                new Handed.Failed(new everyblade.json.jar.Complaint(Fault.PLUGIN_FAILED, "a", "b", "c"))));
        assertThat(Transcript.read(jar, whole).whole()).isTrue();
        assertThat(Transcript.read(jar, whole).handed()).hasSize(2);
        for (int length = 0; length < whole.length; length++) {
            assertThat(Transcript.read(jar, Arrays.copyOf(whole, length)).whole())
                    .isFalse();
        }
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            byte[] damaged = whole.clone();
            damaged[random.nextInt(whole.length)] = (byte) random.nextInt();
            assertThat(Transcript.read(jar, damaged).handed()).hasSizeLessThanOrEqualTo(2);
        }
    }

    private Path touching(String name, Path touched, byte[] manifest) throws IOException {
        String member = "{ static { try { " + touch(touched)
                + " } catch (java.io.IOException e) { throw new java.io.UncheckedIOException(e); } } static";
        Map<String, byte[]> entries =
                new PluginJars(folder).classes(source("P", "p").replace("{ static", member));
        entries.put(PluginJars.SERVICE, "P".getBytes(UTF_8));
        entries.put(PluginJars.MANIFEST, manifest);
        return PluginJars.write(folder.resolve(name), entries);
    }

    private void signed(Path jar) throws Exception {
        tool("keytool", "-genkeypair", "-alias", "a", "-dname", "CN=A. Author", "-keyalg", "EC", "-validity", "10000");
        tool("jarsigner", jar.toString(), "a");
    }

    private void tool(String name, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", name).toString()));
        command.addAll(List.of("-keystore", folder.resolve("key.p12").toString(), "-storepass", "secret"));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
    }

    private static Map<String, byte[]> entries(Path jar) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (var entry : java.util.Collections.list(zip.entries())) {
                entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return entries;
    }
}
