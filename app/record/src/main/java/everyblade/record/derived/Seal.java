package everyblade.record.derived;

import everyblade.json.PlainFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Seals content so that only who has the key can have made it: HMAC-SHA-256 (RFC 2104) over the name that it is kept
 * under and the content. The key is 32 random bytes in a file that nobody else may read; one that others may read, or
 * that is of another length, is thrown away, and with it all that it sealed.
 *
 * <p>The HMAC is made of hashes here, since Java's own looks through every jar for whoever offers one, which takes longer
 * than all that is then read ({@code SealTest} holds the two together).
 */
final class Seal {

    /** Length of the seal before the content, bytes. */
    static final int LENGTH = 32;

    private static final String FILE = "seal.key";
    private static final int KEY_LENGTH = 32;
    private static final int LONGEST_KEY = 1 << 20;
    private static final Set<PosixFilePermission> OWNER =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    /** Length of a block of SHA-256, bytes, and what RFC 2104 has for the inner and the outer hash. */
    private static final int BLOCK = 64;

    private static final byte INNER = 0x36;
    private static final byte OUTER = 0x5c;

    private final byte[] key;

    private Seal(byte[] key) {
        this.key = key;
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
        byte[] called = name.getBytes(StandardCharsets.UTF_8);
        MessageDigest digest = begun(INNER);
        digest.update((called.length + " ").getBytes(StandardCharsets.US_ASCII));
        digest.update(called);
        digest.update(bytes, from, bytes.length - from);
        byte[] inner = digest.digest();
        return begun(OUTER).digest(inner);
    }

    /** A hash that begins with the key, padded to a block with zeros, and each byte of it told apart by this one. */
    private MessageDigest begun(byte pad) {
        try {
            byte[] block = Arrays.copyOf(key, BLOCK);
            for (int i = 0; i < BLOCK; i++) {
                block[i] ^= pad;
            }
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(block);
            return digest;
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
