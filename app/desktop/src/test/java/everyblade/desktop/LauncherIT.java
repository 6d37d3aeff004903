package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The runnable folder as people use it: moved elsewhere, into a path with spaces. What is typed goes through a shell
 * script in UTF-8, so that the locale of the build does not matter.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

    private static final String START =
            "'%s' start job --model larkspur-4 --serial 7 --task 'Übung' --by Ann --at 2026-05-14T06:00:00Z\n";

    /** What stations show is computed once for all tests of this class, as for one person's jobs. */
    @TempDir
    static Path cache;

    @TempDir
    Path folder;

    private Path launcher;

    /** What a script left behind. */
    private record Ran(int status, String out, String err) {}

    @BeforeEach
    void moveTheRunnableFolder() throws IOException {
        Path runnable = Path.of(System.getProperty("everyblade.runnable"));
        Path moved = folder.resolve("moved here");
        try (Stream<Path> paths = Files.walk(runnable)) {
            for (Path path : paths.toList()) {
                Files.copy(path, moved.resolve(runnable.relativize(path)));
            }
        }
        launcher = moved.resolve("bin/everyblade");
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
        assertThat(runnable.resolve("bin/everyblade")).isExecutable();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "LC_ALL=C; export LC_ALL",
                "LC_ALL=tr_TR.UTF-8 JAVA_TOOL_OPTIONS='-Duser.language=tr -Duser.country=TR'; export LC_ALL JAVA_TOOL_OPTIONS"
            })
    void speaksUtf8AndGivesTheSameAnswersInEveryLocale(String locale) throws Exception {
        String everyblade = "'" + launcher + "'";
        Ran ran = run(locale + "\n" + START.formatted(launcher)
                + everyblade + " log job 'heat 24 C' 'view p1-c2' 'datum c2 1' 'turn on 38 ± 1,9' 'NOTE çığ ≤ 3'"
                + " --at 2026-05-14T06:00:00Z || exit 9\n"
                + everyblade + " log job 'bogus ±' || echo status $?\n"
                + everyblade + " coverage job --row c2 --json | grep -e seenShare | head -n 1\n"
                + everyblade + " coverage job --row c2 | grep '^c2 '\n"
                + everyblade + " gaps job > gaps.txt || echo status $?\n"
                + "head -n 1 gaps.txt\n");

        assertThat(ran.out().lines())
                .startsWith("started job: Larkspur 4 turboprop (larkspur-4), serial 7")
                .contains("kept 1", "kept 2", "kept 3", "kept 4", "kept 5", "status 2", "status 1")
                .contains("    \"seenShare\" : 0.0000,")
                .anyMatch(
                        line -> line.matches("c2 +Compressor rotor 2 +computed +100\\.0 % +3\\.6 % +10\\.8 % +336 .*"))
                .anyMatch(line -> line.startsWith("Through Plug in the casing behind rotor 1 (p1), view p1-s1:"));
        assertThat(ran.err()).contains("refused: \"bogus ±\", column 1: ");
        assertThat(Files.readString(folder.resolve("job/journal.jsonl")))
                .contains("\"text\":\"turn on 38 ± 1,9\"", "\"text\":\"NOTE çığ ≤ 3\"", "\"task\":\"Übung\"");
    }

    @Test
    void worksThroughLinksFromAnyFolder() throws Exception {
        Ran ran = run("mkdir 'far away' tools\n"
                + "ln -s '../moved here/bin/everyblade' tools/first\n"
                + "ln -s first tools/second\n"
                + "cd 'far away'\n"
                + "../tools/second models --json | grep '\"id\"'\n"
                + "PATH=$PWD/../tools:$PATH second coverage '../moved here/demo' | head -n 1\n");

        assertThat(ran.err().lines()).allMatch(line -> line.startsWith("Computing what each station shows"));
        assertThat(ran.out().lines().map(String::strip))
                .contains(
                        "\"id\" : \"larkspur-4\",",
                        "\"id\" : \"tansy-a1\",",
                        "\"id\" : \"corncrake-12\",",
                        "\"id\" : \"teasel-3\",")
                .last()
                .asString()
                .startsWith("Larkspur 4 turboprop (larkspur-4), serial ");
    }

    @Test
    void comesWithADemoJobThatIsSoundAndOfWhichSomethingIsLeft() throws Exception {
        Ran ran = run(
                "cd 'moved here'\nbin/everyblade verify demo && bin/everyblade next demo && bin/everyblade gaps demo\n");

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).startsWith("sound: ").contains("\n# ", " cells left");
        assertThat(ran.err().lines()).allMatch(line -> line.startsWith("Computing what each station shows"));
    }

    @Test
    void answersWhileEntriesAreTypedAndLosesNothingWhenKilled() throws Exception {
        run(START.formatted(launcher));
        ProcessBuilder builder =
                new ProcessBuilder(launcher.toString(), "log", "job", "--follow").directory(folder.toFile());
        builder.environment().put("EVERYBLADE_PREPARE", "no");
        Process process = builder.start();
        try (OutputStream typed = process.getOutputStream();
                BufferedReader answers =
                        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(answer(typed, answers, "heat 24 C")).isEqualTo("kept 1");
            assertThat(answer(typed, answers, "view p1-c2")).isEqualTo("kept 2");
            assertThat(answer(typed, answers, "datum c2 1")).isEqualTo("kept 3");
            assertThat(answer(typed, answers, "turn on 38 ± 1,9")).isEqualTo("kept 4");
            assertThat(answer(typed, answers, "trun on 3")).startsWith("refused column 1: ");
            Ran other = run("'" + launcher + "' log job look");
            assertThat(other.status()).isEqualTo(2);
            assertThat(other.err().lines()).singleElement().asString().contains("Job in use", "by Ann since");
            assertThat(answer(typed, answers, "note still here")).isEqualTo("kept 5");
            process.destroyForcibly();
        }
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();

        Ran after = run("'" + launcher + "' verify job && '" + launcher + "' log job 'slip'");

        assertThat(after.out()).startsWith("sound: 5 entries").endsWith("kept 6\n");
    }

    /** Java takes prepared classes only for jars that lie where they lay, and else goes without them. */
    @Test
    void preparesClassesForItsNewPlaceOnceBesideTheFirstStart() throws Exception {
        // What stations show need not be computed once more for it.
        Ran ran = run("mkdir own && cp -R \"$XDG_CACHE_HOME\"/everyblade own/ 2>/dev/null\n"
                + "EVERYBLADE_PREPARE=yes XDG_CACHE_HOME=$PWD/own; export EVERYBLADE_PREPARE XDG_CACHE_HOME\n"
                + "mv 'moved here' moved && moved/bin/everyblade --version\n"
                + "n=0; until ls own/everyblade/classes-*.jsa >list 2>/dev/null && [ ! -e \"$(cat list).made\" ]; do\n"
                + "  n=$((n + 1)); [ $n -lt 300 ] || exit 9; sleep 0.5; done\n"
                + "home=$(cd moved && pwd -P)\n"
                + "java -XX:SharedArchiveFile=$(cat list) -Xlog:class+load:file=loaded.txt -XX:TieredStopAtLevel=1"
                + " -XX:+UseG1GC -jar $home/lib/everyblade-desktop.jar --version\n"
                + "grep -q 'everyblade.desktop.Main source: shared objects file (top)' loaded.txt && echo mapped\n"
                + "ls own/everyblade/classes-* | wc -l | tr -d ' '\n");

        assertThat(ran.status()).isZero();
        assertThat(ran.out().lines()).hasSize(4).endsWith("mapped", "1");
    }

    @Test
    void saysSoWhereThereIsNoJava() throws Exception {
        Ran ran = run("mkdir tools\n"
                + "for tool in dirname readlink locale ls cksum; do\n"
                + "  printf '#!/bin/sh\\nexec %s \"$@\"\\n' \"$(command -v $tool)\" > tools/$tool\n"
                + "done\n"
                + "chmod +x tools/*\n"
                + "unset JAVA_HOME\nPATH=$PWD/tools\n'" + launcher + "' models\n");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .isEqualTo(
                        "everyblade: there is no Java on this machine; install Java 17 or newer, or set JAVA_HOME\n");
    }

    private static String answer(OutputStream typed, BufferedReader answers, String line) throws IOException {
        typed.write((line + "\n").getBytes(StandardCharsets.UTF_8));
        typed.flush();
        return answers.readLine();
    }

    /** Runs a shell script in the folder. */
    private Ran run(String script) throws Exception {
        Path file = folder.resolve("script.sh");
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Files.writeString(file, script, StandardCharsets.UTF_8);
        ProcessBuilder builder = new ProcessBuilder(List.of("sh", file.toString()))
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment()
                .keySet()
                .removeIf(name -> name.startsWith("EVERYBLADE_") || name.equals("XDG_CONFIG_HOME"));
        builder.environment().put("HOME", folder.toString());
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        builder.environment().put("EVERYBLADE_PREPARE", "no");
        Process process = builder.start();
        assertThat(process.waitFor(200, TimeUnit.SECONDS)).isTrue();
        return new Ran(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
