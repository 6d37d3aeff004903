package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.nio.file.Path;
import java.util.List;
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
    void saysWhatCameAfterAHeadThatWasNoted() {
        assertThat(console.run("verify", "job", "--head", head(1)).outLines())
                .element(1)
                .isEqualTo("2 entries after it: 2…3");
        assertThat(console.run("verify", "job", "--head", head(2)).outLines())
                .element(1)
                .isEqualTo("1 entry after it: 3…3");
        assertThat(console.run("verify", "job", "--head", head(3)).outLines())
                .element(1)
                .isEqualTo("0 entries after it");
    }

    @Test
    void tellsAJournalCutShortFromOneWrittenAnewByTheNumberOfTheEntryThatWasNoted() {
        String noted = "3:" + head(3);
        String whole = console.read("job/journal.jsonl");
        console.write("job/journal.jsonl", String.join("\n", console.journal().subList(0, 3)) + "\n");
        Ran shorter = console.run("verify", "job", "--head", noted);
        assertThat(shorter.status()).isEqualTo(1);
        assertThat(shorter.out()).startsWith("Lines missing: ").contains("ends with entry 2", "cut short");

        console.write("job/journal.jsonl", String.join("\n", console.journal().subList(0, 2)) + "\n");
        assertThat(console.run("log", "job", "datum r 2", "look").status()).isZero();
        assertThat(console.read("job/journal.jsonl")).isNotEqualTo(whole);
        Ran rewritten = console.run("verify", "job", "--head", noted);
        assertThat(rewritten.status()).isEqualTo(1);
        assertThat(rewritten.out()).startsWith("Journal rewritten: ");
    }

    @Test
    void remembersTheNumberItselfWhereItHasSeenTheHead() {
        console = console.with("EVERYBLADE_CACHE", console.file("cache").toString());
        console.run("log", "job", "note one", "note two");
        String noted = head(5);
        console.write("job/journal.jsonl", String.join("\n", console.journal().subList(0, 4)) + "\n");
        assertThat(console.run("verify", "job", "--head", noted).out())
                .startsWith("Lines missing: journal.jsonl line 5: ");

        console.run("log", "job", "note other", "note two");
        assertThat(console.run("verify", "job", "--head", noted).out())
                .startsWith("Journal rewritten: journal.jsonl line 6: ");
    }

    @Test
    void whatIsWrongWithTheRecordStandsFirstWhereverItIsShown() {
        console.write("job/photos/one.png", Pictured.png(7));
        console.run("log", "job", "photo one.png");
        console.write("job/photos/one.png", new byte[] {1});
        String wrong = "Picture changed: journal.jsonl line 5: its picture photos/one.png is not the one that was kept";

        for (String command : List.of("coverage", "photos", "verify")) {
            assertThat(console.run(command, "job").outLines().get(0))
                    .as(command)
                    .startsWith(wrong);
        }
        Ran json = console.run("coverage", "job", "--json");
        assertThat(json.out()).startsWith("{");
        assertThat(json.err()).startsWith(wrong);
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
