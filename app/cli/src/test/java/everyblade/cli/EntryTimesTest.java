package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Any time can be said of an entry; what is odd about it is told at once, and nothing later fails for it. */
class EntryTimesTest {

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void aJobStartedAtSix() {
        console = Console.in(folder);
        console.start();
    }

    private Ran log(String at) {
        Ran ran = console.run("log", "job", "note looked", "--at", at);
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran;
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-14T06:00:00Z", "2026-05-14T06:04:59Z", "2026-05-14T08:01:00+02:00"})
    void aTimeOfTheDayIsFine(String at) {
        assertThat(log(at).err()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-14T05:59:59Z, is before 2026-05-14T06:00:00Z",
        "2026-05-14T06:06:00Z, is still to come",
        "2126-05-14T06:00:00Z, is still to come",
        "+999999999-12-31T00:00:00Z, is still to come",
        "1066-10-14T09:00:00Z, is long before any such record",
    })
    void anOddOneIsKeptAndTold(String at, String told) {
        assertThat(log(at).errLines())
                .anySatisfy(line ->
                        assertThat(line).startsWith("entry 1: its time ").contains(told));
        assertThat(console.journal()).hasSize(2);
    }

    @Test
    void aTimeThatRunsBackIsToldAtTheEntryWhereItDoesAndARunOfOddOnesOnce() {
        log("2026-05-14T06:04:00Z");
        assertThat(log("2026-05-14T06:02:00Z").err())
                .contains("is before 2026-05-14T06:04:00Z, that of what was kept last");
        assertThat(log("2026-05-14T06:03:00Z").err()).isEmpty();
        assertThat(log("2027-01-01T00:00:00Z").err()).contains("is still to come");
        assertThat(log("2027-01-01T00:00:01Z").err()).isEmpty();
    }

    @Test
    void ofLinesWithTheirOwnTimesEachIsJudgedAfterTheOneBefore() {
        console.write(
                "day.txt", "2026-05-14T06:01:00Z note a\n2026-05-14T06:00:30Z note b\n2026-05-14T06:02:00Z note c\n");

        assertThat(console.run("log", "job", "--file", "day.txt").errLines())
                .singleElement()
                .asString()
                .startsWith("entry 2: its time 2026-05-14T06:00:30Z is before");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "+999999999-12-31T23:59:59Z",
                "-999999999-01-01T00:00:00Z",
                "0000-01-01T00:00:00Z",
                "9999-12-31T23:59:59.999Z",
                "1582-10-10T00:00:00Z",
                "1969-12-31T23:59:59Z"
            })
    void noTimeMakesAnythingFail(String odd) {
        String[] entries = {
            "view p-r", "datum r 1", "turn on 180", "nick 3 tip 0.5 mm", "photo a.jpg of 3", "round 1 in 60s"
        };
        String[] times = {"2026-05-14T06:01:00Z", odd, "2026-05-14T06:00:00Z", odd, odd, "2026-05-14T06:03:00Z"};
        for (int i = 0; i < entries.length; i++) {
            assertThat(console.run("log", "job", entries[i], "--at", times[i]).status())
                    .isZero();
        }
        console.run(
                "start",
                "next",
                "--model",
                "ring",
                "--serial",
                "7",
                "--task",
                "t",
                "--by",
                "b",
                "--previous",
                "job",
                "--at",
                odd);
        for (String job : new String[] {"job", "next"}) {
            for (String command : new String[] {
                "coverage",
                "gaps",
                "findings",
                "close",
                "next",
                "photos",
                "verify",
                "map --out m.svg",
                "map --out m.pdf",
                "report --out r.pdf",
                "handover --out h.pdf"
            }) {
                String[] words = command.split(" ", 2);
                Ran ran = words.length == 1
                        ? console.run(words[0], job)
                        : console.run((words[0] + " " + job + " " + words[1]).split(" "));
                assertThat(ran.status())
                        .as(command + " " + job + ": " + ran.err())
                        .isLessThan(2);
            }
        }
    }
}
