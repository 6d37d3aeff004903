package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ModelsCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aShelfWithAGoodAndABadModel() {
        console = Console.in(folder);
        console.write("shelf/good/engine.json", Console.RING);
        console.write("shelf/bad/engine.json", "{ \"schema\": \"everyblade/engine-model/1\", \"id\": ");
    }

    @Test
    void listsThoseRefusedBesideTheOthers() {
        Ran models = console.run("models", "--models", "shelf");

        assertThat(models.status()).isZero();
        assertThat(models.out())
                .contains("refused: " + console.file("shelf/bad"))
                .contains("engine.json:1:", "unclosed")
                .contains("ring: Ring of twelve, 2 rows, 20 airfoils, 2 views, ", "\n  Invented for tests.\n");
    }

    @Test
    void listsThemAsJson() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(console.run("models", "--json", "--models", "shelf").out());

        assertThat(json.get("models").findValuesAsText("id")).containsExactly("ring");
        assertThat(json.get("refused")).hasSize(1);
        assertThat(json.get("refused").get(0).get("problems").get(0).get("code").textValue())
                .isEqualTo("unclosed");
    }

    @Test
    void takesFoldersGivenBeforeAndAfterTheCommand() {
        console.write("more/other/engine.json", Console.RING.replace("\"ring\"", "\"other\""));

        Ran models = console.run("--models", "shelf", "models", "--models", "more");

        assertThat(models.out()).contains("ring: ", "other: ");
    }

    @Test
    void saysHowToFindSomeIfThereAreNone() {
        assertThat(console.run("models").out())
                .startsWith("no engine model found")
                .contains("--models DIR");
    }

    @Nested
    class Checking {

        @Test
        void findsAModelFine() {
            assertThat(console.run("check", "ring"))
                    .isEqualTo(new Ran(0, "fine: " + console.file("ring") + ": Ring of twelve (ring)\n", ""));
        }

        @Test
        void tellsErrorsByFileLineAndColumn() {
            console.write("ring/engine.json", Console.RING.replace("\"rotor\"", "\"roter\""));

            Ran checked = console.run("check", "ring");

            assertThat(checked.status()).isEqualTo(1);
            assertThat(checked.out()).matches("(?s)\\S*ring/engine\\.json:2:51: [a-z-]+: .*roter.*");
            assertThat(checked.err()).isEmpty();
        }

        @Test
        void tellsWarningsOnStandardErrorAndRefusesNothingForThem() {
            console.write("ring/engine.json", Console.RING.replace("\"halfWidth\": 5", "\"halfWidth\": 40"));

            Ran checked = console.run("check", "ring/engine.json");

            assertThat(checked.status()).isZero();
            assertThat(checked.out()).startsWith("fine: ");
            assertThat(checked.err()).contains("engine.json:").contains("pitch");
        }

        @Test
        void takesAFolderOfModels() {
            Ran checked = console.run("check", "shelf");

            assertThat(checked.status()).isEqualTo(1);
            assertThat(checked.out()).contains("fine: ", "unclosed");
        }
    }
}
