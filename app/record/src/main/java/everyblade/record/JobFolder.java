package everyblade.record;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A job on a disk: {@code journal.jsonl}, the engine model as it was in {@code model/engine.json}, {@code photos/}, and
 * where they were given {@code limits/limits.json} and the record compared with in {@code previous/}.
 * Nothing here throws for what a disk or a person may do; every such outcome is an answer.
 */
public final class JobFolder {

    static final String PHOTOS = "photos";
    static final String MODEL_FOLDER = "model";
    static final String MODEL_FILE = "engine.json";
    static final String LIMITS_FOLDER = "limits";
    static final String LIMITS_FILE = "limits.json";
    static final String PREVIOUS = "previous";

    private static final String LOCK = "writer.lock";

    private final Disk disk;
    private final Path path;

    public JobFolder(Disk disk, Path path) {
        this.disk = disk;
        this.path = path.toAbsolutePath().normalize();
    }

    /** Where the job is. */
    public Path path() {
        return path;
    }

    /** What came of opening for reading. */
    public sealed interface Reading {}

    /** What came of opening for writing. */
    public sealed interface Writing {}

    /** The job can be read. */
    public record Readable(Job job) implements Reading {}

    /** The job is ours to write until the writer is closed. */
    public record Writable(JournalWriter writer) implements Writing {}

    /**
     * Somebody else is writing; it can be read.
     *
     * @param holder who, and since when
     * @param problem the same for a person
     */
    public record InUse(String holder, Problem problem) implements Writing {}

    /** It cannot be opened. */
    public record Refused(Problem problem) implements Reading, Writing, Copying {}

    /** What came of verifying. */
    public sealed interface Verification {}

    /** Every line is the one that was written, none is missing as far as can be known, and frozen files and pictures are those that were kept. */
    public record Sound(int entries, String head) implements Verification {}

    /** All is sound up to a last line without newline. */
    public record Torn(int entries, String head, Problem problem) implements Verification {}

    /** The first thing that is wrong. */
    public record Broken(Problem problem) implements Verification {}

    /**
     * Starts a job in a folder that is not there yet, or empty. It is there as a whole and safe on disk when this
     * returns, or there is nothing new.
     *
     * @return why it could not be; empty if it was done
     */
    public Optional<Problem> start(Beginning beginning, byte[] engineModel) {
        return start(beginning, Frozen.of(engineModel));
    }

    /** The same, with more than the engine model frozen into it. */
    public Optional<Problem> start(Beginning beginning, Frozen frozen) {
        return new JobStart(disk, path).start(beginning, frozen);
    }

    /** Opens the job for reading; a writer may be at work meanwhile. */
    public Reading read() {
        return new JobReader(disk, path).read();
    }

    /** What came of copying a record to compare a later one with. */
    public sealed interface Copying {}

    /** The copy. */
    public record Copied(PreviousRecord record) implements Copying {}

    /** The record as a later one keeps it to compare with. */
    public Copying copy() {
        return new JobReader(disk, path).copy();
    }

    /**
     * Opens the job for writing, alone. A torn last line is set aside into a file beside the journal.
     *
     * @param by who asks
     * @param since the time now, told to others who ask
     */
    public Writing write(String by, Instant since) {
        if (!disk.exists(path.resolve(Journal.FILE))) {
            return new Refused(JobReader.noJob(path));
        }
        Disk.Lock lock;
        try {
            Disk.LockAnswer answer = disk.lock(path.resolve(LOCK), holder(by, since));
            if (answer instanceof Disk.Held held) {
                return inUse(held.holder().isEmpty() ? "somebody who has just begun" : held.holder());
            }
            lock = (Disk.Lock) answer;
        } catch (IOException failure) {
            return new Refused(unwritable(LOCK, failure));
        }
        Writing writing = writeLocked(lock);
        if (!(writing instanceof Writable)) {
            JournalWriter.closeQuietly(lock);
        }
        return writing;
    }

    private Writing writeLocked(Disk.Lock lock) {
        Reading reading = read();
        if (reading instanceof Refused refused) {
            return refused;
        }
        Job job = ((Readable) reading).job();
        if (job.journal().newerVersion().isPresent()) {
            return new Refused(new Problem(
                    "Newer journal",
                    Journal.FILE,
                    1,
                    "it is of version " + job.journal().newerVersion().get() + ", this program writes version 1.0",
                    "open it for reading, or use a newer program"));
        }
        try {
            return new Writable(JournalWriter.open(disk, path, job, lock));
        } catch (IOException failure) {
            return new Refused(unwritable(Journal.FILE, failure));
        }
    }

    /**
     * Checks the whole record.
     *
     * @param head hash of a line, kept elsewhere; if no line has it, lines are missing at the end
     */
    public Verification verify(Optional<String> head) {
        Reading reading = read();
        if (reading instanceof Refused refused) {
            return new Broken(refused.problem());
        }
        Job job = ((Readable) reading).job();
        Journal journal = job.journal();
        if (head.isPresent() && !journal.has(head.get())) {
            return new Broken(new Problem(
                    "Lines missing",
                    Journal.FILE,
                    journal.lines().size() + 2,
                    "no line has the hash " + head.get() + ", so the journal once went on beyond its end",
                    "look for a copy of the job that has it"));
        }
        Optional<Problem> photo = new Photos(disk, path).changed(journal);
        if (photo.isPresent()) {
            return new Broken(photo.get());
        }
        if (journal.torn().isPresent()) {
            Journal.TornTail torn = journal.torn().get();
            return new Torn(
                    journal.lines().size(),
                    journal.head(),
                    new Problem(
                            "Torn line",
                            Journal.FILE,
                            torn.line(),
                            "it has no newline, so it is not acknowledged, or not yet if somebody is writing",
                            "open the job for writing, which sets the line aside"));
        }
        return new Sound(journal.lines().size(), journal.head());
    }

    private InUse inUse(String holder) {
        return new InUse(
                holder,
                Problem.inFile(
                        "Job in use",
                        path.toString(),
                        "it is being written by " + holder,
                        "open it for reading, or ask them to close it"));
    }

    private static String holder(String by, Instant since) {
        return by.replaceAll("\\R", " ") + " since " + since.truncatedTo(ChronoUnit.SECONDS) + " (process "
                + ProcessHandle.current().pid() + ")\n";
    }

    private static Problem unwritable(String file, IOException failure) {
        return Problem.inFile(
                "File not written",
                file,
                Reasons.of(failure),
                "open the job for reading, or check the disk and the file's permissions");
    }
}
