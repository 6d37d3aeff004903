package everyblade.desktop.author;

import everyblade.json.EngineJsonReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How the files of a model's folder looked at one moment: two stamps are equal as long as nobody saved any of them. A file
 * that an editor put in the place of another by renaming is another one.
 *
 * @param there whether there was such a folder
 * @param files the {@code engine.json} and the mesh files, by their paths in the folder
 */
public record Stamp(boolean there, Map<String, File> files) {

    private static final int DEPTH = 3;
    private static final int MOST = 2000;

    public Stamp {
        files = Map.copyOf(files);
    }

    /**
     * One file.
     *
     * @param key what the system tells it from others by; empty if it does not say
     */
    record File(long bytes, FileTime changed, String key) {}

    /** The stamp of a folder; one that cannot be looked into counts as not there. */
    static Stamp of(Path folder) {
        Map<String, File> files = new TreeMap<>();
        try (Stream<Path> paths = Files.find(folder, DEPTH, (path, about) -> about.isRegularFile() && counts(path))) {
            for (Path path : paths.limit(MOST).toList()) {
                files.put(folder.relativize(path).toString(), file(path));
            }
            return new Stamp(Files.isDirectory(folder), files);
        } catch (IOException | UncheckedIOException gone) {
            return new Stamp(Files.isDirectory(folder), files);
        }
    }

    private static boolean counts(Path path) {
        String name = path.getFileName().toString();
        return name.equals(EngineJsonReader.FILE) || name.endsWith(".ply") || name.endsWith(".stl");
    }

    private static File file(Path path) throws IOException {
        BasicFileAttributes about = Files.readAttributes(path, BasicFileAttributes.class);
        return new File(about.size(), about.lastModifiedTime(), String.valueOf(about.fileKey()));
    }
}
