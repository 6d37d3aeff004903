package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.Fault;
import everyblade.json.jar.Handed;
import everyblade.json.jar.JarReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JarReaderTest {

    @TempDir
    Path folder;

    private List<Handed> open(Path jar, Duration patience) {
        return new JarReader(
                        EngineJsonReader.FILE,
                        model -> EngineJsonWriter.write(model).getBytes(StandardCharsets.UTF_8),
                        patience)
                .open(jar);
    }

    private static String source(String name, String id) {
        return PluginJars.source(name, "return " + PluginJars.MODEL.formatted(id, 19) + ";");
    }

    @Test
    void keeps_what_was_handed_over_before_it_lost_its_patience() throws IOException {
        String sleeping = PluginJars.source(
                "Sleeps", "try { Thread.sleep(3_600_000); } catch (InterruptedException woken) { } return List.of();");
        Path jar = new PluginJars(folder).of("p.jar", List.of("Good", "Sleeps"), source("Good", "good"), sleeping);

        List<Handed> handed = open(jar, Duration.ofSeconds(2));

        assertThat(handed).hasSize(2);
        assertThat(handed.get(0))
                .isInstanceOfSatisfying(
                        Handed.Model.class,
                        model -> assertThat(new String(model.engineJson(), StandardCharsets.UTF_8))
                                .contains("\"good\""));
        assertThat(handed.get(1))
                .isInstanceOfSatisfying(
                        Handed.Failed.class,
                        failed -> assertThat(failed.complaint().fault()).isEqualTo(Fault.PLUGIN_TOO_SLOW));
    }

    @Test
    void wakes_what_it_leaves_alone_so_that_a_sleeper_ends_and_its_jar_is_closed() throws Exception {
        Path woken = folder.resolve("woken");
        String sleeping =
                PluginJars.source("Sleeps", """
                try {
                    Thread.sleep(3_600_000);
                } catch (InterruptedException e) {
                    java.nio.file.Files.createFile(java.nio.file.Path.of("%s"));
                }
                return List.of();""".formatted(woken.toString().replace("\\", "\\\\")));

        open(new PluginJars(folder).of("sleeper.jar", List.of("Sleeps"), sleeping), Duration.ofMillis(500));

        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("plugin sleeper.jar")) {
                thread.join(30_000);
                assertThat(thread.isAlive()).isFalse();
            }
        }
        assertThat(Files.exists(woken)).isTrue();
    }

    @Test
    void asks_no_class_of_a_plugin_that_does_not_fit() throws IOException {
        Path touched = folder.resolve("touched");
        String touching = source("P", "p")
                .replace("{ static", """
                { static { try { java.nio.file.Files.createFile(java.nio.file.Path.of("%s")); }
                           catch (java.io.IOException e) { throw new java.io.UncheckedIOException(e); } } static""".formatted(touched.toString().replace("\\", "\\\\")));
        PluginJars jars = new PluginJars(folder);
        var entries = jars.classes(touching);
        entries.put(PluginJars.SERVICE, "P".getBytes(StandardCharsets.UTF_8));
        entries.put(
                PluginJars.MANIFEST,
                PluginJars.manifest("Everyblade-Plugin: p", "Everyblade-Plugin-Version: 1.0", "Everyblade-Spi: 9.0"));

        open(PluginJars.write(folder.resolve("newer.jar"), entries), Duration.ofSeconds(10));
        assertThat(touched).doesNotExist();

        entries.remove(PluginJars.MANIFEST);
        open(PluginJars.write(folder.resolve("fits.jar"), entries), Duration.ofSeconds(10));
        assertThat(touched).exists();
    }
}
