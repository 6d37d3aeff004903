package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartCommandTest {

    @TempDir
    Path folder;

    @Test
    void makesAJobFolderAndSaysOfWhatEngine() {
        Console console = Console.in(folder);

        Ran started = console.start();

        assertThat(started).isEqualTo(new Ran(0, """
                started job: Ring of twelve (ring), serial 7
                Invented for tests.
                Judged by: line of sight at least 30° to the surface; a detail of 0.8 mm on 3 picture points; light, depth \
                of field and time in view are not judged.
                """, ""));
        assertThat(console.journal())
                .singleElement()
                .asString()
                .contains(
                        "\"at\":\"2026-05-14T06:00:00Z\"",
                        "\"by\":\"Ann\"",
                        "\"model\":\"ring\"",
                        "\"task\":\"routine\"");
    }

    @Test
    void freezesTheModelByteForByte() {
        Console console = Console.in(folder);
        console.start();

        assertThat(console.read("job/model/engine.json")).isEqualTo(Console.RING);
    }

    @Test
    void keepsTheSettingsWithTheirDefaults() {
        Console console = Console.in(folder);

        console.start("--detail", "0.5mm", "--least-view", "0,3s", "--set", "grazing=40", "--set", "seen=0,9");

        assertThat(console.journal().get(0))
                .contains("\"detail\":0.5", "\"least-view\":0.3", "\"grazing\":40", "\"grazing-leading\":40")
                .contains("\"seen\":0.9", "\"pixels\":3", "\"edge\":0.95");
    }

    /** Without a detail no view is too coarse, and "seen" says little. */
    @Test
    void asksForADetailThatAPersonCanSeeUnlessToldOtherwise() {
        Console console = Console.in(folder);

        assertThat(console.start().out()).contains("Judged by: line of sight at least 30°", "a detail of 0.8 mm");
        assertThat(console.journal().get(0)).contains("\"detail\":0.8");
        assertThat(Console.in(folder.resolve("fine")).start("--detail", "0.3mm").out())
                .contains("a detail of 0.3 mm");
        assertThat(Console.in(folder.resolve("set"))
                        .start("--set", "detail=0.5")
                        .out())
                .contains("a detail of 0.5 mm");

        Console any = Console.in(folder.resolve("any"));
        assertThat(any.start("--detail", "none").out()).contains("no detail asked, so no view is too coarse");
        assertThat(any.journal().get(0)).doesNotContain("detail");
    }

    @Test
    void takesATimeWithItsDifferenceFromUtc() {
        Console console = Console.in(folder);

        console.start("--at", "2026-01-31T08:15:00+02:00");

        assertThat(console.journal().get(0)).contains("\"at\":\"2026-01-31T06:15:00Z\"");
    }

    @Test
    void namesAnEarlierJobThatMustBeOne() {
        Console console = Console.in(folder);
        console.start();

        Ran next = console.startNext("next", "job");

        assertThat(next.status()).isZero();
        assertThat(console.read("next/journal.jsonl"))
                .contains("\"previous\":\"" + console.file("job").toAbsolutePath() + "\"");
    }

    @Nested
    class TheModel {

        @Test
        void mayBeAnIdOnTheShelf() {
            Console console = Console.in(folder);
            console.write("shelf/other/engine.json", Console.RING.replace("\"ring\"", "\"other\""));

            Ran started = console.run(
                    "start",
                    "job",
                    "--models",
                    "shelf",
                    "--model",
                    "other",
                    "--serial",
                    "7",
                    "--task",
                    "t",
                    "--by",
                    "Ann");

            assertThat(started.out()).startsWith("started job: Ring of twelve (other)");
        }

        @Test
        void mayBeItsFile() {
            Console console = Console.in(folder);

            Ran started = console.run(
                    "start", "job", "--model", "ring/engine.json", "--serial", "7", "--task", "t", "--by", "Ann");

            assertThat(started.status()).isZero();
        }

        @Test
        void mayBeAJar() throws IOException {
            Console console = Console.in(folder);
            URI jar = URI.create("jar:" + console.file("ring.jar").toUri());
            try (FileSystem zip = FileSystems.newFileSystem(jar, Map.of("create", "true"))) {
                Files.writeString(zip.getPath("engine.json"), Console.RING, StandardCharsets.UTF_8);
            }

            Ran started =
                    console.run("start", "job", "--model", "ring.jar", "--serial", "7", "--task", "t", "--by", "Ann");

            assertThat(started.status()).isZero();
            assertThat(console.run("log", "job", "view p-r").status()).isZero();
        }

        @Test
        void comesFromTheProgramTheOptionTheEnvironmentAndTheConfiguration() {
            Console console = Console.in(folder);
            for (String place : new String[] {"home/models", "given", "named", "config/everyblade/models"}) {
                String id = place.substring(0, 4);
                console.write(place + "/" + id + "/engine.json", Console.RING.replace("\"ring\"", '"' + id + '"'));
            }

            Ran models = console.installedIn(console.file("home"))
                    .with("EVERYBLADE_MODELS", "named")
                    .with("XDG_CONFIG_HOME", console.file("config").toString())
                    .run("models", "--models", "given");

            assertThat(models.outLines())
                    .filteredOn(line -> !line.startsWith(" "))
                    .extracting(line -> line.substring(0, line.indexOf(':')))
                    .containsExactly("home", "give", "name", "conf");
        }

        @Test
        void isRefusedWithTheFirstProblemIfItCannotBeRead() {
            Console console = Console.in(folder);
            console.write("bad/engine.json", Console.RING.replace("\"count\": 12", "\"count\": 0"));

            Ran started = console.run("start", "job", "--model", "bad", "--serial", "7", "--task", "t", "--by", "Ann");

            assertThat(started.status()).isEqualTo(2);
            assertThat(started.errLines()).singleElement().asString().contains("engine.json:2:", "count");
            assertThat(console.file("job")).doesNotExist();
        }
    }
}
