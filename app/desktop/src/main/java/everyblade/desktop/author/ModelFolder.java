package everyblade.desktop.author;

import everyblade.desktop.command.ModelFiles;
import everyblade.json.EngineJsonReader;
import everyblade.json.JsonTree;
import everyblade.json.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A folder in which an author writes an engine model. Whatever its files are, and whether it is there at all, reading it gives
 * an {@link Attempt}.
 *
 * @param path of the folder
 */
public record ModelFolder(Path path) {

    private static final String JOURNAL = "journal.jsonl";

    /** Whether a folder holds an engine model, and is no job, which holds a journal too. */
    public static boolean isOne(Path folder) {
        return Files.isRegularFile(folder.resolve(EngineJsonReader.FILE)) && !Files.exists(folder.resolve(JOURNAL));
    }

    /** How its files look now. */
    public Stamp stamp() {
        return Stamp.of(path);
    }

    /** Reads it, without what only the surfaces show to be wrong. */
    public Attempt read(Instant now) {
        Path file = path.resolve(EngineJsonReader.FILE);
        byte[] text = text(file);
        ModelFiles files = new ModelFiles(file.toString(), text, path);
        Reading reading = text.length == 0 ? EngineJsonReader.read(file) : EngineJsonReader.read(file.toString(), text);
        boolean there = Files.isDirectory(path);
        if (reading instanceof Reading.Read read) {
            ReadModel model = new ReadModel(read.model(), files.meshes(read.model()), now, true);
            return new Attempt(now, there, files, read.warnings(), Optional.of(model));
        }
        return new Attempt(now, there, files, ((Reading.Unreadable) reading).problems(), Optional.empty());
    }

    /** Nothing if it cannot be read; why, its reader says. */
    private static byte[] text(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(JsonTree.LARGEST + 1);
        } catch (IOException unreadable) {
            return new byte[0];
        }
    }
}
