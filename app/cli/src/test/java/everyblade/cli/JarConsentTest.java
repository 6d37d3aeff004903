package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing in a jar runs before a person has said yes to exactly these bytes. */
class JarConsentTest {

    @TempDir
    Path folder;

    private Console console;
    private Path jar;
    private String hash;

    @BeforeEach
    void aShelfWithAJarOfCode() throws Exception {
        console = Console.in(folder)
                .with("XDG_CONFIG_HOME", folder.resolve("settings").toString())
                .with("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        jar = TeaselJar.copiedTo(folder.resolve("shelf/teasel-3.jar"));
        hash = hash();
    }

    private String hash() throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check shelf/teasel-3.jar",
                "check --all-rules shelf/teasel-3.jar",
                "check --json shelf/teasel-3.jar",
                "show shelf/teasel-3.jar --out fan.svg",
                "sight shelf/teasel-3.jar --view in-r",
                "mesh shelf/teasel-3.jar --row r --out r.ply",
                "start job --model shelf/teasel-3.jar --serial 1 --task t --by b",
            })
    void everyCommandThatWouldRunItNamesItAndSaysWhatToAdd(String command) {
        Ran ran = console.run(command.split(" "));

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.errLines())
                .singleElement()
                .asString()
                .contains(jar.toString(), "plugin teasel-3 ", "not signed", "whatever you may do")
                .endsWith("add --trust-jar " + hash);
        assertThat(console.everything().keySet()).noneMatch(name -> name.startsWith("job") || name.startsWith("cache"));
    }

    @Test
    void listingTellsWhatTheManifestSaysAndWhatItToldWhenItRan() throws IOException {
        Ran before = console.run("models", "--models", "shelf");
        assertThat(before.outLines())
                .singleElement()
                .asString()
                .startsWith("not run: " + jar)
                .endsWith("everyblade check " + jar + " --trust-jar " + hash);
        JsonNode json = new ObjectMapper()
                .readTree(console.run("models", "--json", "--models", "shelf").out());
        assertThat(json.get("models")).isEmpty();
        assertThat(json.get("notRun").findValuesAsText("sha256")).containsExactly(hash);

        console.run("check", "--trust-jar", hash, "shelf/teasel-3.jar");

        assertThat(console.run("models", "--models", "shelf").out()).startsWith("teasel-3: Teasel 3 fan stage");
    }

    @Test
    void aYesIsKeptByHashAndHoldsUntilTheJarIsAnotherOne() throws Exception {
        assertThat(console.run("check", "--no-sight", "shelf/teasel-3.jar", "--trust-jar", hash.toUpperCase())
                        .status())
                .isZero();
        assertThat(Files.readString(folder.resolve("settings/everyblade/trusted-jars.txt")))
                .startsWith(hash + "  teasel-3 ");
        assertThat(console.run("check", "--no-sight", "shelf/teasel-3.jar").status())
                .isZero();

        Files.write(jar, new byte[] {0}, StandardOpenOption.APPEND);

        assertThat(console.run("check", "--no-sight", "shelf/teasel-3.jar").err())
                .endsWith("--trust-jar " + hash() + "\n");
    }

    @Test
    void withoutAPlaceForSettingsAYesHoldsForOneCommand() {
        Console bare = Console.in(folder);
        assertThat(bare.run("check", "--no-sight", "shelf/teasel-3.jar", "--trust-jar", hash)
                        .status())
                .isZero();
        assertThat(bare.run("check", "--no-sight", "shelf/teasel-3.jar").status())
                .isEqualTo(2);
    }

    @Test
    void ofAFolderTheOthersAreCheckedAllTheSame() {
        console.write("shelf/good/engine.json", Console.RING);

        Ran ran = console.run("check", "shelf");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).startsWith("fine: ").contains("(ring)");
        assertThat(ran.err()).contains("--trust-jar " + hash);
    }

    @Test
    void anIdThatIsNotKnownSaysWhichCodeWasNotRun() {
        assertThat(startTeasel().err())
                .contains("there is no engine model of that id", "nobody has agreed to run the code in " + jar);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "0123", "../../etc/passwd"})
    void whatIsNoHashIsRefused(String given) {
        Ran ran = console.run("check", "shelf/teasel-3.jar", "--trust-jar", given);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("--trust-jar " + given + ": this is no SHA-256")
                .hasLineCount(1);
    }

    @Test
    void aDamagedMemoryOfWhatItToldIsNotBelieved() throws IOException {
        console.run("check", "--no-sight", "shelf/teasel-3.jar", "--trust-jar", hash);
        List<Path> kept;
        try (Stream<Path> files = Files.walk(folder.resolve("cache"))) {
            kept = files.filter(Files::isRegularFile).toList();
        }
        assertThat(kept).isNotEmpty();
        for (Path file : kept) {
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length / 2] ^= 1;
            Files.write(file, bytes);
        }

        assertThat(console.run("models", "--models", "shelf").out())
                .startsWith("not run: " + jar + ": the code of the plugin teasel-3")
                .contains("may run and has not yet");
        assertThat(startTeasel().status()).isZero();
    }

    private Console.Ran startTeasel() {
        return console.run(
                "start",
                "job",
                "--model",
                "teasel-3",
                "--models",
                "shelf",
                "--serial",
                "1",
                "--task",
                "t",
                "--by",
                "b");
    }
}
