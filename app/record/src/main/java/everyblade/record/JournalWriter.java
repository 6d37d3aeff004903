package everyblade.record;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The only writer of a journal: what it says is kept is safe on disk, and stays so. For one thread at a time.
 *
 * <p>Disks may write out of order what was not forced. So the newline of a line is written only when the line itself is
 * safe, together with the next line of the batch: a line with a newline is then always whole, and whatever a cut in
 * power leaves at the end has no newline. That costs one force more than there are lines.
 *
 * <p>After a failed write or force nobody knows what is on the disk. The writer then cuts off what it has not
 * acknowledged, as well as it can, and takes nothing more; opening the job again shows what is there.
 */
public final class JournalWriter implements Closeable {

    private static final byte[] NEWLINE = {'\n'};

    /** A file that was replaced, removed or written to would swallow what we say is kept, and is not ours to cut. */
    private static final String CHANGED = "something else has changed or replaced the file";

    private final Disk disk;
    private final Path path;
    private final Disk.OpenFile file;
    private final Disk.Lock lock;
    private final Job opened;
    private final Optional<String> setAside;

    private int count;
    private String head;
    private long length;
    private Optional<Problem> stopped = Optional.empty();

    private JournalWriter(
            Disk disk, Path path, Disk.OpenFile file, Disk.Lock lock, Job opened, Optional<String> setAside) {
        this.disk = disk;
        this.path = path;
        this.file = file;
        this.lock = lock;
        this.opened = opened;
        this.setAside = setAside;
        this.count = opened.journal().lines().size();
        this.head = opened.journal().head();
        this.length = opened.journal().length();
    }

    /** What came of appending. */
    public sealed interface Appended {}

    /** All lines are safe on disk. */
    public record Kept(List<Line> lines) implements Appended {}

    /**
     * None of the batch is acknowledged.
     *
     * @param problem what happened, for a person
     * @param canGoOn whether the writer takes more; if not, close it and open the job again
     */
    public record NotKept(Problem problem, boolean canGoOn) implements Appended {}

    static JournalWriter open(Disk disk, Path folder, Job job, Disk.Lock lock) throws IOException {
        Journal journal = job.journal();
        Path path = folder.resolve(Journal.FILE);
        Optional<String> setAside =
                journal.torn().isPresent() ? Optional.of(setAside(disk, folder, journal.length())) : Optional.empty();
        Disk.OpenFile file = disk.open(path);
        try {
            if (setAside.isPresent()) {
                file.truncate(journal.length());
            }
            // After a failed force a system may take unwritten bytes for written ones. Writing the last newline again
            // makes the end of the journal, which is all that can be in doubt, go to the disk before anyone builds on
            // it.
            file.write(journal.length() - 1, NEWLINE);
            file.force();
            return new JournalWriter(disk, path, file, lock, job, setAside);
        } catch (IOException failure) {
            closeQuietly(file);
            throw failure;
        }
    }

    private static String setAside(Disk disk, Path folder, long sound) throws IOException {
        int number = 1;
        while (disk.exists(folder.resolve(tornName(number)))) {
            number++;
        }
        try (InputStream journal = disk.read(folder.resolve(Journal.FILE), Journal.LARGEST);
                Disk.OpenFile torn = disk.create(folder.resolve(tornName(number)))) {
            journal.skipNBytes(sound);
            torn.write(0, journal.readAllBytes());
            torn.force();
        }
        disk.forceFolder(folder);
        return tornName(number);
    }

    private static String tornName(int number) {
        return "torn-" + number + ".txt";
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
    public List<String> notices() {
        return setAside
                .map(name -> "Torn line set aside: " + Journal.FILE + " line "
                        + opened.journal().torn().orElseThrow().line() + ": it had no newline, so it was never"
                        + " acknowledged; its bytes are in " + name + ", say the entry again if it is wanted")
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
        List<Line> lines = new ArrayList<>();
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
            lines.add(new Line(k, entry, last));
            texts.add(line.get().bytes());
        }
        try {
            if (disk.size(path) != length) {
                return stop(CHANGED);
            }
            long end = write(texts);
            if (disk.size(path) != end) {
                return stop(CHANGED);
            }
            count += lines.size();
            head = last;
            length = end;
            return new Kept(List.copyOf(lines));
        } catch (IOException failure) {
            return stop(Reasons.of(failure) + "; " + cutBack());
        }
    }

    /**
     * Keeps a picture in the job, before the entry that names it is appended. It is safe on disk when this returns.
     *
     * @param name plain name of the file
     * @return why it could not be kept; empty if it was
     */
    public Optional<Problem> keepPhoto(String name, byte[] picture) {
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

    private long write(List<byte[]> lines) throws IOException {
        long end = length;
        byte[] before = {};
        for (byte[] line : lines) {
            ByteArrayOutputStream piece = new ByteArrayOutputStream();
            piece.writeBytes(before);
            piece.writeBytes(line);
            file.write(end, piece.toByteArray());
            file.force();
            end += piece.size();
            before = NEWLINE;
        }
        if (!lines.isEmpty()) {
            file.write(end, NEWLINE);
            file.force();
            end++;
        }
        return end;
    }

    /** Cuts off what is not acknowledged and says whether that went well. */
    private String cutBack() {
        try {
            file.truncate(length);
            file.force();
            return "nothing of this entry is left in the journal";
        } catch (IOException alsoRefused) {
            return "what is left of this entry could not be cut off, so it may show when the job is opened again";
        }
    }

    private NotKept stop(String why) {
        Problem problem = Problem.inFile(
                "NOT KEPT",
                path.toString(),
                why + "; the " + count + " entries kept before stand",
                "see to the disk and open the job again, or go on in a job elsewhere");
        stopped = Optional.of(problem);
        return new NotKept(problem, false);
    }

    private Problem unreadable(Addition entry) {
        return Problem.inFile(
                "NOT KEPT",
                path.toString(),
                "the entry \"" + entry.text() + "\" would not read back as it was said",
                "say it in plain characters");
    }

    /** Gives the job free for other writers. */
    @Override
    public void close() {
        stopped = stopped.or(
                () -> Optional.of(Problem.inFile("NOT KEPT", path.toString(), "the job was closed", "open it again")));
        closeQuietly(file);
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
