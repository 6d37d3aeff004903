package everyblade.record;

import everyblade.record.derived.DerivedFiles;
import everyblade.record.derived.SeenHeads;
import everyblade.record.packed.PackedName;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

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
    static final String DRILL_FOLDER = "drill";
    static final String DRILL_FILE = "drill.json";
    static final String PREVIOUS = "previous";

    static final String LOCK = "writer.lock";

    private final Disk disk;
    private final Path path;
    private final JobFiles files;
    private final RecordKind kind;

    /** A folder that is to hold a job. */
    public JobFolder(Disk disk, Path path) {
        this(disk, path, RecordKind.JOB);
    }

    /** A folder that is to hold a record of this kind; one of the other kind is refused. */
    public JobFolder(Disk disk, Path path, RecordKind kind) {
        this.kind = kind;
        this.disk = disk;
        this.path = path.toAbsolutePath().normalize();
        this.files = new JobFiles(disk, this.path);
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
    public record InUse(LockHolder holder, RecordProblem problem) implements Writing {}

    /** It cannot be opened. */
    public record Refused(RecordProblem problem) implements Reading, Writing, Copying, Packing, Sending {}

    /** What came of verifying. */
    public sealed interface Verification {}

    /**
     * Every line is the one that was written, its text and meaning say the same, none is missing as far as can be known,
     * and frozen files and pictures are those that were kept.
     *
     * @param noted number of the entry that the noted head is of, 0 for the first line; empty if none was noted
     */
    public record Sound(int entries, String head, OptionalInt noted) implements Verification {}

    /**
     * Hash of a line as it was noted elsewhere.
     *
     * @param hash 64 hexadecimal digits
     * @param entry the number of the entry that it is of, if that is known, too
     */
    public record NotedHead(String hash, OptionalInt entry) {}

    /** All is sound up to a last line without newline. */
    public record Torn(int entries, String head, RecordProblem problem) implements Verification {}

    /** The first thing that is wrong. */
    public record Broken(RecordProblem problem) implements Verification {}

    /**
     * Starts a job in a folder that is not there yet, or empty. It is there as a whole and safe on disk when this
     * returns, or there is nothing new.
     *
     * @return why it could not be; empty if it was done
     */
    public Optional<RecordProblem> start(Beginning beginning, byte[] engineModel) {
        return start(beginning, Frozen.of(engineModel));
    }

    /** The same, with more than the engine model frozen into it. */
    public Optional<RecordProblem> start(Beginning beginning, Frozen frozen) {
        return new JobStart(disk, path).start(beginning, frozen);
    }

    /** Opens the job for reading; a writer may be at work meanwhile. */
    public Reading read() {
        return read(Understood.NOTHING);
    }

    /** The same; lines that are understood are read when somebody asks for them. */
    public Reading read(Understood understood) {
        return new JobReader(files, kind).read(understood);
    }

    /** What came of copying a record to compare a later one with. */
    public sealed interface Copying {}

    /** The copy. */
    public record Copied(PreviousRecord record) implements Copying {}

    /** The record as a later one keeps it to compare with. */
    public Copying copy() {
        return new JobReader(files).copy();
    }

    /** The signatures of the job, apart from its journal. */
    public Signatures signatures() {
        return new Signatures(files);
    }

    /** What came of packing. */
    public sealed interface Packing {}

    /**
     * What a packed job holds.
     *
     * @param files how many
     * @param left what else is in the folder and belongs to no job, so that it was left out
     */
    public record Packed(int files, List<String> left) implements Packing {}

    /**
     * Writes the job as a zip, the same bytes for the same job; {@link everyblade.record.packed.Unpacking} reads it.
     *
     * @throws IOException if the zip cannot be written
     */
    public Packing pack(OutputStream out) throws IOException {
        return new JobPack(files).write(out);
    }

    /** What came of reading a job to send it. */
    public sealed interface Sending {}

    /** The job as it travels. */
    public record Ready(SentJob sent) implements Sending {}

    /** Reads the job to be sent to another place. */
    public Sending send() {
        try {
            return new Ready(SentJob.of(files));
        } catch (UnsoundJournal unsound) {
            return new Refused(unsound.problem());
        }
    }

    /**
     * The bytes of a file of the job.
     *
     * @param name one of those that {@link SentJob#files} tells
     * @throws IOException if it cannot be read, or no job has a file of this name
     */
    public byte[] bytes(String name) throws IOException {
        long longest = PackedName.largest(name).orElseThrow(() -> new IOException("no job has a file of this name"));
        return files.read(name, longest);
    }

    /** Gives the files of a job that arrives. */
    @FunctionalInterface
    public interface Arriving<E extends Exception> {

        /** Hands every file over, the journal last. */
        void into(Receiver receiver) throws E, IOException;
    }

    /** Takes the files of a job that arrives. */
    @FunctionalInterface
    public interface Receiver {

        /**
         * Takes one file.
         *
         * @param name one that files of a job have; any other is refused
         */
        void file(String name, byte[] bytes) throws IOException;
    }

    /**
     * Makes the job of files that come from elsewhere, in a folder that is not there yet, or empty. It is there as a whole,
     * verified, and safe on disk when this returns, or there is nothing new.
     *
     * @return what verifying found; of anything but {@link Sound} there is no folder
     */
    public <E extends Exception> Verification arrive(Arriving<E> arriving) throws E {
        return new JobArrival(disk, path).arrive(arriving);
    }

    /**
     * Opens the job for writing, alone. A torn last line is set aside into a file beside the journal.
     *
     * @param by who asks
     * @param since the time now, told to others who ask
     */
    public Writing write(String by, Instant since) {
        return write(by, since, Optional.empty());
    }

    /**
     * The same.
     *
     * @param read the job as it was just read, which is not read again if nobody has added to it
     */
    public Writing write(String by, Instant since, Optional<Job> read) {
        if (!disk.exists(path.resolve(Journal.FILE))) {
            return new Refused(JobReader.noJob(path));
        }
        Disk.Lock lock;
        try {
            Disk.LockAnswer answer = disk.lock(path.resolve(LOCK), LockHolder.text(by, since));
            if (answer instanceof Disk.Held held) {
                return inUse(held.holder().isEmpty() ? LockHolder.Unnamed.JUST_BEGUN : LockHolder.of(held.holder()));
            }
            lock = (Disk.Lock) answer;
        } catch (IOException failure) {
            return new Refused(unwritable(LOCK, failure));
        }
        Writing writing = writeLocked(lock, read);
        if (!(writing instanceof Writable)) {
            JournalWriter.closeQuietly(lock);
        }
        return writing;
    }

    private Writing writeLocked(Disk.Lock lock, Optional<Job> read) {
        Reading reading = read.filter(this::isStill).<Reading>map(Readable::new).orElseGet(this::read);
        if (reading instanceof Refused refused) {
            return refused;
        }
        Job job = ((Readable) reading).job();
        if (job.journal().newerVersion().isPresent()) {
            return new Refused(new RecordProblem(
                    RecordProblem.What.NEWER_JOURNAL,
                    Journal.FILE,
                    1,
                    new JournalFlaw.NotWritten(job.journal().newerVersion().get()),
                    Remedy.READ_ONLY_OR_NEWER_PROGRAM));
        }
        try {
            return new Writable(JournalWriter.open(disk, path, job, lock));
        } catch (IOException failure) {
            return new Refused(unwritable(Journal.FILE, failure));
        }
    }

    /** What reviewers said of the job, apart from its journal. */
    public ReviewFile review() {
        return new ReviewFile(disk, path, files);
    }

    /** Checks the whole record; an end that is missing shows only by a head that was noted elsewhere. */
    public Verification verify(Optional<NotedHead> noted) {
        return verify(noted, new SeenHeads(DerivedFiles.none()));
    }

    /** The same; what the user's program has seen of the job helps to tell what became of a noted head. */
    public Verification verify(Optional<NotedHead> noted, SeenHeads seen) {
        return new RecordCheck(files, noted, seen).verify();
    }

    /**
     * What does not hinder reading but must not stay unsaid: lines whose text and meaning say two different things, and
     * pictures that are not there as they were kept.
     */
    public List<RecordProblem> doubts(Journal journal) {
        Photos photos = new Photos(files);
        return journal.lines().stream()
                .flatMap(line -> Stream.concat(RecordCheck.contradiction(line).stream(), photos.changed(line).stream()))
                .toList();
    }

    /** Whether the journal still ends where it did when it was read; only its writer may have added to it. */
    private boolean isStill(Job read) {
        byte[] head = (read.journal().head() + "\"}\n").getBytes(StandardCharsets.US_ASCII);
        try (InputStream in = files.open(Journal.FILE, Journal.LARGEST)) {
            in.skipNBytes(read.journal().length() - head.length);
            return Arrays.equals(in.readNBytes(head.length + 1), head);
        } catch (IOException changed) {
            return false;
        }
    }

    private InUse inUse(LockHolder holder) {
        return new InUse(
                holder,
                RecordProblem.inFile(
                        RecordProblem.What.JOB_IN_USE,
                        path.toString(),
                        new FolderFlaw.InUse(holder),
                        Remedy.READ_ONLY_OR_ASK_TO_CLOSE));
    }

    static RecordProblem unwritable(String file, IOException failure) {
        return RecordProblem.inFile(
                RecordProblem.What.FILE_NOT_WRITTEN, file, DiskFailure.of(failure), Remedy.READ_ONLY_OR_CHECK_DISK);
    }
}
