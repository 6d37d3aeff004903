package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import teasel.TeaselFan;

class ModelInCodeTest {

    @TempDir
    Path folder;

    private Console console;
    private Path jar;

    @BeforeEach
    void aShelfWithTheJar() throws IOException {
        console = Console.in(folder)
                .with("XDG_CONFIG_HOME", folder.resolve("settings").toString())
                .with("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        jar = TeaselJar.copiedTo(folder.resolve("shelf/teasel-3.jar"));
    }

    /** Lets the jar run from now on. */
    private void agree() {
        String refusal = console.run("check", "shelf/teasel-3.jar").err();
        fine(
                "check",
                "--no-sight",
                "shelf/teasel-3.jar",
                "--trust-jar",
                refusal.strip().replaceFirst("(?s).* ", ""));
    }

    private Ran fine(String... words) {
        Ran ran = console.run(words);
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran;
    }

    @Test
    void isFoundOnTheShelfAndNothingIsWrongWithIt() {
        agree();
        assertThat(fine("models", "--models", "shelf").out())
                .startsWith("teasel-3: Teasel 3 fan stage, 2 rows, 40 airfoils, 3 views, ")
                .contains("Invented for training");
        assertThat(fine("check", "shelf/teasel-3.jar"))
                .isEqualTo(new Ran(0, "fine: " + jar + ": Teasel 3 fan stage (teasel-3)\n", ""));
    }

    @Test
    void isFrozenIntoTheJobThatIsStartedWithItSoThatTheJarIsNotNeededAnyMore() throws IOException {
        agree();
        fine("start", "job", "--model", "teasel-3", "--models", "shelf", "--serial", "1", "--task", "t", "--by", "b");
        assertThat(EngineJsonReader.read(folder.resolve("job/model/engine.json")))
                .isInstanceOfSatisfying(
                        Reading.Read.class,
                        read -> assertThat(read.model())
                                .isEqualTo(new TeaselFan().models().get(0)));

        Files.delete(jar);
        fine("log", "job", "view in-r", "datum r 1", "round 1", "view p1-r", "round 5");

        assertThat(fine("coverage", "job", "--row", "r").out()).contains("Fan rotor", "computed");
        assertThat(fine("verify", "job").out()).startsWith("sound: ");
    }

    @Test
    void startsAJobAlsoIfTheJarItselfIsNamed() {
        agree();
        assertThat(fine("start", "job", "--model", "shelf/teasel-3.jar", "--serial", "1", "--task", "t", "--by", "b")
                        .out())
                .startsWith("started job: Teasel 3 fan stage (teasel-3), serial 1");
    }

    @Test
    void doesNotKeepTheProgramFromStartingIfItIsBroken() throws IOException {
        byte[] whole = Files.readAllBytes(jar);
        Files.write(jar, Arrays.copyOf(whole, whole.length / 2));

        assertThat(fine("models", "--models", "shelf").out())
                .startsWith("refused: " + jar)
                .contains("bad-jar");
        assertThat(console.run("check", "shelf").out()).contains(jar + ":1:1: bad-jar: ");
    }

    @Test
    void inAJarOfDataBringsItsMeshFilesAlong() throws IOException {
        Path example = Path.of("..", "..", "plugins", "json", "examples", "mesh-off-clock", "good");
        Path data = folder.resolve("data.jar");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(data))) {
            for (String name : List.of("engine.json", "blade.ply")) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write(Files.readAllBytes(example.resolve(name)));
            }
        }

        fine("start", "job", "--model", "data.jar", "--serial", "1", "--task", "t", "--by", "b");

        assertThat(folder.resolve("job/model/engine.json")).hasSameBinaryContentAs(example.resolve("engine.json"));
        byte[] mesh = Files.readAllBytes(example.resolve("blade.ply"));
        try (Stream<Path> kept = Files.list(folder.resolve("job/model"))) {
            assertThat(kept).anySatisfy(file -> assertThat(file).hasBinaryContent(mesh));
        }
    }
}
