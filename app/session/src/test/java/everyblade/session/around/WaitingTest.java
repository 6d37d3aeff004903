package everyblade.session.around;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.LocalDisk;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WaitingTest {

    private static final String LINE = "opening the job: 2 s; Ctrl+C stops it";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private long now;

    private Surroundings around() {
        PrintStream err = new PrintStream(bytes, false, StandardCharsets.UTF_8);
        return new Surroundings(
                InputStream.nullInputStream(),
                err,
                err,
                () -> Instant.ofEpochMilli(now),
                Map.of(),
                Path.of(""),
                Optional.empty(),
                new LocalDisk());
    }

    private String told() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aPersonIsToldAfterHalfASecondWhatIsDoneAndForHowLongInALineThatGoesInTheEnd() {
        Waiting waiting = new Waiting(around(), "wait.open");
        now = 499;
        waiting.tell();
        assertThat(told()).isEmpty();
        now = 500;
        waiting.tell();
        assertThat(told()).endsWith("\ropening the job: 1 s; Ctrl+C stops it");
        now = 2_100;
        waiting.tell();
        assertThat(told()).endsWith("\r" + LINE);
        int length = told().length();
        now = 2_900;
        waiting.tell();
        assertThat(told()).as("the same once more").hasSize(length);
        waiting.close();
        assertThat(told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
        now = 9_000;
        waiting.tell();
        assertThat(told()).endsWith(LINE + "\r" + " ".repeat(LINE.length()) + "\r");
    }

    @Test
    void nobodyIsToldOfWhatIsOverBefore() {
        Waiting waiting = new Waiting(around(), "wait.open");
        now = 400;
        waiting.tell();
        waiting.close();
        assertThat(told()).isEmpty();
    }

    @Test
    void whereNobodySitsWorkIsDoneAndNothingTold() {
        String done = Waiting.during(around(), "wait.open", () -> {
            now = 60_000;
            return "done";
        });
        assertThat(done).isEqualTo("done");
        assertThat(told()).isEmpty();
    }
}
