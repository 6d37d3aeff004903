package everyblade.session.model;

import everyblade.json.EngineJsonReader;
import everyblade.json.EngineJsonWriter;
import everyblade.json.Found;
import everyblade.json.PlainFile;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The files that an engine model was read from.
 *
 * @param name of its {@code engine.json}, for messages
 * @param text what stands in it; of a model that code handed over, what would
 * @param origin the jar, or the folder of the file
 */
public record ModelFiles(String name, byte[] text, Path origin) {

    private static final int LARGEST = 256 << 20;

    public static ModelFiles of(Found.Loaded loaded) {
        Path origin = loaded.origin();
        boolean folder = Files.isDirectory(origin);
        Path file = folder ? origin.resolve(EngineJsonReader.FILE) : origin;
        if (!file.toString().endsWith(".jar")) {
            return new ModelFiles(
                    file.toString(),
                    read(file.toAbsolutePath().getParent(), file.getFileName().toString())
                            .orElseGet(() -> new byte[0]),
                    file.resolveSibling(""));
        }
        return inJar(origin, EngineJsonReader.FILE)
                .map(text -> new ModelFiles(origin + "!/" + EngineJsonReader.FILE, text, origin))
                .orElseGet(() -> new ModelFiles(
                        origin + " as " + EngineJsonReader.FILE,
                        EngineJsonWriter.write(loaded.model()).getBytes(StandardCharsets.UTF_8),
                        origin));
    }

    /** The contents of the mesh files of a model, by name; those that are not there or too large are left out. */
    public Map<String, byte[]> meshes(EngineModel model) {
        Map<String, byte[]> meshes = new HashMap<>();
        for (Row row : model.rows()) {
            if (row.shape().orElse(null) instanceof Shape.Mesh mesh) {
                Optional<byte[]> content =
                        origin.toString().endsWith(".jar") ? inJar(origin, mesh.file()) : read(origin, mesh.file());
                content.ifPresent(bytes -> meshes.put(mesh.file(), bytes));
            }
        }
        return meshes;
    }

    private static Optional<byte[]> read(Path folder, String name) {
        try {
            return Optional.of(PlainFile.read(folder, name, LARGEST));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> inJar(Path jar, String name) {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry entry = zip.getEntry(name);
            if (entry == null || entry.isDirectory()) {
                return Optional.empty();
            }
            try (InputStream in = zip.getInputStream(entry)) {
                byte[] bytes = in.readNBytes(LARGEST + 1);
                return bytes.length > LARGEST ? Optional.empty() : Optional.of(bytes);
            }
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
