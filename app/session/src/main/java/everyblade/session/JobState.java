package everyblade.session;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.finding.closing.Beside;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.record.Beginning;
import everyblade.record.JournalLine;
import everyblade.session.around.Failure;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Speech;
import everyblade.session.photo.JobPhoto;
import everyblade.spi.EngineModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A job as a window shows it at one moment; immutable.
 *
 * @param folder of the job
 * @param beginning what is fixed for the job
 * @param head hash of the last line that is on disk
 * @param speech all entries so far, those only in memory included
 * @param coverage of all these entries
 * @param limits that findings are judged by, if the job has any
 * @param beside what it holds beside its entries
 * @param keeping what becomes of the next one
 */
public record JobState(
        Path folder,
        Beginning beginning,
        String head,
        Speech speech,
        Coverage coverage,
        Optional<Limits> limits,
        Beside beside,
        Keeping keeping) {

    /**
     * A job as it was read.
     *
     * @param notices is told what of it cannot be read and must not hinder the rest, one line each
     */
    public static JobState of(OpenedJob job, Keeping keeping, Consumer<String> notices) {
        return new JobState(
                job.folder().path(),
                job.beginning(),
                job.journal().head(),
                Speech.after(job),
                job.coverage(),
                readable(job::limits, notices).orElse(Optional.empty()),
                job.beside(readable(() -> job.review().remarks(), notices).orElse(List.of())),
                keeping);
    }

    /** What cannot be read must not keep anybody from entering what they see, nor go unsaid. */
    private static <T> Optional<T> readable(Supplier<T> read, Consumer<String> notices) {
        try {
            return Optional.of(read.get());
        } catch (Failure unreadable) {
            notices.accept(unreadable.getMessage());
            return Optional.empty();
        }
    }

    /** The same job when it had other entries; what is said of it now stays. */
    public JobState at(Fold fold, Coverage then) {
        Speech said = new Speech(fold, speech.starter(), speech.started(), speech.speaker(), speech.readable());
        return new JobState(folder, beginning, head, said, then, limits, beside, keeping);
    }

    /** The same job after reviewers said more. */
    public JobState reviewed(List<ReviewRemark> newReview) {
        return new JobState(folder, beginning, head, speech, coverage, limits, beside.reviewed(newReview), keeping);
    }

    public Fold fold() {
        return speech.fold();
    }

    public Situation situation() {
        return speech.fold().situation();
    }

    public EngineModel model() {
        return situation().engine().model();
    }

    /** The view in use. */
    public Optional<Seat> seat() {
        return situation().seat();
    }

    /** The last entry, void or not. */
    public Optional<Logged> last() {
        List<Logged> entries = fold().entries();
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    /** Whether entries can be made. */
    public boolean open() {
        return !(keeping instanceof Keeping.ReadOnly);
    }

    /** What the limits say of each finding; nothing without limits. */
    public List<Judgement> judged() {
        return limits.map(known -> Judging.of(known, fold(), coverage)).orElse(List.of());
    }

    /** Everything that is open; takes as long as finding the gaps. */
    public ClosingList closing() {
        return ClosingList.of(fold(), coverage, limits, judged(), beside);
    }

    JobState after(Speech said, String newHead, List<ReviewRemark> newReview, Keeping newKeeping) {
        return new JobState(
                folder,
                beginning,
                newHead,
                said,
                coverage.after(said.fold().situation()),
                limits,
                beside.reviewed(newReview),
                newKeeping);
    }

    /** What reviewers said of it so far. */
    public List<ReviewRemark> review() {
        return beside.review();
    }

    /** With the pictures that lines kept since name. */
    JobState with(List<JournalLine> kept) {
        return new JobState(
                folder, beginning, head, speech, coverage, limits, beside.pictured(JobPhoto.named(kept)), keeping);
    }
}
