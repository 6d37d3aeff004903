package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Whatever is done to a journal of twelve lines is found, and the first line that is not as it was is named. */
class JournalTamperTest {

    private static final byte[] SUBSTITUTES = {0, '\n', '\r', ' ', '"', '0', 'a', '}', (byte) 0xff};

    private final List<byte[]> lines;

    JournalTamperTest() throws Unreadable {
        lines = lines();
    }

    /** The lines of the sample journal, newlines included. */
    private static List<byte[]> lines() throws Unreadable {
        List<byte[]> lines = new ArrayList<>();
        FrozenFile model = FrozenFile.of(Samples.ENGINE);
        String first = LineFormat.firstLine(new LineFormat.FirstLine(Samples.BEGINNING, model.hash()));
        Chain.Sealed last = Chain.seal(Chain.START, first);
        lines.add(last.bytes());
        for (Addition entry : Samples.DIVERSE) {
            last = Chain.seal(last.hash(), LineFormat.entryLine(lines.size(), entry));
            lines.add(last.bytes());
        }
        lines.replaceAll(line -> joined(List.of(line, new byte[] {'\n'})));
        return lines;
    }

    private static byte[] joined(List<byte[]> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        parts.forEach(bytes::writeBytes);
        return bytes.toByteArray();
    }

    /** The line in which something is found, a torn one included; empty if all is sound. */
    private static OptionalInt found(byte[] journal) {
        if (Jobs.reading(journal) instanceof Journal.Sound sound) {
            return sound.journal().torn().stream()
                    .mapToInt(Journal.TornTail::line)
                    .findFirst();
        }
        return OptionalInt.of(
                ((Journal.Unsound) Jobs.reading(journal)).problem().line());
    }

    @Test
    void nothingIsFoundInTheJournalAsItIs() {
        assertThat(lines).hasSize(12);
        assertThat(found(joined(lines))).isEmpty();
    }

    @Test
    void everyChangedByteIsFoundInItsLine() {
        byte[] journal = joined(lines);
        int changes = 0;
        int at = 0;
        for (int line = 1; line <= lines.size(); line++) {
            for (int end = at + lines.get(line - 1).length; at < end; at++) {
                byte was = journal[at];
                for (int substitute = 0; substitute <= SUBSTITUTES.length; substitute++) {
                    journal[at] = substitute < SUBSTITUTES.length ? SUBSTITUTES[substitute] : (byte) (was ^ 1);
                    if (journal[at] != was) {
                        assertThat(found(journal)).as("byte %d", at).hasValue(line);
                        changes++;
                    }
                }
                journal[at] = was;
            }
        }
        assertThat(changes).isGreaterThan(20_000);
    }

    @Test
    void everyLostByteIsFoundInItsLine() {
        byte[] journal = joined(lines);
        int at = 0;
        for (int line = 1; line <= lines.size(); line++) {
            for (int end = at + lines.get(line - 1).length; at < end; at++) {
                byte[] shorter = new byte[journal.length - 1];
                System.arraycopy(journal, 0, shorter, 0, at);
                System.arraycopy(journal, at + 1, shorter, at, journal.length - at - 1);
                assertThat(found(shorter)).as("byte %d", at).hasValue(line);
            }
        }
    }

    @Test
    void everyLostLineButTheLastIsFoundWhereItWas() {
        for (int line = 1; line < lines.size(); line++) {
            List<byte[]> fewer = new ArrayList<>(lines);
            fewer.remove(line - 1);
            assertThat(found(joined(fewer))).hasValue(line);
        }
    }

    @Test
    void everySwappedPairIsFoundAtTheFirstOfTheTwo() {
        for (int first = 1; first < lines.size(); first++) {
            for (int second = first + 1; second <= lines.size(); second++) {
                List<byte[]> swapped = new ArrayList<>(lines);
                Collections.swap(swapped, first - 1, second - 1);
                assertThat(found(joined(swapped)))
                        .as("%d and %d", first, second)
                        .hasValue(first);
            }
        }
    }

    @Test
    void everyLineSaidTwiceIsFoundWhereItComesAgain() {
        for (int line = 1; line <= lines.size(); line++) {
            for (int again = line + 1; again <= lines.size() + 1; again++) {
                List<byte[]> more = new ArrayList<>(lines);
                more.add(again - 1, lines.get(line - 1));
                assertThat(found(joined(more)))
                        .as("%d again as %d", line, again)
                        .hasValue(again);
            }
        }
    }

    @Test
    void everyEndCutOffIsFoundAndOneCutBetweenLinesByTheHeadThatIsKeptElsewhere() {
        byte[] journal = joined(lines);
        String head = sound(journal).head();
        int at = 0;
        for (int line = 1; line <= lines.size(); line++) {
            byte[] before = Arrays.copyOf(journal, at);
            if (line > 1) {
                assertThat(found(before)).isEmpty();
                assertThat(sound(before).has(head)).isFalse();
                assertThat(sound(journal).has(sound(before).head())).isTrue();
            }
            for (int end = at + lines.get(line - 1).length; ++at < end; ) {
                assertThat(found(Arrays.copyOf(journal, at)))
                        .as("cut at %d", at)
                        .hasValue(line);
            }
        }
    }

    private static Journal sound(byte[] journal) {
        return ((Journal.Sound) Jobs.reading(journal)).journal();
    }
}
