package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewModelCommandTest {

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void open() {
        console = Console.in(folder);
    }

    @Test
    void makesAModelThatIsSoundAndExplained() {
        Ran made = console.run("new-model", "sedge-2");

        assertThat(made.status()).isZero();
        assertThat(made.outLines()).singleElement().asString().contains("everyblade check sedge-2");
        assertThat(console.run("check", "sedge-2"))
                .isEqualTo(new Ran(0, "fine: " + console.file("sedge-2") + ": sedge-2 (sedge-2)\n", ""));
        assertThat(console.read("sedge-2/README.md"))
                .contains("everyblade check sedge-2", "`landmarks`", "`halfWidth`")
                .doesNotContain("@");
    }

    @Test
    void makesAModelWithWhichAJobCanBeStartedAtOnce() {
        console.run("new-model", "sedge-2");

        assertThat(console.run("start", "j", "--model", "sedge-2", "--serial", "1", "--task", "look", "--by", "Ann")
                        .status())
                .isZero();
        assertThat(console.run("log", "j", "view p1-r1", "datum r1 1", "turn on 360")
                        .status())
                .isZero();
        assertThat(console.run("coverage", "j", "--row", "r1").out()).contains("100.0 %");
    }

    @ParameterizedTest
    @CsvSource({
        "sedge-2, sedge-2",
        "'Grey Sedge 2', grey-sedge-2",
        "'9 sedges!', sedges",
        "Åland, land",
        "'…', my-engine",
        "all, my-engine"
    })
    void makesAnIdOfTheFoldersName(String named, String id) throws IOException {
        assertThat(console.run("new-model", "models/" + named).status()).isZero();

        assertThat(new ObjectMapper()
                        .readTree(console.read("models/" + named + "/engine.json"))
                        .get("id")
                        .textValue())
                .isEqualTo(id);
        assertThat(console.run("check", "models/" + named).status()).isZero();
    }

    @Test
    void takesAnyNameThatPeopleUse() {
        console.run("new-model", "sedge-2", "--name", "Sedge \"2\" \\ été");

        assertThat(console.run("check", "sedge-2").out()).contains("Sedge \"2\" \\ été (sedge-2)");
    }

    @Test
    void touchesNoFolderThatHoldsSomething() {
        SortedMap<String, String> before = console.everything();

        Ran refused = console.run("new-model", "ring");

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.errLines()).singleElement().asString().startsWith("ring: there is something in this folder");
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void makesNothingWhereAFileStands() {
        assertThat(console.run("new-model", "ring/engine.json").errLines())
                .singleElement()
                .asString()
                .contains("no folder");
    }
}
