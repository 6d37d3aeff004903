package everyblade.record;

import everyblade.fact.Fact;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The only writer of a journal: what it says is kept is safe on disk, and stays so. For one thread at a time.
 */
public final class JournalWriter implements Closeable {

    private final Disk disk;
    private final Path path;
    private final ForcedLines end;
    private final Disk.Lock lock;
    private final Job opened;

    private int count;
    private String head;
    private Optional<RecordProblem> stopped = Optional.empty();

    private JournalWriter(Disk disk, Path path, ForcedLines end, Disk.Lock lock, Job opened) {
        this.disk = disk;
        this.path = path;
        this.end = end;
        this.lock = lock;
        this.opened = opened;
        this.count = opened.journal().lines().size();
        this.head = opened.journal().head();
    }

    /** What came of appending. */
    public sealed interface Appended {}

    /** All lines are safe on disk. */
    public record Kept(List<JournalLine> lines) implements Appended {}

    /**
     * None of the batch is acknowledged.
     *
     * @param problem what happened, for a person
     * @param canGoOn whether the writer takes more; if not, close it and open the job again
     */
    public record NotKept(RecordProblem problem, boolean canGoOn) implements Appended {}

    static JournalWriter open(Disk disk, Path folder, Job job, Disk.Lock lock) throws IOException {
        Journal journal = job.journal();
        Path path = folder.resolve(Journal.FILE);
        ForcedLines end =
                ForcedLines.open(disk, path, journal.length(), journal.torn().isPresent(), Journal.LARGEST);
        return new JournalWriter(disk, path, end, lock, job);
    }

    /** The job as it was when the writer was opened. */
    public Job opened() {
        return opened;
    }

    /** Hash of the last line that is kept. */
    public String head() {
        return head;
    }

    /** What a person should be told about the opening, one line each. */
    public List<Fact> notices() {
        return end
                .setAside()
                .<Fact>map(name -> new Notice.SetAside(
                        opened.journal().torn().orElseThrow().line(), name))
                .stream()
                .toList();
    }

    /**
     * Keeps these entries, in this order, each with what its picture is, which must be in the job already. When it returns with {@link Kept} they are safe on disk; otherwise none of
     * them is acknowledged. A thread that is interrupted meanwhile loses its file, so the writer stops as after a
     * failure: append where nobody interrupts.
     */
    public Appended append(List<Addition> batch) {
        if (stopped.isPresent()) {
            return new NotKept(stopped.get(), false);
        }
        List<JournalLine> lines = new ArrayList<>();
        List<byte[]> texts = new ArrayList<>();
        String last = head;
        Photos photos = new Photos(new JobFiles(disk, path.getParent()));
        for (Addition said : batch) {
            Photos.Stamping stamping = photos.stamp(said);
            if (stamping instanceof Photos.Missing missing) {
                return new NotKept(missing.problem(), true);
            }
            Addition entry = ((Photos.Stamped) stamping).entry();
            int k = count + lines.size() + 1;
            Optional<Chain.Sealed> line = seal(last, k, entry);
            if (line.isEmpty()) {
                return new NotKept(unreadable(entry), true);
            }
            last = line.get().hash();
            lines.add(new JournalLine(k, entry, last));
            texts.add(line.get().bytes());
        }
        Optional<WriteFlaw> why = end.append(texts);
        if (why.isPresent()) {
            return stop(why.get());
        }
        count += lines.size();
        head = last;
        return new Kept(List.copyOf(lines));
    }

    /**
     * Keeps lines that were sealed elsewhere, byte for byte, behind those that are there. When it returns with {@link Kept}
     * they are safe on disk; otherwise none of them is acknowledged.
     */
    public Appended follow(List<byte[]> sealed) {
        if (stopped.isPresent()) {
            return new NotKept(stopped.get(), false);
        }
        List<JournalLine> lines = new ArrayList<>();
        try {
            for (SealedLine line : SealedLine.following(head, count + 1, sealed)
                    .orElseThrow(() -> new Unreadable(LineFlaw.Whole.NOT_THE_NEXT))) {
                lines.add(new JournalLine(line.n(), LineFormat.readEntry(line.bytes(), line.n(), false), line.hash()));
            }
        } catch (Unreadable unreadable) {
            return new NotKept(
                    RecordProblem.inFile(
                            RecordProblem.What.NOT_KEPT,
                            path.toString(),
                            new WriteFlaw.CameUnsound(unreadable.flaw()),
                            Remedy.ASK_WHERE_THEY_CAME_FROM),
                    true);
        }
        Optional<WriteFlaw> why = end.append(sealed);
        if (why.isPresent()) {
            return stop(why.get());
        }
        count += lines.size();
        head = lines.isEmpty() ? head : lines.get(lines.size() - 1).hash();
        return new Kept(List.copyOf(lines));
    }

    /**
     * Keeps a picture in the job, before the entry that names it is appended. It is safe on disk when this returns.
     *
     * @param name plain name of the file
     * @return why it could not be kept; empty if it was
     */
    public Optional<RecordProblem> keepPhoto(String name, byte[] picture) {
        return stopped.isPresent() ? stopped : new Photos(new JobFiles(disk, path.getParent())).keep(name, picture);
    }

    /** The line of an entry; empty if it would not read back as the same entry. */
    private static Optional<Chain.Sealed> seal(String previous, int k, Addition entry) {
        try {
            String text = LineFormat.entryLine(k, entry);
            Addition readBack = LineFormat.readEntry(text.getBytes(StandardCharsets.UTF_8), k, false);
            boolean same = LineFormat.entryLine(k, readBack).equals(text)
                    && readBack.text().equals(entry.text())
                    && readBack.by().equals(entry.by());
            return same ? Optional.of(Chain.seal(previous, text)) : Optional.empty();
        } catch (Unreadable unreadable) {
            return Optional.empty();
        }
    }

    private NotKept stop(WriteFlaw why) {
        RecordProblem problem = RecordProblem.inFile(
                RecordProblem.What.NOT_KEPT,
                path.toString(),
                new WriteFlaw.Stopped(why, count),
                Remedy.SEE_TO_DISK_AND_REOPEN_JOB);
        stopped = Optional.of(problem);
        return new NotKept(problem, false);
    }

    private RecordProblem unreadable(Addition entry) {
        return RecordProblem.inFile(
                RecordProblem.What.NOT_KEPT,
                path.toString(),
                new WriteFlaw.NotReadBack(entry.text()),
                Remedy.PLAIN_CHARACTERS);
    }

    /** Gives the job free for other writers. */
    @Override
    public void close() {
        stopped = stopped.or(() -> Optional.of(RecordProblem.inFile(
                RecordProblem.What.NOT_KEPT, path.toString(), WriteFlaw.Whole.JOB_CLOSED, Remedy.REOPEN)));
        end.close();
        closeQuietly(lock);
    }

    /** All that was acknowledged is forced, so a failure to close loses nothing. */
    static void closeQuietly(Closeable open) {
        try {
            open.close();
        } catch (IOException nothingLost) {
            // nothing to do and nothing to say
        }
    }
}
