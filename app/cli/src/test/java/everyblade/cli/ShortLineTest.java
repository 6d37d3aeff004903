package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Opening;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Short lines are answered without looking through how commands may be asked, and to the letter as with it. */
class ShortLineTest {

    private static final List<List<String>> ASKED = List.of(
            List.of("verify"),
            List.of("coverage"),
            List.of("coverage", "--json"),
            List.of("gaps"),
            List.of("gaps", "--json"),
            List.of("next"),
            List.of("next", "--json"));

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.start();
        assertThat(console.run("log", "job", "view p-r", "datum r 1", "turn 120", "nick 3 tip 1 mm")
                        .status())
                .isZero();
        console.run("pack", "job", "--out", "job.zip");
        console.run("start", "damaged", "--model", "model", "--serial", "7", "--task", "look", "--by", "Ann");
        console.write("damaged/journal.jsonl", console.read("job/journal.jsonl").replace("turn 120", "turn 150"));
    }

    private static String[] line(List<String> asked, String... further) {
        return Stream.concat(asked.stream(), Stream.of(further)).toArray(String[]::new);
    }

    @ParameterizedTest
    @ValueSource(strings = {"job", "job/", "job.zip", "damaged", "nowhere", ".", ""})
    void areAnsweredAsIfTheyWereLong(String job) {
        for (List<String> asked : ASKED) {
            String[] shortLine = line(asked, job);
            String[] longLine = line(asked, job, "--lang=en");
            assertThat(ShortLine.of(shortLine)).as("%s %s", asked, job).isPresent();
            assertThat(ShortLine.of(longLine)).isEmpty();
            assertThat(console.run(shortLine)).as("%s %s", asked, job).isEqualTo(console.run(longLine));
        }
    }

    @Test
    void mayHaveTheirWordsInEitherOrder() {
        assertThat(console.run("gaps", "job", "--json")).isEqualTo(console.run("gaps", "--json", "job"));
    }

    @Test
    void areNoneWithAnythingElse() {
        assertThat(Stream.of(
                                List.of("coverage"),
                                List.of("coverage", "job", "other"),
                                List.of("coverage", "job", "--csv"),
                                List.of("coverage", "job", "--json", "--json"),
                                List.of("coverage", "--help"),
                                List.of("coverage", "-h"),
                                List.of("verify", "job", "--json"),
                                List.of("--lang=de", "gaps", "job"),
                                List.of("map", "job"),
                                List.of("job"),
                                List.<String>of())
                        .map(words -> ShortLine.of(words.toArray(String[]::new))))
                .allMatch(Optional::isEmpty);
    }

    @Test
    void areTheSameQuestionAsPicocliReads() {
        for (List<String> asked : ASKED) {
            String[] words = line(asked, "job");
            CommandLine read = Commands.line(console.surroundings(), Opening.NONE, words);
            read.parseArgs(words);
            assertThat(ShortLine.of(words).orElseThrow().question())
                    .isEqualTo(Commands.question(
                            read.getSubcommands().get(asked.get(0)).getCommandSpec()));
        }
    }
}
