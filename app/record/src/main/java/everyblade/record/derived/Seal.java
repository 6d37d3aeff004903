package everyblade.record.derived;

import everyblade.json.PlainFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Seals content so that only who has the key can have made it: HMAC-SHA-256 (RFC 2104) over the name that it is kept
 * under and the content. The key is 32 random bytes in a file that nobody else may read; one that others may read, or
 * that is of another length, is thrown away, and with it all that it sealed.
 */
final class Seal {

    /** Length of the seal before the content, bytes. */
    static final int LENGTH = 32;

    private static final String FILE = "seal.key";
    private static final int KEY_LENGTH = 32;
    private static final int LONGEST_KEY = 1 << 20;
    private static final Set<PosixFilePermission> OWNER =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    private final SecretKeySpec key;

    private Seal(byte[] key) {
        this.key = new SecretKeySpec(key, "HmacSHA256");
    }

    /** The seal of a folder, which makes its key when it is first asked. */
    static Seal in(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        Optional<byte[]> kept = kept(file);
        if (kept.isPresent()) {
            return new Seal(kept.get());
        }
        Files.deleteIfExists(file);
        byte[] made = new byte[KEY_LENGTH];
        new SecureRandom().nextBytes(made);
        OwnFile.write(file, made);
        return new Seal(made);
    }

    private static Optional<byte[]> kept(Path file) throws IOException {
        try {
            byte[] bytes = PlainFile.read(file, LONGEST_KEY);
            return bytes.length == KEY_LENGTH && isOnlyOurs(file) ? Optional.of(bytes) : Optional.empty();
        } catch (NoSuchFileException | PlainFile.NotPlain none) {
            return Optional.empty();
        }
    }

    private static boolean isOnlyOurs(Path file) throws IOException {
        return !OwnFile.hasPermissions(file)
                || OWNER.containsAll(Files.getPosixFilePermissions(file, LinkOption.NOFOLLOW_LINKS));
    }

    /** The seal of some content under its name. */
    byte[] of(String name, byte[] content) {
        return of(name, content, 0);
    }

    /** What stands behind its seal; empty if the seal is not this one's for that name and content. */
    Optional<byte[]> opened(String name, byte[] sealed) {
        boolean ours = sealed.length >= LENGTH
                && MessageDigest.isEqual(of(name, sealed, LENGTH), Arrays.copyOf(sealed, LENGTH));
        return ours ? Optional.of(Arrays.copyOfRange(sealed, LENGTH, sealed.length)) : Optional.empty();
    }

    private byte[] of(String name, byte[] bytes, int from) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            byte[] called = name.getBytes(StandardCharsets.UTF_8);
            mac.update((called.length + " ").getBytes(StandardCharsets.US_ASCII));
            mac.update(called);
            mac.update(bytes, from, bytes.length - from);
            return mac.doFinal();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java platform has HmacSHA256", impossible);
        }
    }
}
