package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.record.LocalDisk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Follows a section of a document as a reader would: writes the files that it gives, and runs its commands in order. A
 * line of code is indented by four or more.
 */
class DocumentedCommandsTest {

    private static final Path ROOT = Path.of("..", "..");

    /** "Put this into `FILE`:" announces the file that the next block holds. */
    private static final Pattern INTO = Pattern.compile("(?s).*into\\s+`([^`]+)`:\\s*");

    private static final Pattern COMMAND = Pattern.compile(" {4,}(?:bin/)?everyblade (.*)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final String LEFT = "exit status 1";
    private static final String REFUSED = "exit status 2";

    @TempDir
    Path folder;

    @Test
    void anEngineModelIsAddedJustAsDevelopersAreTold() throws IOException {
        List<String> run = follow("DEVELOPERS.md", "## Add an engine model", "\n## ");

        assertThat(run)
                .hasSizeGreaterThanOrEqualTo(13)
                .anyMatch(command -> command.startsWith("new-model "))
                .anyMatch(command -> command.startsWith("show "))
                .anyMatch(command -> command.startsWith("gaps "));
        assertThat(folder.resolve("sedge-2.svg")).isNotEmptyFile();
        assertThat(folder.resolve("map.svg")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("job-1/model/engine.json"))).contains("\"shape\"");
    }

    @Test
    void aModelInCodeIsUsedJustAsDevelopersAreTold() throws IOException {
        TeaselJar.copiedTo(folder.resolve("engine-models/teasel-3/target/teasel-3.jar"));

        assertThat(follow("DEVELOPERS.md", "## A model in code", "\n## "))
                .hasSizeGreaterThanOrEqualTo(5)
                .anyMatch(command -> command.startsWith("start "));
        assertThat(folder.resolve("fan.svg")).isNotEmptyFile();
    }

    @Test
    void aFirstJobTakesTheCommandsOfTheReadme() throws IOException {
        assertThat(follow("README.md", "## A first job in two minutes", "\n## "))
                .hasSizeGreaterThanOrEqualTo(4);
    }

    private List<String> follow(String document, String from, String to) throws IOException {
        String text = Files.readString(ROOT.resolve(document));
        int start = text.indexOf(from);
        String section = text.substring(start, text.indexOf(to, start + 1));
        Console console = new Console(folder, Map.of(), Optional.empty(), new LocalDisk())
                .with("XDG_CONFIG_HOME", folder.resolve("settings").toString())
                .with(
                        "EVERYBLADE_MODELS",
                        ROOT.resolve("engine-models").toAbsolutePath().toString());
        List<String> commands = new ArrayList<>();
        StringBuilder prose = new StringBuilder();
        StringBuilder file = new StringBuilder();
        String said = "";
        for (String line : (section + "\n\nend").lines().toList()) {
            Matcher command = COMMAND.matcher(line);
            if (command.matches()) {
                commands.add(command.group(1));
                said = run(console, command.group(1).replace("HASH", lastWord(said)));
            } else if (line.matches(" {4,}.*")
                    && (file.length() > 0 || INTO.matcher(prose).matches())) {
                file.append(line).append('\n');
            } else if (file.length() > 0) {
                Matcher into = INTO.matcher(prose);
                assertThat(into.matches()).isTrue();
                console.write(into.group(1), file.toString());
                file.setLength(0);
                prose.setLength(0);
            } else if (!line.isBlank()) {
                prose.append(line).append('\n');
            }
        }
        return commands;
    }

    /** Where a message ends with what is to be added to the command, as its reader would copy it. */
    private static String lastWord(String message) {
        return message.strip().replaceFirst("(?s).* ", "");
    }

    private static String run(Console console, String line) {
        int comment = line.indexOf(" # ");
        String command = comment < 0 ? line : line.substring(0, comment);
        String[] words = WORD.matcher(command)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toArray(String[]::new);

        Ran ran = console.run(words);

        assertThat(ran.status())
                .as("exit status of %s%n%s", line, ran.err())
                .isEqualTo(line.contains(LEFT) ? 1 : line.contains(REFUSED) ? 2 : 0);
        if (words[0].equals("check") && !line.contains(REFUSED)) {
            assertThat(ran.err()).isEmpty();
        }
        return ran.err();
    }
}
