package everyblade.desktop.command;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.desktop.command.Console.Ran;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1", "look");
    }

    @Test
    void findsARecordSoundAndSaysItsHead() {
        Ran verified = console.run("verify", "job");

        assertThat(verified.status()).isZero();
        assertThat(verified.out()).isEqualTo("sound: 3 entries, head " + head(3) + "\n");
        assertThat(verified.err()).isEmpty();
    }

    @Test
    void namesTheFirstLineThatWasChanged() {
        console.write("job/journal.jsonl", console.read("job/journal.jsonl").replace("datum r 1", "datum r 2"));

        Ran verified = console.run("verify", "job");

        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.outLines()).singleElement().asString().startsWith("Damaged line: journal.jsonl line 3: ");
    }

    @Test
    void findsALastLineWithoutNewline() {
        String journal = console.read("job/journal.jsonl");
        console.write("job/journal.jsonl", journal.substring(0, journal.length() - 1));

        Ran verified = console.run("verify", "job");

        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.outLines()).singleElement().asString().startsWith("Torn line: journal.jsonl line 4: ");
    }

    @Test
    void missesLinesAtTheEndByAHeadKeptElsewhere() {
        String head = head(3);
        console.write("job/journal.jsonl", String.join("\n", console.journal().subList(0, 3)) + "\n");

        assertThat(console.run("verify", "job").status()).isZero();
        Ran verified = console.run("verify", "job", "--head", head);

        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.outLines()).singleElement().asString().contains("Lines missing", head);
    }

    @Test
    void acceptsTheHeadOfAnyLineInWhateverCase() {
        assertThat(console.run("verify", "job", "--head", head(2).toUpperCase(java.util.Locale.ROOT))
                        .status())
                .isZero();
    }

    @Test
    void findsAnEngineModelThatWasChanged() {
        console.write("job/model/engine.json", Console.RING + " ");

        Ran verified = console.run("verify", "job");

        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.out()).startsWith("Engine model changed: model/engine.json");
    }

    private String head(int line) {
        return console.journal().get(line).replaceAll(".*\"hash\":\"([0-9a-f]{64})\"}$", "$1");
    }
}
