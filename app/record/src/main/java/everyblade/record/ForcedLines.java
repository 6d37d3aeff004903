package everyblade.record;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The end of a file of lines, to which only its one writer adds: what is appended is safe on disk, and stays so.
 *
 * <p>Disks may write out of order what was not forced. So the newline of a line is written only when the line itself is
 * safe, together with the next line of the batch: a line with a newline is then always whole, and whatever a cut in
 * power leaves at the end has no newline. That costs one force more than there are lines.
 *
 * <p>After a failed write or force nobody knows what is on the disk. What was not acknowledged is then cut off, as well as
 * that can be done, and nothing more may be appended; opening the file again shows what is there.
 */
final class ForcedLines implements Closeable {

    private static final byte[] NEWLINE = {'\n'};

    /** A file that was replaced, removed or written to would swallow what we say is kept, and is not ours to cut. */
    private static final String CHANGED = "something else has changed or replaced the file";

    private final Disk disk;
    private final Path path;
    private final Disk.OpenFile file;
    private final Optional<String> setAside;
    private long length;

    private ForcedLines(Disk disk, Path path, Disk.OpenFile file, Optional<String> setAside, long length) {
        this.disk = disk;
        this.path = path;
        this.file = file;
        this.setAside = setAside;
        this.length = length;
    }

    /**
     * Opens a file that is there.
     *
     * @param length of its lines that are sound, newlines included; bytes
     * @param torn whether more stands behind them, which is set aside into a file beside it
     * @param longest that the file may be
     */
    static ForcedLines open(Disk disk, Path path, long length, boolean torn, long longest) throws IOException {
        Optional<String> setAside = torn ? Optional.of(setAside(disk, path, length, longest)) : Optional.empty();
        Disk.OpenFile file = disk.open(path);
        try {
            if (torn) {
                file.truncate(length);
            }
            if (length > 0) {
                // After a failed force a system may take unwritten bytes for written ones. Writing the last newline
                // again makes the end of the file, which is all that can be in doubt, go to the disk before anyone
                // builds on it.
                file.write(length - 1, NEWLINE);
            }
            file.force();
            return new ForcedLines(disk, path, file, setAside, length);
        } catch (IOException failure) {
            JournalWriter.closeQuietly(file);
            throw failure;
        }
    }

    private static String setAside(Disk disk, Path path, long sound, long longest) throws IOException {
        Path folder = path.getParent();
        int number = 1;
        while (disk.exists(folder.resolve(tornName(number)))) {
            number++;
        }
        try (InputStream lines = disk.read(path, longest);
                Disk.OpenFile torn = disk.create(folder.resolve(tornName(number)))) {
            lines.skipNBytes(sound);
            torn.write(0, lines.readAllBytes());
            torn.force();
        }
        disk.forceFolder(folder);
        return tornName(number);
    }

    private static String tornName(int number) {
        return "torn-" + number + ".txt";
    }

    /** The name of the file into which a torn end was set aside. */
    Optional<String> setAside() {
        return setAside;
    }

    /**
     * Appends these, given without newline, in this order.
     *
     * @return why not all are safe, as the end of a sentence, and then nothing more may be appended; empty if they are
     */
    Optional<String> append(List<byte[]> lines) {
        try {
            if (disk.size(path) != length) {
                return Optional.of(CHANGED);
            }
            long end = write(lines);
            if (disk.size(path) != end) {
                return Optional.of(CHANGED);
            }
            length = end;
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(Reasons.of(failure) + "; " + cutBack());
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

    /** All that was acknowledged is forced, so nothing is lost if this fails. */
    @Override
    public void close() {
        JournalWriter.closeQuietly(file);
    }
}
