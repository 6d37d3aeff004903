package everyblade.json.jar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The hash by which a jar is known, FIPS 180-4. */
final class Sha256 {

    private Sha256() {}

    /** Of the bytes of a file, 64 hexadecimal digits in lower case. */
    static String of(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file);
                DigestInputStream in = new DigestInputStream(bytes, MessageDigest.getInstance("SHA-256"))) {
            byte[] buffer = new byte[1 << 16];
            while (in.read(buffer) >= 0) {
                // only its digest is wanted
            }
            return HexFormat.of().formatHex(in.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
