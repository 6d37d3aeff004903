package everyblade.window.author;

import everyblade.json.EngineJsonReader;
import everyblade.json.JsonTree;
import everyblade.json.PlainFile;
import everyblade.json.Problem;
import everyblade.json.Reading;
import everyblade.session.model.ModelFiles;
import everyblade.spi.EngineModel;
import everyblade.spi.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** The only file that is known to belong to the model before it was read. */
    public static Set<String> files() {
        return Set.of(EngineJsonReader.FILE);
    }

    /** How these of its files look now. */
    public Stamp stamp(Set<String> names) {
        return Stamp.of(path, names);
    }

    /**
     * Reads it, without what only the surfaces show to be wrong.
     *
     * @param names of the files that count as its own if the text does not tell
     */
    public Attempt read(Set<String> names, Instant now) {
        Path file = path.resolve(EngineJsonReader.FILE);
        Stamp before = stamp(files());
        byte[] text = text(file);
        ModelFiles files = new ModelFiles(file.toString(), text, path);
        Reading reading = text.length == 0 ? EngineJsonReader.read(file) : EngineJsonReader.read(file.toString(), text);
        if (reading instanceof Reading.Read read) {
            Stamp meshes = stamp(meshes(read.model()));
            ReadModel model = new ReadModel(read.model(), files.meshes(read.model()), now, true);
            return new Attempt(now, before.with(meshes), files, read.warnings(), Optional.of(model));
        }
        List<Problem> problems = ((Reading.Unreadable) reading).problems();
        return new Attempt(now, stamp(names).with(before), files, problems, Optional.empty());
    }

    private static Set<String> meshes(EngineModel model) {
        return model.rows().stream()
                .map(row -> row.shape().orElse(null))
                .filter(Shape.Mesh.class::isInstance)
                .map(shape -> ((Shape.Mesh) shape).file())
                .collect(Collectors.toSet());
    }

    /** Nothing if it cannot be read; why, its reader says. */
    private static byte[] text(Path file) {
        try {
            return PlainFile.read(file, JsonTree.LARGEST + 1L);
        } catch (IOException unreadable) {
            return new byte[0];
        }
    }
}
