package everyblade.fleet;

import everyblade.record.Disk;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.NotedHead;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.record.RecordProblem;
import everyblade.record.SealedLine;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Checks jobs of a store as what they are: each is brought into a folder of its own, verified there by the rule for folders,
 * and held against what the store says of it. It trusts nothing that the server computed.
 *
 * @param disk on which the folders are
 * @param workshop in which they are made
 */
public record StoreCheck(Store store, Disk disk, Workshop workshop) {

    /** What is wrong with a job, or that it is sound. */
    public Verification verify(KeptChain job, Optional<NotedHead> noted) throws StoreRefusal {
        Path place = workshop.place(job);
        try {
            JobFolder folder = new JobFolder(disk, place);
            Verification found = new StoreArrival(store).into(folder, job);
            if (found instanceof Sound) {
                found = folder.verify(noted);
            }
            if (!(found instanceof Sound sound)) {
                return found;
            }
            return otherwise(folder, sound, job).<Verification>map(Broken::new).orElse(found);
        } finally {
            workshop.clear(place);
        }
    }

    /** What is wrong if a job that was noted is not there. */
    public static Broken missing(String job) {
        return new Broken(RecordProblem.inFile(
                RecordProblem.What.JOB_MISSING, job, StoreFlaw.Whole.WAS_THERE, StoreFlaw.Remedy.RESTORE));
    }

    /** What the store says of the job that its lines do not bear out. */
    private Optional<RecordProblem> otherwise(JobFolder folder, Sound sound, KeptChain job) throws StoreRefusal {
        List<SealedLine> lines = StoreExchange.read(folder).journal();
        List<String> hashes = store.ask(
                "SELECT n || ' ' || hash FROM everyblade.line WHERE chain = ? ORDER BY n LIMIT ?",
                row -> row.getString(1),
                job.first(),
                lines.size());
        if (!hashes.equals(
                lines.stream().map(line -> line.n() + " " + line.hash()).toList())) {
            return Optional.of(problem(job, StoreFlaw.Whole.OTHER_NUMBER_OR_HASH));
        }
        boolean before =
                job.last() <= sound.entries() && lines.get(job.last()).hash().equals(job.head());
        KeptChain now = new Chains(store).find(job.first()).orElse(job);
        if (!before || now.last() < sound.entries()) {
            return Optional.of(
                    problem(job, new StoreFlaw.OtherEnd(now.last(), now.head(), sound.entries(), sound.head())));
        }
        boolean begins = lines.get(0).hash().equals(job.first());
        return begins ? Optional.empty() : Optional.of(problem(job, StoreFlaw.Whole.OTHER_BEGINNING));
    }

    private static RecordProblem problem(KeptChain job, StoreFlaw why) {
        return RecordProblem.inFile(RecordProblem.What.STORE_CHANGED, job.first(), why, StoreFlaw.Remedy.COMPARE);
    }
}
