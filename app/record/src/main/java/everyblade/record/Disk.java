package everyblade.record;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * What the record needs from a file system, and no more. What was written is only surely there after {@code force} of
 * the file, and a name only after {@code forceFolder} of the folder that it stands in.
 */
public interface Disk {

    /** Whether a file or folder of this name is there. */
    boolean exists(Path path);

    /** The names in a folder, sorted. */
    List<String> list(Path folder) throws IOException;

    /** Fails if there is no folder of this name, or only a link to one. */
    void requireFolder(Path folder) throws IOException;

    /**
     * Opens a plain file to be read from its beginning: no link, no pipe, and nothing that is longer.
     *
     * @param longest in bytes
     */
    InputStream read(Path file, long longest) throws IOException;

    /** Length of a file in bytes, asked by its name. */
    long size(Path file) throws IOException;

    /** Makes a folder whose parent is there; fails if the name is taken. */
    void createFolder(Path folder) throws IOException;

    /**
     * Gives a file or folder another name beside it, in one step. A file of that name is replaced; of a folder, callers see
     * to it that the name is free.
     */
    void rename(Path from, Path to) throws IOException;

    /** Removes a file or an empty folder. */
    void delete(Path path) throws IOException;

    /** Returns when the names in a folder are safe; does nothing where the operating system has no such thing. */
    void forceFolder(Path folder) throws IOException;

    /** Makes a new file and opens it; fails if the name is taken. */
    OpenFile create(Path file) throws IOException;

    /** Makes a new file that the same people may read and write as another one, and opens it; fails if that cannot be. */
    OpenFile createLike(Path file, Path other) throws IOException;

    /** Opens a plain file that is there; no link. */
    OpenFile open(Path file) throws IOException;

    /**
     * Takes the operating system's lock on a plain file, which is made if missing, or says who has it. The lock is freed by
     * closing it and by the death of the process.
     *
     * @param holder who asks, in words that are left in the file for others to read
     */
    LockAnswer lock(Path file, String holder) throws IOException;

    /** A file open for writing. */
    interface OpenFile extends Closeable {

        /** Writes all bytes at this position, or fails having written any number of the first of them. */
        void write(long position, byte[] bytes) throws IOException;

        /** Cuts the file off at this length. */
        void truncate(long length) throws IOException;

        /** Returns when all that was written is safe; after a failure it is unknown what is. */
        void force() throws IOException;
    }

    /** What came of asking for the lock. */
    sealed interface LockAnswer {}

    /** The lock is ours until closed. */
    non-sealed interface Lock extends LockAnswer, Closeable {}

    /**
     * Somebody else has the lock.
     *
     * @param holder the words that they left; empty if they left none yet
     */
    record Held(String holder) implements LockAnswer {}
}
