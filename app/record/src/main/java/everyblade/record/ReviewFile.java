package everyblade.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Instant;

/**
 * Where the review of a job is kept: {@code review.jsonl} beside the journal, which it never touches. Who writes it holds a
 * lock of its own, so that the technician can go on meanwhile.
 */
public final class ReviewFile {

    static final String LOCK = "review.lock";

    private final Disk disk;
    private final Path folder;
    private final JobFiles files;

    ReviewFile(Disk disk, Path folder, JobFiles files) {
        this.disk = disk;
        this.folder = folder;
        this.files = files;
    }

    /** What came of reading. */
    public sealed interface Reading {}

    /** What came of opening for writing. */
    public sealed interface Writing {}

    /** All lines are sound; empty if there is no review. */
    public record Readable(Review review) implements Reading {}

    /** The review is ours to add to until the writer is closed. */
    public record Writable(ReviewWriter writer) implements Writing {}

    /** It cannot be. */
    public record Refused(RecordProblem problem) implements Reading, Writing {}

    /**
     * Reads what was said so far; touches nothing.
     *
     * @param job hash of the journal's first line
     */
    public Reading read(String job) {
        if (!disk.exists(folder.resolve(Review.FILE))) {
            return new Readable(Review.NONE);
        }
        try (InputStream in = files.open(Review.FILE, Review.LARGEST)) {
            return new Readable(Review.read(in, job));
        } catch (UnsoundJournal unsound) {
            return new Refused(unsound.problem());
        } catch (IOException failure) {
            return new Refused(RecordProblem.inFile(
                    RecordProblem.What.FILE_NOT_READ, Review.FILE, DiskFailure.of(failure), Remedy.CHECK_DISK));
        }
    }

    /**
     * Opens the review to be added to, alone; makes it if there is none.
     *
     * @param by who asks
     * @param since the time now, told to others who ask
     * @param job hash of the journal's first line
     */
    public Writing write(String by, Instant since, String job) {
        Disk.Lock lock;
        try {
            Disk.LockAnswer answer = disk.lock(folder.resolve(LOCK), LockHolder.text(by, since));
            if (answer instanceof Disk.Held held) {
                return new Refused(RecordProblem.inFile(
                        RecordProblem.What.REVIEW_IN_USE,
                        folder.toString(),
                        new FolderFlaw.InUse(
                                held.holder().isEmpty() ? LockHolder.Unnamed.SOMEBODY : LockHolder.of(held.holder())),
                        Remedy.ASK_TO_CLOSE));
            }
            lock = (Disk.Lock) answer;
        } catch (IOException failure) {
            return new Refused(JobFolder.unwritable(LOCK, failure));
        }
        Writing writing = writeLocked(lock, job);
        if (!(writing instanceof Writable)) {
            JournalWriter.closeQuietly(lock);
        }
        return writing;
    }

    private Writing writeLocked(Disk.Lock lock, String job) {
        Reading reading = read(job);
        if (reading instanceof Refused refused) {
            return refused;
        }
        Review review = ((Readable) reading).review();
        Path path = folder.resolve(Review.FILE);
        try {
            if (!disk.exists(path)) {
                disk.create(path).close();
                disk.forceFolder(folder);
            }
            ForcedLines end = ForcedLines.open(disk, path, review.length(), review.torn(), Review.LARGEST);
            return new Writable(new ReviewWriter(end, lock, job, review));
        } catch (IOException failure) {
            return new Refused(JobFolder.unwritable(Review.FILE, failure));
        }
    }
}
