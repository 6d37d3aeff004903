package everyblade.session.job;

import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.util.Optional;

/** Opens a job for writing. */
public final class Writing {

    private Writing() {}

    /** The job's only writer, until closed; fails if somebody else is writing. */
    public static JournalWriter open(Surroundings around, OpenedJob job, Optional<String> by) {
        String who = by.orElseGet(() -> Speech.after(job).speaker());
        JobFolder.Writing writing = job.folder().write(who, around.clock().instant(), Optional.of(job.job()));
        if (writing instanceof JobFolder.Writable writable) {
            around.words().say(writable.writer().notices()).forEach(around.err()::println);
            return writable.writer();
        }
        throw new Failure(
                writing instanceof JobFolder.InUse inUse ? inUse.problem() : ((JobFolder.Refused) writing).problem());
    }
}
