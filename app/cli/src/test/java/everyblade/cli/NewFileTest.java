package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code --out} writes, and what it never writes. */
class NewFileTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1", "look");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "job/map.svg",
                "job/journal.jsonl",
                "job/model/engine.json",
                "job/photos/map.svg",
                "job/../job/map.svg"
            })
    void neverWritesIntoAJob(String out) {
        Map<String, String> before = console.everything();

        Ran drawn = console.run("map", "job", "--out", out.endsWith(".svg") ? out : out + ".svg");

        assertThat(drawn.status()).isEqualTo(2);
        assertThat(drawn.err()).contains("within the job").endsWith("give a name elsewhere\n");
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void neverWritesIntoAJobThroughALink() throws IOException {
        Files.createSymbolicLink(console.file("pictures"), console.file("job/photos"));
        Files.createSymbolicLink(console.file("map.svg"), console.file("job/model/engine.json"));
        Map<String, String> before = console.everything();

        assertThat(console.run("map", "job", "--out", "pictures/map.svg").status())
                .isEqualTo(2);
        assertThat(console.run("map", "job", "--out", "map.svg").status()).isEqualTo(2);
        assertThat(console.run("report", "job", "--out", "job/report.pdf").status())
                .isEqualTo(2);
        assertThat(console.run("handover", "job", "--out", "job/report.pdf").status())
                .isEqualTo(2);

        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void leavesWhoMayReadAFileAsItWas() throws IOException {
        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();
        Path map = console.file("map.svg");
        Files.writeString(map, "old");
        for (String mode : new String[] {"rw-------", "rw-rw-r--", "rwxr-x---"}) {
            Files.setPosixFilePermissions(map, PosixFilePermissions.fromString(mode));

            assertThat(console.run("map", "job", "--out", "map.svg").status()).isZero();

            assertThat(Files.readString(map)).startsWith("<");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(map)))
                    .isEqualTo(mode);
        }
    }

    @Test
    void leavesALinkALinkAndWritesWhereItLeads() throws IOException {
        Files.createDirectory(console.file("elsewhere"));
        Files.writeString(console.file("elsewhere/map.svg"), "old");
        Files.createSymbolicLink(console.file("map.svg"), console.file("elsewhere/map.svg"));

        assertThat(console.run("map", "job", "--out", "map.svg").status()).isZero();

        assertThat(console.file("map.svg")).isSymbolicLink();
        assertThat(console.read("elsewhere/map.svg")).startsWith("<");
    }

    /** A process of its own, that is stopped while it writes. */
    static final class Slow {

        public static void main(String[] arguments) {
            Path out = Path.of(arguments[0]);
            new NewFile("--out", out, out).write(stream -> {
                stream.write(1);
                System.out.println("writing");
                LockSupport.parkNanos(TimeUnit.MINUTES.toNanos(1));
                stream.write(2);
            });
        }
    }

    @Test
    void leavesNothingHalfWrittenWhenItIsStopped(@TempDir Path place) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Slow.class.getName(),
                        place.resolve("map.svg").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(process.inputReader().readLine()).isEqualTo("writing");
        assertThat(place).isDirectoryContaining(file -> file.endsWith("map.svg.part-1"));

        process.destroy();

        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(place).isEmptyDirectory();
    }
}
