package everyblade.session;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.LocalDisk;
import everyblade.session.around.PackedJobs;
import everyblade.session.around.Patience;
import everyblade.session.around.Surroundings;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PatienceTest {

    private static final String LINE = "Part 1: 40 %; Ctrl+C stops it";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private long now;

    /** @param watches whether a person sees what it tells */
    private record Person(boolean watches) implements Surroundings.Terminal {

        @Override
        public Optional<char[]> secret(String prompt) {
            return Optional.empty();
        }
    }

    private Patience patience(boolean watched) {
        PrintStream err = new PrintStream(bytes, false, StandardCharsets.UTF_8);
        return new Patience(
                new Surroundings(
                        InputStream.nullInputStream(),
                        err,
                        err,
                        () -> Instant.ofEpochMilli(now),
                        Map.of(),
                        Path.of(""),
                        Optional.empty(),
                        new LocalDisk(),
                        new Person(watched),
                        new PackedJobs()),
                "wait.sight");
    }

    private String told() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aPersonIsToldAfterHalfASecondHowFarItIsInALineThatGoesInTheEnd() {
        Patience patience = patience(true);
        now = 499;
        patience.done(1, 10);
        assertThat(told()).isEmpty();
        now = 500;
        patience.done(2, 10);
        assertThat(told())
                .startsWith("Computing what each view can show of the blades.")
                .endsWith("\rPart 1: 20 %; Ctrl+C stops it");
        now = 600;
        patience.done(3, 10);
        assertThat(told()).endsWith("20 %; Ctrl+C stops it");
        now = 700;
        patience.done(4, 10);
        assertThat(told()).endsWith("\r" + LINE);
        patience.done(10, 10);
        assertThat(told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
        now = 900;
        patience.done(1, 4);
        assertThat(told()).endsWith("\rPart 2: 25 %; Ctrl+C stops it").containsOnlyOnce("Computing");
    }

    @Test
    void nobodyIsToldOfWhatIsOverBefore() {
        Patience patience = patience(true);
        patience.done(1, 2);
        patience.done(2, 2);
        assertThat(told()).isEmpty();
    }

    @Test
    void aFileIsNotToldThatSomebodyWaits() {
        Patience patience = patience(false);
        now = 60_000;
        patience.done(1, 2);
        assertThat(told()).isEmpty();
    }
}
