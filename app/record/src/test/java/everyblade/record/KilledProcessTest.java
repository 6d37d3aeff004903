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

/** Real processes on the real disk, ended without warning; 25 of them, in the profile {@code campaign} 200. */
class KilledProcessTest {

    private static final int KILLS = Integer.getInteger("everyblade.kills", 25);
    private static final int LONGEST_LIFE_AFTER_FIRST_WORD_MICROS = 60_000;

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
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged = Math.max(acknowledged, lastWordOfOneKilledAfter(random));

            List<Addition> there = Jobs.entries(folder);
            assertThat(there).as("kill %d", kill).hasSizeGreaterThanOrEqualTo(acknowledged);
            assertThat(there).isEqualTo(Samples.notes(1, there.size()));
        }
        assertThat(acknowledged).isGreaterThan(KILLS);
        Jobs.writer(folder).close();
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
    }

    /** The last entry that it acknowledged, 0 if none. */
    private int lastWordOfOneKilledAfter(SplittableRandom random) throws Exception {
        Process process = Recorder.start(folder.path());
        try (BufferedReader words = words(process)) {
            assertThat(words.readLine()).isEqualTo("open");
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_LIFE_AFTER_FIRST_WORD_MICROS));
            process.toHandle().destroyForcibly(); // unlike that of the process, it leaves the last words to be read
            int last = 0;
            for (String word = words.readLine(); word != null; word = words.readLine()) {
                if (word.matches("kept \\d+")) {
                    last = Integer.parseInt(word.substring("kept ".length()));
                }
            }
            return last;
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    @Test
    void keepOthersOutWhileTheyLiveAndNoLonger() throws Exception {
        Process process = Recorder.start(folder.path());
        try (BufferedReader words = words(process)) {
            assertThat(words.readLine()).isEqualTo("open");

            assertThat(folder.write("Ada Vane", Samples.TIME))
                    .isInstanceOfSatisfying(
                            InUse.class,
                            inUse -> assertThat(inUse.holder())
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
