package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.record.JobFolder;
import everyblade.record.LocalDisk;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCommandTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void startAJob() {
        console = Console.in(folder);
        console.job();
    }

    @Test
    void keepsEachArgumentAsAnEntryAndCountsOn() {
        assertThat(console.run("log", "job", "view p-r", "datum r 1")).isEqualTo(new Ran(0, "kept 1\nkept 2\n", ""));
        assertThat(console.run("log", "job", "look")).isEqualTo(new Ran(0, "kept 3\n", ""));
    }

    @Test
    void tellsWarningsByTheirEntryOnStandardError() {
        Ran logged = console.run("log", "job", "view p-r", "look");

        assertThat(logged.out()).isEqualTo("kept 1\nkept 2\n");
        assertThat(logged.errLines())
                .singleElement()
                .asString()
                .startsWith("entry 2: ")
                .contains("datum");
    }

    /** What the window asks about, the command line warns of; it is kept all the same. */
    @Test
    void warnsOfWhatMayBeMeantOtherwise() {
        Ran logged =
                console.run("log", "job", "view p-r", "datum r 1", "turn on 7 tool", "nick 9 tip 800", "ask r tip");

        assertThat(logged.out()).isEqualTo("kept 1\nkept 2\nkept 3\nkept 4\nkept 5\n");
        assertThat(logged.errLines())
                .containsExactly(
                        "entry 3: 7 tool is 7 whole turns of the turning tool, 2520° of the shaft; for degrees of the"
                                + " tool, say tooldeg.",
                        "entry 4: 800 mm is longer than any blade of this row (300 mm at most): is the decimal mark"
                                + " right?",
                        "entry 5: of row r the task now asks only for tip; no longer for root");
    }

    @Test
    void tellsALostCountOnce() {
        Ran logged = console.run("log", "job", "view p-r", "datum r 1", "turn on 60", "here 7");

        assertThat(logged.errLines()).singleElement().asString().startsWith("entry 4: the count was lost");
    }

    @Test
    void keepsNothingOfABatchOfWhichOneIsRefused() {
        var before = console.everything();

        Ran logged = console.run("log", "job", "view p-r", "datum r 13", "look");

        assertThat(logged)
                .isEqualTo(new Ran(
                        2,
                        "",
                        "refused: \"datum r 13\", column 9: row r has blades 1 to 12, no 13; nothing of this batch was"
                                + " kept\n"));
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void tellsARefusedTextOnOneLineHoweverItWasGiven() {
        Ran logged = console.run("log", "job", "note a\nlook");

        assertThat(logged.status()).isEqualTo(2);
        assertThat(logged.errLines()).singleElement().asString().contains("column 7", "one line");
    }

    @Test
    void takesEveryCharacterAsItWasTyped() {
        console.run("log", "job", "view p-r", "turn on 38 ± 1,9", "note ångström 𝛼 ≤ 2 “so”");

        assertThat(console.journal().get(2)).contains("\"text\":\"turn on 38 ± 1,9\"");
        assertThat(console.journal().get(3)).contains("note ångström 𝛼 ≤ 2 “so”");
    }

    @Test
    void isNotLiveAndTakesItsTimeFromTheClockOrTheOption() {
        console.run("log", "job", "view p-r");
        console.run("log", "job", "look", "--at", "2026-05-01T00:00:00Z");

        assertThat(console.journal().get(1)).contains("\"at\":\"2026-05-14T06:00:00Z\"", "\"live\":false");
        assertThat(console.journal().get(2)).contains("\"at\":\"2026-05-01T00:00:00Z\"", "\"live\":false");
    }

    @Test
    void keepsBesideTheTimeThatWasSaidTheOneAtWhichItWasTyped() {
        console.run("log", "job", "note a", "--at", "2026-05-01T00:00:00Z");
        console.run("log", "job", "--undated", "note example");

        assertThat(console.journal().get(1))
                .contains("\"at\":\"2026-05-01T00:00:00Z\",\"written\":\"2026-05-14T06:00:00Z\"");
        assertThat(console.journal().get(2)).doesNotContain("written");
        assertThat(console.run("verify", "job").status()).isZero();
    }

    @Nested
    class Whoever {

        @Test
        void startedTheJobSpeaksUntilSomebodyTakesOver() {
            console.run("log", "job", "note a", "takeover Ben", "note b");
            console.run("log", "job", "note c");

            assertThat(console.journal().subList(1, 5))
                    .extracting(line -> line.replaceAll(".*\"by\":\"([^\"]*)\".*", "$1"))
                    .containsExactly("Ann", "Ben", "Ben", "Ben");
        }

        @Test
        void speaksByOptionIsNamed() {
            console.run("log", "job", "note a", "--by", "Cy");

            assertThat(console.journal().get(1)).contains("\"by\":\"Cy\"");
        }

        @Test
        void tookOverByMistakeNoLongerSpeaksOnceThatIsVoid() {
            console.run("log", "job", "takeover Ben", "void 1 because he did not", "note b");

            assertThat(console.journal().get(3)).contains("\"by\":\"Ann\"");
        }
    }

    @Nested
    class AFile {

        @Test
        void hasAnEntryOnEachLineAndMaySayWhen() {
            console.write("day.txt", """
                    # morning

                    2026-05-14T06:18:00Z view p-r
                      2026-05-14T08:19:30+02:00  datum r 1
                    look
                    """);

            Ran logged = console.run("log", "job", "--file", "day.txt");

            assertThat(logged.status()).isZero();
            assertThat(logged.out()).isEqualTo("kept 1\nkept 2\nkept 3\n");
            assertThat(console.journal().get(1)).contains("\"at\":\"2026-05-14T06:18:00Z\"", "\"text\":\"view p-r\"");
            assertThat(console.journal().get(2)).contains("\"at\":\"2026-05-14T06:19:30Z\"", "\"text\":\"datum r 1\"");
            assertThat(console.journal().get(3)).contains("\"at\":\"2026-05-14T06:00:00Z\"");
        }

        @Test
        void isReadWhateverEndsItsLines() {
            console.write("day.txt", "\uFEFFview p-r\r\n2026-05-14T06:18:00Z datum r 1\r\nlook");

            assertThat(console.run("log", "job", "--file", "day.txt").outLines())
                    .hasSize(3);
        }

        @Test
        void isToldWithLineAndColumnIfRefused() {
            console.write("day.txt", "view p-r\n\n2026-05-14T06:18:00Z turn on 3x\n");
            var before = console.everything();

            Ran logged = console.run("log", "job", "--file", "day.txt");

            assertThat(logged.status()).isEqualTo(2);
            assertThat(logged.errLines())
                    .singleElement()
                    .asString()
                    .startsWith("day.txt:3:31: refused: \"turn on 3x\": ")
                    .endsWith("nothing of this batch was kept");
            assertThat(console.everything()).isEqualTo(before);
        }

        @Test
        void isToldWithLineAndColumnIfATimeCannotBeRead() {
            console.write("day.txt", "view p-r\n  2026-05-14T06:18:00 look\n");

            assertThat(console.run("log", "job", "--file", "day.txt").err())
                    .startsWith("day.txt:2:3: refused: \"2026-05-14T06:18:00\" is no time");
        }

        @Test
        void isToldWithLineAndColumnIfItIsNotUtf8() {
            console.write("day.txt", "view p-r\nturn on 3 ± 1\n".getBytes(StandardCharsets.ISO_8859_1));

            assertThat(console.run("log", "job", "--file", "day.txt").err())
                    .startsWith("day.txt:2:11: refused: this is not UTF-8");
        }

        @Test
        void mayBeStandardInput() {
            assertThat(console.say("view p-r\nlok\n", "log", "job", "-").err())
                    .startsWith("standard input:2:1: refused: \"lok\": ");
            assertThat(console.say("view p-r\ndatum r 1\n", "log", "job", "-"))
                    .isEqualTo(new Ran(0, "kept 1\nkept 2\n", ""));
        }

        @Test
        void thatSaysNothingKeepsNothing() {
            var before = console.everything();

            assertThat(console.say("# later\n\n", "log", "job", "-")).isEqualTo(new Ran(0, "", ""));
            assertThat(console.everything()).isEqualTo(before);
        }
    }

    @Nested
    class APicture {

        @Test
        void isCopiedIntoTheJobFromBesideTheFileThatNamesIt() {
            console.write("trip/day.txt", "view p-r\nphoto seven.jpg of 7 root\n");
            console.write("trip/seven.jpg", Pictured.png(7));

            assertThat(console.run("log", "job", "--file", "trip/day.txt").err())
                    .isEmpty();
            assertThat(console.file("job/photos/seven.jpg")).hasBinaryContent(Pictured.png(7));
        }

        @Test
        void isCopiedUnderItsPlainName() {
            console.write("card/seven.jpg", Pictured.png(7));

            assertThat(console.run("log", "job", "photo card/seven.jpg").err()).isEmpty();
            assertThat(console.file("job/photos/seven.jpg")).hasBinaryContent(Pictured.png(7));
        }

        @Test
        void isNamedByALineThatCarriesItsHash() throws Exception {
            console.write("seven.jpg", Pictured.png(7));
            console.run("log", "job", "photo seven.jpg");

            String hash = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(Pictured.png(7)));
            assertThat(console.journal().get(1)).contains("\"sha256\":\"" + hash + "\"", "\"width\":16");
        }

        @Test
        void thatIsNotThereIsMissedAloudAndItsNameKept() {
            Ran logged = console.run("log", "job", "note before", "photo seven.jpg");

            assertThat(logged.status()).isZero();
            assertThat(logged.err()).contains("entry 2: there is no picture seven.jpg to copy");
            assertThat(console.journal()).hasSize(3);
            assertThat(console.journal().get(2)).doesNotContain("sha256");
        }

        @Test
        void thatIsNoneIsRefusedWhateverItsName() {
            console.write("seven.jpg", "MZ\u0000 a program");

            Ran logged = console.run("log", "job", "photo seven.jpg");

            assertThat(logged.status()).isEqualTo(2);
            assertThat(logged.errLines()).singleElement().asString().contains("it is no JPEG or PNG picture");
            assertThat(console.file("job/photos/seven.jpg")).doesNotExist();
        }

        @Test
        void neverTakesThePlaceOfAnother() {
            console.write("seven.jpg", Pictured.png(1));
            console.run("log", "job", "photo seven.jpg");
            console.write("seven.jpg", Pictured.png(2));

            Ran logged = console.run("log", "job", "photo seven.jpg");

            assertThat(logged.status()).isEqualTo(2);
            assertThat(logged.err()).startsWith("refused: \"photo seven.jpg\", column 7: Picture not kept");
            assertThat(console.journal()).hasSize(2);
            assertThat(console.file("job/photos/seven.jpg")).hasBinaryContent(Pictured.png(1));
        }
    }

    @Nested
    class AJob {

        @Test
        void thatSomebodyElseWritesIsLeftAlone() {
            JobFolder theirs = new JobFolder(new LocalDisk(), console.file("job"));
            var open = (JobFolder.Writable) theirs.write("Ben", Console.NOW);
            try (var writer = open.writer()) {
                Ran logged = console.run("log", "job", "note a");

                assertThat(logged.status()).isEqualTo(2);
                assertThat(logged.errLines())
                        .singleElement()
                        .asString()
                        .contains("Job in use", "by Ben since 2026-05-14");
                assertThat(writer.head()).isEqualTo(writer.opened().journal().head());
            }
            assertThat(console.run("log", "job", "note a").status()).isZero();
        }

        @Test
        void withATornLineGoesOnWithoutItAndSaysSo() {
            console.run("log", "job", "view p-r");
            console.write("job/journal.jsonl", console.read("job/journal.jsonl") + "{\"k\":2,\"at\":");

            assertThat(console.run("coverage", "job").err()).startsWith("Torn line: journal.jsonl line 3");

            Ran logged = console.run("log", "job", "datum r 1");

            assertThat(logged.out()).isEqualTo("kept 2\n");
            assertThat(logged.errLines()).singleElement().asString().contains("set aside", "torn-1.txt");
            assertThat(console.read("job/torn-1.txt")).isEqualTo("{\"k\":2,\"at\":");
            assertThat(console.run("verify", "job").status()).isZero();
        }

        @Test
        void whoseDiskRefusesIsToldAndNothingIsAcknowledged() {
            Ran logged = console.with(new RefusingDisk()).run("log", "job", "view p-r", "datum r 1");

            assertThat(logged.status()).isEqualTo(2);
            assertThat(logged.out()).isEmpty();
            assertThat(logged.errLines())
                    .singleElement()
                    .asString()
                    .startsWith("NOT KEPT: ")
                    .contains("disk is full");
            assertThat(console.journal()).hasSize(1);
        }
    }
}
