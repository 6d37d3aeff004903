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
 * power leaves at the end has no newline. That costs one force more than there are lines, so many lines at once are
 * written into a copy of the file, which takes its place when it is safe as a whole.
 *
 * <p>After a failed write or force nobody knows what is on the disk. What was not acknowledged is then cut off, as well as
 * that can be done, and nothing more may be appended; opening the file again shows what is there.
 */
final class ForcedLines implements Closeable {

    private static final byte[] NEWLINE = {'\n'};

    private static final int MANY = 200;

    /** Bytes that any disk copies in less time than it takes to force one line. */
    private static final long COPIED = 32 << 10;

    private static final int PIECE = 1 << 20;
    private static final String COPY = ".new";

    /** A file that was replaced, removed or written to would swallow what we say is kept, and is not ours to cut. */
    private static final WriteFlaw CHANGED = WriteFlaw.Whole.FILE_CHANGED;

    private final Disk disk;
    private final Path path;
    private Disk.OpenFile file;
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
        removeQuietly(disk, copyOf(path));
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
     * @return why not all are safe, and then nothing more may be appended; empty if they are
     */
    Optional<WriteFlaw> append(List<byte[]> lines) {
        try {
            if (disk.size(path) != length) {
                return Optional.of(CHANGED);
            }
            boolean many = lines.size() >= MANY && length <= COPIED * lines.size();
            long end = many ? writeMany(lines) : write(lines);
            if (disk.size(path) != end) {
                return Optional.of(CHANGED);
            }
            length = end;
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(new WriteFlaw.NotForced(DiskFailure.of(failure), cutBack()));
        }
    }

    private static Path copyOf(Path path) {
        return path.resolveSibling(path.getFileName() + COPY);
    }

    private static void removeQuietly(Disk disk, Path path) {
        try {
            if (disk.exists(path)) {
                disk.delete(path);
            }
        } catch (IOException staysBehind) {
            // It is in nobody's way: what it holds was never acknowledged, or stands in the file itself.
        }
    }

    /** Where there is no room for a copy, or it may not be made, line by line after all. */
    private long writeMany(List<byte[]> lines) throws IOException {
        Path place = copyOf(path);
        removeQuietly(disk, place);
        Optional<Disk.OpenFile> copy = Optional.empty();
        try {
            copy = Optional.of(disk.createLike(place, path));
            long end = copy(copy.get(), lines);
            copy.get().force();
            disk.rename(place, path);
            JournalWriter.closeQuietly(file);
            file = copy.get();
            disk.forceFolder(path.getParent());
            return end;
        } catch (IOException notCopied) {
            if (copy.filter(file::equals).isPresent()) {
                throw notCopied;
            }
            copy.ifPresent(JournalWriter::closeQuietly);
            removeQuietly(disk, place);
            return write(lines);
        }
    }

    /** Writes what is there and these lines behind it; gives the length. */
    private long copy(Disk.OpenFile to, List<byte[]> lines) throws IOException {
        long end = 0;
        try (InputStream from = disk.read(path, Long.MAX_VALUE)) {
            while (end < length) {
                byte[] piece = from.readNBytes((int) Math.min(PIECE, length - end));
                to.write(end, piece);
                end += piece.length;
            }
        }
        ByteArrayOutputStream piece = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            piece.writeBytes(line);
            piece.writeBytes(NEWLINE);
            if (piece.size() >= PIECE) {
                to.write(end, piece.toByteArray());
                end += piece.size();
                piece.reset();
            }
        }
        to.write(end, piece.toByteArray());
        return end + piece.size();
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
    private boolean cutBack() {
        try {
            file.truncate(length);
            file.force();
            return true;
        } catch (IOException alsoRefused) {
            return false;
        }
    }

    /** All that was acknowledged is forced, so nothing is lost if this fails. */
    @Override
    public void close() {
        JournalWriter.closeQuietly(file);
    }
}
