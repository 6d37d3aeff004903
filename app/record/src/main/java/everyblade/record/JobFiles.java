package everyblade.record;

import everyblade.json.PlainFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/**
 * The files of a job. A job may have been received, so they are reached through folders of its own only, and read only if
 * they are plain files no longer than such files are: nothing leads out of the job, and nothing never ends.
 *
 * @param root the job's folder
 */
record JobFiles(Disk disk, Path root) {

    /** Largest engine model, bytes; the same as its reader takes. */
    static final long LARGEST_MODEL = 64L << 20;

    /** Largest file of a shape, bytes. */
    static final long LARGEST_MESH = 256L << 20;

    /** Largest file of what a drill is, bytes. */
    static final long LARGEST_DRILL = 16L << 20;

    /** Largest limits, bytes. */
    static final long LARGEST_LIMITS = 16L << 20;

    /**
     * Where a file is.
     *
     * @param name relative to the job, with / between folders
     * @throws PlainFile.NotPlain if a folder on the way is none of the job's own
     */
    Path place(String name) throws IOException {
        Path folder = root;
        String[] names = name.split("/");
        for (int i = 0; i < names.length - 1; i++) {
            folder = folder.resolve(names[i]);
            disk.requireFolder(folder);
        }
        return folder.resolve(names[names.length - 1]);
    }

    /** All bytes of a file. */
    byte[] read(String name, long longest) throws IOException {
        try (InputStream in = open(name, longest)) {
            return in.readAllBytes();
        }
    }

    /** Opens a file to be read from its beginning. */
    InputStream open(String name, long longest) throws IOException {
        return disk.read(place(name), longest);
    }
}
