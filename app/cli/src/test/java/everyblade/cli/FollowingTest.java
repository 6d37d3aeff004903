package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FollowingTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void startAJob() {
        console = Console.in(folder);
        console.job();
    }

    @Test
    void answersEachLineInTurnAndEndsWithItsInput() {
        Ran followed = console.say("view p-r\ndatum r 13\ndatum r 1\n\n# later\nlook", "log", "job", "--follow");

        assertThat(followed).isEqualTo(new Ran(0, """
                        kept 1
                        refused column 9: row r has blades 1 to 12, no 13
                        kept 2
                        kept 3
                        """, ""));
        assertThat(console.journal()).hasSize(4);
    }

    @Test
    void acknowledgesALineWhenItIsOnDiskAndBeforeItReadsTheNext() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> seen = new ArrayList<>();
        InputStream in = new InputStream() {
            private final byte[] bytes = "view p-r\ndatum r 1\n".getBytes(StandardCharsets.UTF_8);
            private int at;

            @Override
            public int read() {
                return at < bytes.length ? bytes[at++] : -1;
            }

            @Override
            public int read(byte[] into, int from, int length) {
                boolean lineBegins = at > 0 && bytes[at - 1] == '\n';
                if (lineBegins) {
                    seen.add(out.toString(StandardCharsets.UTF_8).strip().replace('\n', ' ') + ", "
                            + console.journal().size() + " lines");
                }
                int next = read();
                if (next >= 0) {
                    into[from] = (byte) next;
                }
                return next < 0 ? -1 : 1;
            }
        };

        console.feed(in, out, "log", "job", "--follow");

        assertThat(seen).startsWith("kept 1, 2 lines", "kept 1 kept 2, 3 lines");
    }

    @Test
    void isLiveUnlessALineSaysWhenItWas() {
        console.say("view p-r\n2026-05-01T00:00:00Z look\n", "log", "job", "--follow");

        assertThat(console.journal().get(1)).contains("\"at\":\"2026-05-14T06:00:00Z\"", "\"live\":true");
        assertThat(console.journal().get(2)).contains("\"at\":\"2026-05-01T00:00:00Z\"", "\"live\":false");
    }

    @Test
    void countsColumnsFromTheBeginningOfTheLine() {
        Ran followed = console.say("2026-05-01T00:00:00Z lok\n  lok\n", "log", "job", "--follow");

        assertThat(followed.outLines())
                .extracting(line -> line.substring(0, line.indexOf(':')))
                .containsExactly("refused column 22", "refused column 3");
    }

    @Test
    void refusesWhatIsTooLongOrNotUtf8AndGoesOn() {
        byte[] line = ("x".repeat(1 << 17) + "\n±\nnote end\n").getBytes(StandardCharsets.ISO_8859_1);

        Ran followed = console.feed(new java.io.ByteArrayInputStream(line), "log", "job", "--follow");

        assertThat(followed.outLines())
                .containsExactly(
                        "refused column 1: the line is too long for an entry",
                        "refused column 1: this is not UTF-8; save the text as UTF-8 and try again",
                        "kept 1");
    }

    @Test
    void stopsWithOneLineWhenTheDiskRefuses() {
        Ran followed = console.with(new RefusingDisk()).say("view p-r\nlook\n", "log", "job", "--follow");

        assertThat(followed.status()).isEqualTo(2);
        assertThat(followed.out()).isEmpty();
        assertThat(followed.errLines()).singleElement().asString().startsWith("NOT KEPT");
        assertThat(console.run("log", "job", "note the job is free again").status())
                .isZero();
    }
}
