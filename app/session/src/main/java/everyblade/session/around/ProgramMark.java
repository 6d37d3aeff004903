package everyblade.session.around;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * What tells this program from every other that might compute or tell something else from the same record: the hash of
 * its jars. A version number would be the same for every build between two releases.
 */
public final class ProgramMark {

    private static final String NOT_PACKAGED = "not packaged";

    private ProgramMark() {}

    /** 64 hexadecimal digits; of a program that runs from no jars, a word. */
    public static String of() {
        try {
            Path own = Path.of(ProgramMark.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (!Files.isRegularFile(own)) {
                return NOT_PACKAGED;
            }
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Path jar : ours(own.getParent())) {
                update(digest, jar);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException | URISyntaxException | IOException unknown) {
            return NOT_PACKAGED;
        }
    }

    /** The program's own jars in a folder, which hold all that reads, computes and tells. */
    private static List<Path> ours(Path lib) throws IOException {
        try (Stream<Path> files = Files.list(lib)) {
            return files.filter(file -> file.getFileName().toString().matches("everyblade-.*\\.jar"))
                    .sorted()
                    .toList();
        }
    }

    /** Name, length and checksum: as good as all bytes against any mistake, and soon made. */
    private static void update(MessageDigest digest, Path jar) throws IOException {
        byte[] bytes = Files.readAllBytes(jar);
        CRC32 checksum = new CRC32();
        checksum.update(bytes);
        String line = jar.getFileName() + " " + bytes.length + " " + checksum.getValue() + "\n";
        digest.update(line.getBytes(StandardCharsets.UTF_8));
    }
}
