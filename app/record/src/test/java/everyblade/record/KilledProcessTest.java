package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder.InUse;
import everyblade.record.JobFolder.Sound;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real processes on the real disk, ended without warning; ten of them, with {@code -Deveryblade.kills=200} as many. */
class KilledProcessTest {

    private static final int KILLS = Integer.getInteger("everyblade.kills", 10);
    private static final int MOST_WORDS = 12;
    private static final int LONGEST_LIFE_AFTER_LAST_WORD_MICROS = 3_000;

    @TempDir
    Path temp;

    private JobFolder folder;

    @BeforeEach
    void aJob() {
        folder = Jobs.started(new JobFolder(new LocalDisk(), temp.resolve("job")));
    }

    @Test
    void loseNothingThatTheyAcknowledged() throws Exception {
        SplittableRandom random = new SplittableRandom(20260304);
        int acknowledged = 0;
        int awaited = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int words = random.nextInt(MOST_WORDS + 1);
            awaited += words;
            acknowledged = Math.max(acknowledged, lastWordOfOneKilledAfter(words, random));

            List<Addition> there = Jobs.entries(folder);
            assertThat(there).as("kill %d", kill).hasSizeGreaterThanOrEqualTo(acknowledged);
            assertThat(there).isEqualTo(Samples.notes(1, there.size()));
        }
        assertThat(acknowledged).isGreaterThanOrEqualTo(awaited).isGreaterThan(KILLS);
        Jobs.writer(folder).close();
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
    }

    /**
     * The last entry that it acknowledged, 0 if none. It lives for so many acknowledgements, however long these take, and
     * then for a moment, so that it ends anywhere in the writing of the next.
     */
    private int lastWordOfOneKilledAfter(int acknowledgements, SplittableRandom random) throws Exception {
        Process process = Recorder.start(folder.path());
        try (BufferedReader words = words(process)) {
            assertThat(words.readLine()).isEqualTo("open");
            int last = 0;
            for (int heard = 0; heard < acknowledgements; heard++) {
                last = acknowledged(words.readLine()).orElseThrow();
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_LIFE_AFTER_LAST_WORD_MICROS));
            process.toHandle().destroyForcibly(); // unlike that of the process, it leaves the last words to be read
            for (String word = words.readLine(); word != null; word = words.readLine()) {
                last = Math.max(last, acknowledged(word).orElse(0)); // the very last word may be torn
            }
            return last;
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static Optional<Integer> acknowledged(String word) {
        return Optional.ofNullable(word)
                .filter(said -> said.matches("kept \\d+"))
                .map(said -> Integer.valueOf(said.substring("kept ".length())));
    }

    @Test
    void keepOthersOutWhileTheyLiveAndNoLonger() throws Exception {
        Process process = Recorder.start(folder.path());
        try (BufferedReader words = words(process)) {
            assertThat(words.readLine()).isEqualTo("open");

            assertThat(folder.write("Ada Vane", Samples.TIME))
                    .isInstanceOfSatisfying(
                            InUse.class,
                            inUse -> assertThat(English.said(inUse.holder()))
                                    .isEqualTo("Cy Rotor since 2026-03-01T08:00:00Z (process " + process.pid() + ")"));
        } finally {
            process.destroyForcibly().waitFor();
        }
        Jobs.writer(folder).close();
    }

    @Test
    void areKeptOutByAWriterHereHoweverManyOthersHereHaveAsked() throws Exception {
        try (JournalWriter writer = Jobs.writer(folder)) {
            for (int asked = 0; asked < 3; asked++) {
                assertThat(folder.write("Ben Rim", Samples.TIME)).isInstanceOf(InUse.class);
                assertThat(new JobFolder(new LocalDisk(), folder.path()).write("Ben Rim", Samples.TIME))
                        .isInstanceOf(InUse.class);
                Jobs.read(folder);
            }
            Process process = Recorder.start(folder.path());
            try (BufferedReader words = words(process)) {
                assertThat(words.readLine()).startsWith("in use Ada Vane since");
            } finally {
                process.destroyForcibly().waitFor();
            }
            Jobs.keep(writer, List.of(Samples.note(1)));
        }
    }

    private static BufferedReader words(Process process) throws IOException {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }
}
