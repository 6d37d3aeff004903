package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingsCommandTest {

    static final String LIMITS = """
            { "schema": "everyblade/limits/1", "name": "Ring limits", "notice": "Invented limits.", "unit": "mm",
              "rules": [ { "id": "nicks", "rows": ["r"], "kinds": ["nick"],
                           "steps": [ { "length": { "most": 1.0 }, "outcome": "may stay", "again": { "in": 25, "unit": "cycles" } } ],
                           "beyond": "replace the blade" } ] }
            """;

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void limits() {
        console = Console.in(folder);
        console.write("limits.json", LIMITS);
    }

    @Nested
    class StartWithLimits {

        @Test
        void freezesThemByteForByteAndShowsThatTheyAreInvented() {
            Ran started = console.start("--limits", "limits.json");

            assertThat(started.status()).isZero();
            assertThat(started.out()).endsWith("Limits: Ring limits. Invented limits.\n");
            assertThat(console.read("job/limits/limits.json")).isEqualTo(LIMITS);
            assertThat(console.journal().get(0)).contains("\"limitsHash\":\"");
        }

        @Test
        void refusesLimitsThatNameWhatTheEngineHasNot() {
            console.write("limits.json", LIMITS.replace("[\"r\"]", "[\"x\"]"));

            Ran started = console.start("--limits", "limits.json");

            assertThat(started.status()).isEqualTo(2);
            assertThat(started.errLines())
                    .singleElement()
                    .asString()
                    .startsWith("--limits limits.json:2:")
                    .contains("unknown-row", "\"x\"", "see everyblade check limits.json");
            assertThat(console.file("job")).doesNotExist();
        }

        @Test
        void makesAJobThatIsMissedWhenItsLimitsAreChangedLater() throws IOException {
            console.start("--limits", "limits.json");
            Files.writeString(console.file("job/limits/limits.json"), LIMITS.replace("1.0", "9.0"));

            Ran verified = console.run("verify", "job");

            assertThat(verified.status()).isEqualTo(1);
            assertThat(verified.out() + verified.err()).contains("Limits changed: limits/limits.json");
        }
    }

    @Nested
    class Check {

        @Test
        void saysThatLimitsAreFine() {
            assertThat(console.run("check", "limits.json", "--model", "ring"))
                    .isEqualTo(new Ran(0, "fine: limits.json: Ring limits, 1 rule\nInvented limits.\n", ""));
        }

        @Test
        void saysWhereTheyAreWrong() {
            console.write("limits.json", LIMITS.replace("\"kinds\"", "\"kind\""));

            Ran checked = console.run("check", "limits.json");

            assertThat(checked.status()).isEqualTo(1);
            assertThat(checked.outLines())
                    .singleElement()
                    .asString()
                    .matches("limits.json:2:\\d+: unknown-key: .*did you mean \"kinds\"\\?");
        }
    }

    @Nested
    class Findings {

        @BeforeEach
        void some() {
            console.start("--limits", "limits.json");
            console.run(
                    "log",
                    "job",
                    "r nick 3 tip 0.5 ± 0.1",
                    "r nick 4 tip 3 ± 0.1",
                    "r nick 5 tip 1 ± 0.2",
                    "r crack 6 tip");
        }

        @Test
        void showTheVerdictTheRuleTheFigureAndTheMargin() {
            assertThat(console.run("findings", "job").out())
                    .contains("Limits: Ring limits. Invented limits.")
                    .contains("entry 1: nick, Rotor (r), blade 3, tip: within the limits")
                    .contains("  rule nicks: within the limits: may stay; again in 25 cycles")
                    .contains(
                            "    length: 0.5 ± 0.1 mm; at most 1 mm; 0.5 mm inside, guard 0.082 mm: within the limits")
                    .contains("blade 4, tip: beyond the limits", "replace the blade")
                    .contains("blade 5, tip: too close to call")
                    .contains("blade 6, tip: no limit entered for this")
                    .endsWith("4 findings.\n");
        }

        @Test
        void areInTheJsonAndInTheCoverage() {
            String json = console.run("findings", "job", "--json").out();
            assertThat(json)
                    .contains("\"verdict\" : \"beyond the limits\"", "\"rule\" : \"nicks\"", "\"length\" : 0.5");
            assertThat(console.run("coverage", "job", "--json").out())
                    .contains("\"findings\" : 4", "\"notice\" : \"Invented limits.\"", "\"judged\"");
            assertThat(console.run("coverage", "job").out())
                    .contains("4 findings.\n  1 within the limits\n  1 too close to call\n", "Invented limits.");
        }

        @Test
        void areNotJudgedWithoutLimits() {
            console.run("start", "bare", "--model", "ring", "--serial", "7", "--task", "t", "--by", "Ann");
            console.run("log", "bare", "r nick 3 tip 0.5");

            assertThat(console.run("findings", "bare").out()).isEqualTo("""
                    No limits were entered, so nothing is judged; the manual in force says what is within limits.
                    entry 1: nick, Rotor (r), blade 3, tip
                    1 finding.
                    """);
        }
    }

    @Nested
    class Close {

        @Test
        void namesEverythingThatIsOpenAndExitsWithOne() {
            console.start("--limits", "limits.json");
            console.run("log", "job", "r nick 3 tip 0.5 ± 0.1", "open cover", "tool out lamp");

            Ran closed = console.run("close", "job");

            assertThat(closed.status()).isEqualTo(1);
            assertThat(closed.outLines())
                    .contains("tool: lamp is out, entry 3 by Ann; to close it: put it back, then say: tool in lamp")
                    .anyMatch(line -> line.startsWith("opening: cover is open, entry 2 by Ann;"))
                    .anyMatch(line -> line.startsWith("interval: the limits ask for a repeat inspection in 25 cycles"))
                    .anyMatch(line -> line.startsWith("gap: Rotor (r): all 12 blades"))
                    .anyMatch(line -> line.startsWith("fact: the record does not state: hours"));
        }

        @Test
        void exitsWithZeroOnceNothingIsOpen() {
            console.job(
                    "fact hours 1",
                    "fact cycles 1",
                    "fact position left",
                    "fact manual Invented",
                    "fact revision 1",
                    "view p-r",
                    "round 1",
                    "v noaccess all all because not asked for",
                    "r nick 3 tip 0.5",
                    "settle 9 because within table 7");

            Ran closed = console.run("close", "job");

            assertThat(closed.outLines())
                    .containsExactly(
                            "accepted as not seen: Vanes (v): all 8 vanes, everything, because not asked for, entry 8 by"
                                    + " Ann; 8 cells, 8 of these can be seen through p-v",
                            "nothing is open; behind that stand: 8 cells accepted as not seen, of which views can show"
                                    + " 8");
            assertThat(closed.status()).isZero();
            assertThat(console.run("close", "job", "--json").out())
                    .contains("\"kind\" : \"accepted\"", "\"because\" : \"not asked for\"")
                    .containsOnlyOnce("\"kind\"");
        }

        @Test
        void exitsWithOneWhileAFindingBeyondTheLimitsHasNoOutcome() {
            console.start("--limits", "limits.json");
            console.run(
                    "log",
                    "job",
                    "fact hours 1",
                    "fact cycles 1",
                    "fact position left",
                    "fact manual Invented",
                    "fact revision 1",
                    "view p-r",
                    "round 1",
                    "v noaccess all all because not asked for",
                    "nick 3 tip 7 ± 0.1");

            Ran closed = console.run("close", "job");
            assertThat(closed.outLines())
                    .contains("finding: nick: beyond the limits, and nobody said what comes of it (Rotor (r), blade 3,"
                            + " tip), entry 9 by Ann; to close it: put it to whoever decides (refer …), then say what"
                            + " comes of it and who decided: settle 9 because …");
            assertThat(closed.status()).isEqualTo(1);

            console.run("log", "job", "settle 9 because the blade is replaced, decided by the engineer");
            assertThat(console.run("close", "job").status()).isZero();
        }
    }

    @Nested
    class AnEarlierRecord {

        private Ran next(String serial) {
            return console.run(
                    "start",
                    "next",
                    "--model",
                    "ring",
                    "--serial",
                    serial,
                    "--task",
                    "again",
                    "--by",
                    "Ann",
                    "--previous",
                    "job");
        }

        @Test
        void isKeptWithTheJobAndNamedByItsHead() {
            console.job("r nick 3 tip 0.5");
            String head = console.journal().get(1).replaceAll(".*\"hash\":\"(\\w+)\".*", "$1");

            assertThat(next("7").status()).isZero();

            assertThat(console.read("next/journal.jsonl")).contains("\"previousHead\":\"" + head + "\"");
            assertThat(console.read("next/previous/journal.jsonl")).isEqualTo(console.read("job/journal.jsonl"));
        }

        @Test
        void ofAnotherEngineIsRefused() {
            console.job();

            Ran next = next("8");

            assertThat(next.status()).isEqualTo(2);
            assertThat(next.err()).contains("it is of ring, serial 7, and not of the same engine");
        }
    }
}
