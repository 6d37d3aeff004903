package everyblade.desktop.command;

import everyblade.core.turning.Fold;
import everyblade.json.EngineJsonReader;
import everyblade.picture.MapWords;
import everyblade.record.JobFolder;
import everyblade.spi.EngineModel;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What tells this program from every other that might compute something else from the same record: the hash of the jars
 * that read, compute and tell. A version number would be the same for every build between two releases.
 */
final class ProgramMark {

    private static final List<Class<?>> WHAT_COMPUTES = List.of(
            EngineModel.class, EngineJsonReader.class, Fold.class, JobFolder.class, MapWords.class, ProgramMark.class);

    private ProgramMark() {}

    /** The name, length and checksum of each file in a jar: as good as all its bytes against any mistake, and soon read. */
    private static void update(MessageDigest digest, Path jar) throws IOException {
        try (ZipFile files = new ZipFile(jar.toFile())) {
            for (ZipEntry file : Collections.list(files.entries())) {
                String line = file.getName() + " " + file.getSize() + " " + file.getCrc() + "\n";
                digest.update(line.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** 64 hexadecimal digits; of a program that runs from no jars, a word. */
    static String of() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Class<?> one : WHAT_COMPUTES) {
                CodeSource source = one.getProtectionDomain().getCodeSource();
                Path jar = Path.of(source.getLocation().toURI());
                if (!Files.isRegularFile(jar)) {
                    return "not packaged";
                }
                update(digest, jar);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException | URISyntaxException | IOException unknown) {
            return "not packaged";
        }
    }
}
