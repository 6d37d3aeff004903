package everyblade.window.author;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * How the files of a model's folder looked at one moment: two stamps of the same files are equal as long as nobody saved any
 * of them. A file that an editor put in the place of another by renaming is another one.
 *
 * @param there whether there was such a folder
 * @param files by their paths in the folder
 */
public record Stamp(boolean there, Map<String, File> files) {

    public Stamp {
        files = Map.copyOf(files);
    }

    /**
     * One file.
     *
     * @param bytes how long it is; less than 0 if it is not there or may not be read
     * @param key what the system tells it from others by; empty if it does not say
     */
    record File(long bytes, FileTime changed, String key) {

        static final File NONE = new File(-1, FileTime.fromMillis(0), "");
    }

    /** The stamp of some files of a folder. */
    static Stamp of(Path folder, Set<String> names) {
        Map<String, File> files = new TreeMap<>();
        names.forEach(name -> files.put(name, file(folder.resolve(name))));
        return new Stamp(Files.isDirectory(folder), files);
    }

    private static File file(Path path) {
        try {
            BasicFileAttributes about = Files.readAttributes(path, BasicFileAttributes.class);
            return new File(about.size(), about.lastModifiedTime(), String.valueOf(about.fileKey()));
        } catch (IOException gone) {
            return File.NONE;
        }
    }

    /** With other files of the same folder. */
    Stamp with(Stamp other) {
        Map<String, File> both = new TreeMap<>(files);
        both.putAll(other.files);
        return new Stamp(there && other.there, both);
    }

    /** Of which files it is. */
    public Set<String> names() {
        return files.keySet();
    }
}
