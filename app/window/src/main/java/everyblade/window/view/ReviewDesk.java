package everyblade.window.view;

import everyblade.core.finding.review.Blind;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.sight.Progress;
import everyblade.record.Job;
import everyblade.record.JobFolder;
import everyblade.session.JobState;
import everyblade.session.Keeping;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.job.Comparison;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Reviewer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A record open to be reviewed. Opening it writes nothing; what the reviewer says goes into a chain of its own beside the
 * journal. For one thread at a time, which may have to wait for the disk.
 */
public final class ReviewDesk {

    private final Surroundings around;
    private final OpenedJob job;
    private final List<String> notices;
    private JobState state;

    private ReviewDesk(Surroundings around, OpenedJob job, JobState state, List<String> notices) {
        this.around = around;
        this.job = job;
        this.state = state;
        this.notices = List.copyOf(notices);
    }

    /**
     * Opens a record.
     *
     * @param reason why nothing can be entered into it, for the person
     * @throws Failure if it cannot be read
     */
    public static ReviewDesk open(Surroundings around, Path path, String reason, Progress progress) {
        JobFolder folder = new JobFolder(around.disk(), around.job(path));
        JobFolder.Reading reading = folder.read();
        if (reading instanceof JobFolder.Refused refused) {
            throw new Failure(refused.problem());
        }
        Job read = ((JobFolder.Readable) reading).job();
        List<String> notices = new ArrayList<>(around.words().say(read.notices()));
        OpenedJob job = OpenedJob.of(around, folder, read, progress);
        Keeping readOnly = new Keeping.ReadOnly(reason, Optional.empty(), false);
        JobState state = JobState.of(job, readOnly, notices::add);
        job.doubts(around.words()).stream()
                .filter(doubt -> !notices.contains(doubt))
                .forEach(notices::add);
        return new ReviewDesk(around, job, state, notices);
    }

    /** The record, with what reviewers have said so far. */
    public JobState state() {
        return state;
    }

    /** What the reviewer should be told of the record itself, one line each. */
    public List<String> notices() {
        return notices;
    }

    /**
     * The record as it came about.
     *
     * @param blind without what the technician makes of it
     */
    public Replay replay(boolean blind) {
        if (!blind) {
            return new Replay(state);
        }
        var fold = Blind.fold(state.fold());
        return new Replay(state.at(fold, state.coverage().after(fold.situation())));
    }

    /** What the scope tip sees, as far as that can be drawn. */
    public TipSight tip() {
        return new TipSight(job.album(), state.coverage());
    }

    /**
     * This record held against a later one; takes as long as opening that.
     *
     * @throws Failure if it cannot be read, or compared
     */
    public Comparison compared(Path later, Progress progress) {
        JobFolder folder = new JobFolder(around.disk(), around.job(later));
        if (folder.read() instanceof JobFolder.Readable readable) {
            return Comparison.of(
                    job, state.coverage(), OpenedJob.of(around, folder, readable.job(), progress), around.words());
        }
        throw new Failure(later + ": there is no record in it that can be read; name a job folder");
    }

    /** What should be told to whoever reviews under this name; empty if nothing. */
    public List<String> notices(String name) {
        return new Reviewer(around, job, name).notices();
    }

    /**
     * Keeps what a reviewer says, all or none.
     *
     * @throws Failure if it cannot be kept
     */
    public JobState say(String name, List<Reviewer.Said> said) {
        List<ReviewRemark> all = new ArrayList<>(state.review());
        List<ReviewRemark> kept = new Reviewer(around, job, name).keep(said);
        kept.forEach(remark -> {
            all.removeIf(known -> known.number() == remark.number());
            all.add(remark);
        });
        state = state.reviewed(all);
        return state;
    }
}
