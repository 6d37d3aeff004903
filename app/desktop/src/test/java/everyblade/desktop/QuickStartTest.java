package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What short commands load, told by Java itself: a class that a command does not need keeps everyone waiting who asks it in
 * a loop. Time would hang on the machine; which classes come does not.
 */
class QuickStartTest {

    private static final Pattern LOADED = Pattern.compile("^\\S+ (\\S+) source: ", Pattern.MULTILINE);

    /** What no answer that only reads may wake: planning, sight, pictures, the window, and what is slow to be made. */
    private static final List<String> HEAVY = List.of(
            "everyblade.core.move.PlanBuilder",
            "everyblade.core.move.CoverSearch",
            "everyblade.core.move.RotationProblem",
            "everyblade.core.sight.Sights",
            "everyblade.core.surface.Patches",
            "everyblade.core.coverage.RowTally",
            "everyblade.core.coverage.SightTally",
            "everyblade.core.coverage.ComputedCells",
            "everyblade.picture.",
            "everyblade.fleet.",
            "everyblade.window.view.",
            "everyblade.window.map.",
            "com.formdev.",
            "com.ibm.icu.number.",
            "com.ibm.icu.text.PluralRules",
            "com.ibm.icu.text.NumberFormat",
            "com.ibm.icu.text.DecimalFormat",
            "com.fasterxml.jackson.databind.ObjectMapper",
            "com.fasterxml.jackson.databind.ser.",
            "com.fasterxml.jackson.databind.deser.",
            "org.apache.",
            "org.bouncycastle.",
            "org.flywaydb.",
            "org.jfree.",
            "org.postgresql.",
            "java.sql.",
            "java.awt.Component",
            "javax.swing.",
            "javax.crypto.",
            "sun.security.pkcs11.");

    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void aJobWithAFinding() throws Exception {
        job = folder.resolve("job");
        String model =
                Path.of("..", "..", "engine-models", "tansy-a1").toRealPath().toString();
        loadedBy("start", job.toString(), "--model", model, "--serial", "7", "--task", "look", "--by", "Ann");
        loadedBy("log", job.toString(), "note begun", "heat 24 C");
    }

    /** The classes that the program loads to do this, in a process of its own with a cache of its own. */
    private List<String> loadedBy(String... arguments) throws Exception {
        Path log = folder.resolve("loaded.txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dfile.encoding=UTF-8",
                "-Xlog:class+load:file=" + log.getFileName() + ":uptime",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "everyblade.desktop.Main"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("EVERYBLADE_") || name.startsWith("LC_"));
        builder.environment().put("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        builder.environment().put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process = builder.start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said()).isLessThan(2);
        return LOADED.matcher(Files.readString(log))
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }

    private String said() throws IOException {
        return Files.readString(folder.resolve("said.txt"));
    }

    private static void assertLight(List<String> loaded) {
        assertThat(loaded).contains("everyblade.desktop.Main");
        assertThat(loaded.stream().filter(name -> HEAVY.stream().anyMatch(name::startsWith)))
                .isEmpty();
    }

    @Test
    void theVersionIsToldWithoutAnyCommandAndAnyText() throws Exception {
        List<String> loaded = loadedBy("--version");

        assertLight(loaded);
        assertThat(loaded).doesNotContain("com.ibm.icu.text.MessagePattern", "everyblade.core.entry.EntryParser");
        assertThat(loaded.stream().filter(name -> name.startsWith("everyblade.cli.") && name.endsWith("Command")))
                .isEmpty();
        assertThat(loaded).as("of Java, picocli and ours").hasSizeLessThan(1300);
    }

    @Test
    void theRecordIsVerifiedWithWhatReadsItAndNothingElse() throws Exception {
        List<String> loaded = loadedBy("verify", job.toString());

        assertThat(said()).startsWith("sound: 2 entries");
        assertLight(loaded);
        assertThat(loaded.stream().filter(name -> name.startsWith("everyblade.cli.") && name.endsWith("Command")))
                .containsExactly("everyblade.cli.VerifyCommand");
        assertThat(loaded)
                .as("nobody looks through options")
                .noneMatch(name -> name.startsWith("picocli.CommandLine$Model"));
        assertThat(loaded.stream()
                        .filter(name -> name.matches("everyblade[.]core[.](turning|move|sight|coverage)[.].*")))
                .as("nothing is folded, planned, computed")
                .isEmpty();
        assertThat(loaded).hasSizeLessThan(2200);
    }

    /** What was computed of the same record is read again. */
    @Test
    void aSecondQuestionComputesNothing() throws Exception {
        for (String name : List.of("coverage", "gaps", "next")) {
            loadedBy(name, job.toString());
            String first = said();
            List<String> loaded = loadedBy(name, job.toString());

            assertThat(said()).as(name).isEqualTo(first);
            assertLight(loaded);
            assertThat(loaded).as(name).hasSizeLessThan(2300);
        }
    }
}
