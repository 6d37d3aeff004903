package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder.Refused;
import everyblade.record.JobFolder.Writable;
import everyblade.record.JobFolder.Writing;
import everyblade.record.JournalWriter.Appended;
import everyblade.record.JournalWriter.Kept;
import everyblade.record.JournalWriter.NotKept;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A technician at work on a disk that may fail: starts a job, says notes 1 to 6 in batches of one and of three, leaves
 * off and comes back, and whenever something is refused opens the job again and goes on after the last note that is
 * there. Remembers what was promised: what was acknowledged, and what a writer was shown on opening.
 */
final class Shift {

    static final Path JOB = Path.of("/disk/job");
    static final int LAST = 6;

    private static final int LEAVES_OFF_AFTER = 4;
    private static final int PATIENCE = 5;

    private final JobFolder folder;
    private boolean started;
    private int promised;
    private int refusals;

    Shift(Disk disk) {
        this.folder = new JobFolder(disk, JOB);
    }

    /** The same technician, who goes on with what was promised on another disk. */
    Shift on(Disk disk) {
        Shift shift = new Shift(disk);
        shift.started = started && disk.exists(JOB);
        shift.promised = promised;
        return shift;
    }

    /** Whether the job was said to be started. */
    boolean started() {
        return started;
    }

    /** Notes 1 to this were promised to be there. */
    int promised() {
        return promised;
    }

    int refusals() {
        return refusals;
    }

    /** Works until all is said, the power is cut, or patience ends. */
    void work() {
        while (!started && refusals < PATIENCE) {
            Optional<RecordProblem> problem = folder.start(Samples.BEGINNING, Samples.ENGINE);
            started = problem.isEmpty();
            problem.ifPresent(this::refused);
        }
        while (started && promised < LAST && refusals < PATIENCE) {
            Writing writing = folder.write("Ada Vane", Samples.TIME);
            if (writing instanceof Writable writable) {
                try (JournalWriter writer = writable.writer()) {
                    say(writer);
                }
            } else {
                refused(((Refused) writing).problem());
            }
        }
    }

    private void say(JournalWriter writer) {
        promise(writer.opened().journal().lines());
        int until = promised < LEAVES_OFF_AFTER ? LEAVES_OFF_AFTER : LAST;
        while (promised < until) {
            List<Addition> batch = Samples.notes(promised + 1, promised == 1 ? LEAVES_OFF_AFTER : promised + 1);
            Appended appended = writer.append(batch);
            if (appended instanceof Kept kept) {
                promised = kept.lines().get(kept.lines().size() - 1).k();
            } else {
                NotKept notKept = (NotKept) appended;
                assertThat(notKept.canGoOn()).isFalse();
                assertThat(writer.append(batch)).isEqualTo(notKept);
                refused(notKept.problem());
                cutBackAsSaid(notKept.problem());
                return;
            }
        }
    }

    private void cutBackAsSaid(RecordProblem problem) {
        if (English.said(problem).contains("nothing of this entry is left")) {
            Journal journal = Jobs.read(folder).journal();
            assertThat(journal.lines()).hasSize(promised);
            assertThat(journal.torn()).isEmpty();
        }
    }

    private void promise(List<JournalLine> lines) {
        assertThat(lines).hasSizeGreaterThanOrEqualTo(promised);
        assertThat(lines).extracting(JournalLine::entry).isEqualTo(Samples.notes(1, lines.size()));
        promised = lines.size();
    }

    private void refused(RecordProblem problem) {
        refusals++;
        assertThat(English.said(problem))
                .doesNotContain("\n")
                .containsAnyOf("No space left on device", "something is there already")
                .contains("; ");
    }

    /** Whether the disk has what was promised, as a reader, a verifier and the next writer find it. */
    void promisesHold(Disk found) {
        JobFolder again = new JobFolder(found, JOB);
        if (!started && !found.exists(JOB)) {
            return;
        }
        int there = Jobs.entries(again).size();
        assertThat(there).isGreaterThanOrEqualTo(promised);
        assertThat(again.verify(Optional.empty())).isNotInstanceOf(JobFolder.Broken.class);
        Jobs.keep(again, Samples.note(there + 1));
        assertThat(again.verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);
        assertThat(Jobs.entries(again)).isEqualTo(Samples.notes(1, there + 1));
    }
}
