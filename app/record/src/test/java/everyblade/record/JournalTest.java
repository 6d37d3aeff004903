package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class JournalTest {

    private static final String FIRST =
            "{\"schema\":\"everyblade/journal/1\",\"at\":\"2026-03-01T08:00:00Z\",\"by\":\"Ada Vane\","
                    + "\"model\":\"invented-1\",\"modelHash\":\"00\",\"serial\":\"SN 0007\","
                    + "\"task\":\"after a bird, Überholung fällig\",\"settings\":{\"clearance\":2.50,\"grazing\":30}}";
    private static final String NOTE =
            "{\"k\":1,\"at\":\"2026-03-01T08:01:00Z\",\"by\":\"Ada Vane\",\"live\":true,\"text\":\"note number 1\","
                    + "\"means\":{\"verb\":\"note\",\"text\":\"number 1\"}}";

    /** A journal of these lines, each sealed after the one before, whatever they say. */
    private static byte[] sealed(String... objects) {
        StringBuilder journal = new StringBuilder();
        String hash = Chain.START;
        for (String object : objects) {
            Chain.Sealed line = Chain.seal(hash, object);
            journal.append(new String(line.bytes(), StandardCharsets.UTF_8)).append('\n');
            hash = line.hash();
        }
        return journal.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static RecordProblem problem(byte[] journal) {
        assertThat(Jobs.reading(journal)).isInstanceOf(Journal.Unsound.class);
        return ((Journal.Unsound) Jobs.reading(journal)).problem();
    }

    private static Journal sound(byte[] journal) {
        assertThat(Jobs.reading(journal)).isInstanceOf(Journal.Sound.class);
        return ((Journal.Sound) Jobs.reading(journal)).journal();
    }

    @Nested
    class TheFormat {

        @Test
        void keepsTheTimeThatWasSaidAndTheOneAtWhichItWasTyped() throws Unreadable {
            String twice = NOTE.replace("\"by\"", "\"written\":\"2026-03-02T09:30:00Z\",\"by\"");
            Addition entry = sound(sealed(FIRST, twice)).lines().get(0).entry();

            assertThat(entry.at()).isEqualTo("2026-03-01T08:01:00Z");
            assertThat(entry.written()).contains(java.time.Instant.parse("2026-03-02T09:30:00Z"));
            assertThat(LineFormat.entryLine(1, entry)).isEqualTo(twice);
            assertThat(sound(sealed(FIRST, NOTE)).lines().get(0).entry().written())
                    .isEmpty();
        }

        @Test
        void isOneObjectALineAsWrittenHere() throws Unreadable {
            assertThat(LineFormat.firstLine(new LineFormat.FirstLine(Samples.BEGINNING, "00")))
                    .isEqualTo(FIRST);
            assertThat(LineFormat.entryLine(1, Samples.note(1))).isEqualTo(NOTE);
        }

        @Test
        void readsBackWhatItSays() {
            Journal journal = sound(sealed(FIRST, NOTE));

            assertThat(journal.beginning()).isEqualTo(Samples.BEGINNING);
            assertThat(journal.lines()).extracting(JournalLine::entry).containsExactly(Samples.note(1));
        }

        @Test
        void endsEachLineWithAHashThatAnyoneCanComputeAgain() throws Exception {
            String[] lines = new String(sealed(FIRST, NOTE), StandardCharsets.UTF_8).split("\n");
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            String first = HexFormat.of()
                    .formatHex(
                            sha256.digest(FIRST.substring(0, FIRST.length() - 1).getBytes(StandardCharsets.UTF_8)));
            String second = HexFormat.of()
                    .formatHex(sha256.digest(
                            (first + NOTE.substring(0, NOTE.length() - 1)).getBytes(StandardCharsets.UTF_8)));

            assertThat(lines[0]).endsWith(",\"hash\":\"" + first + "\"}");
            assertThat(lines[1]).endsWith(",\"hash\":\"" + second + "\"}");
        }

        @Test
        void hashesAsTheStandardHas() {
            // FIPS 180-4, example of SHA-256 for "abc" (from memory)
            assertThat(Chain.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
                    .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        }
    }

    @Nested
    class OtherVersions {

        private static final String NEWER =
                FIRST.replace("journal/1", "journal/1.3").replace("{\"schema", "{\"mood\":1,\"schema");

        @Test
        void aNewerMajorOneIsRefusedWithWhatToDo() {
            byte[] journal =
                    "{\"schema\":\"everyblade/journal/2\",\"sealed\":\"otherwise\"}\n".getBytes(StandardCharsets.UTF_8);

            assertThat(English.said(problem(journal)))
                    .isEqualTo(
                            "Journal of another version: journal.jsonl line 1: it is of version 2.0, this program reads"
                                    + " version 1; open the job with a program of that version");
        }

        @Test
        void aNewerMinorOneIsReadWithoutWhatIsNotKnown() {
            Journal journal = sound(sealed(NEWER, NOTE.replace("\"live\"", "\"mood\":\"good\",\"live\"")));

            assertThat(journal.newerVersion()).hasValue("1.3");
            assertThat(journal.lines()).extracting(JournalLine::entry).containsExactly(Samples.note(1));
        }

        @Test
        void aNewerMinorOneWithAnEntryThatIsNotKnownIsRefused() {
            assertThat(English.said(problem(sealed(NEWER, NOTE.replace("\"verb\":\"note\"", "\"verb\":\"sing\"")))))
                    .contains("line 2: \"verb\" is \"sing\", which is not known");
        }
    }

    @Nested
    class LinesThatWereSealedButAreNotOfTheFormat {

        private void refused(String line, int number, String why) {
            byte[] journal = number == 1 ? sealed(line) : sealed(FIRST, line);
            assertThat(problem(journal).line()).isEqualTo(number);
            assertThat(English.said(problem(journal))).contains(why).doesNotContain("\n");
        }

        @Test
        void haveTheirUnknownKeysNamed() {
            refused(FIRST.replace("\"serial\"", "\"colour\":1,\"serial\""), 1, "the key \"colour\" is not known");
            refused(NOTE.replace("\"live\"", "\"mood\":1,\"live\""), 2, "the key \"mood\" is not known");
            refused(NOTE.replace("\"verb\"", "\"tone\":1,\"verb\""), 2, "the key \"tone\" is not known");
        }

        @Test
        void haveTheirMissingKeysNamed() {
            refused("{\"schema\":\"everyblade/journal/1\",\"settings\":{}}", 1, "\"at\" should be a text");
            refused(FIRST.replace("\"task\"", "\"previous\""), 1, "\"task\" should be a text");
            refused(NOTE.replace("\"live\":true,", ""), 2, "\"live\" should be true or false");
            refused(NOTE.replace(",\"text\":\"number 1\"", ""), 2, "\"text\" is missing");
        }

        @Test
        void areRefusedForANumberOutOfOrder() {
            refused(NOTE.replace("\"k\":1", "\"k\":2"), 2, "\"k\" should be 1");
        }

        @Test
        void areRefusedForAKeySaidTwice() {
            refused(NOTE.replace("\"live\":true", "\"live\":true,\"live\":false"), 2, "Duplicate");
        }

        @Test
        void areRefusedForATimeThatIsNotUtc() {
            refused(NOTE.replace("08:01:00Z", "09:01:00+01:00"), 2, "\"at\" should be a time such as");
        }

        @Test
        void areRefusedForAnotherSchema() {
            refused(FIRST.replace("everyblade/journal/1", "everyblade/diary/1"), 1, "\"schema\" should be");
        }
    }
}
