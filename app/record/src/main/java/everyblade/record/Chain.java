package everyblade.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Every line ends with {@code ,"hash":"…"}} where the hash is SHA-256 over the hash of the line before (64 hexadecimal
 * digits; nothing for the first line) and the bytes of its own line up to there. So every byte of a line counts: those
 * before are hashed, and those of the ending can only be what they are.
 */
final class Chain {

    /** What stands in for the hash before the first line. */
    static final String START = "";

    private static final String BEFORE_HASH = ",\"hash\":\"";
    private static final String AFTER_HASH = "\"}";
    private static final int ENDING = BEFORE_HASH.length() + 64 + AFTER_HASH.length();

    private Chain() {}

    /**
     * A line's hash and its bytes, without newline.
     *
     * @param hash 64 hexadecimal digits
     */
    record Sealed(String hash, byte[] bytes) {}

    /** Seals a JSON object, which has at least one member and ends with its brace. */
    static Sealed seal(String previous, String object) {
        String body = object.substring(0, object.length() - 1);
        String hash = hash(previous, body.getBytes(StandardCharsets.UTF_8));
        return new Sealed(hash, (body + BEFORE_HASH + hash + AFTER_HASH).getBytes(StandardCharsets.UTF_8));
    }

    /** The hash of a line, given without newline; empty if the line is not the one that was sealed after this hash. */
    static Optional<String> check(String previous, byte[] line) {
        if (line.length < ENDING) {
            return Optional.empty();
        }
        int bodyLength = line.length - ENDING;
        String hash = hash(previous, Arrays.copyOf(line, bodyLength));
        byte[] ending = (BEFORE_HASH + hash + AFTER_HASH).getBytes(StandardCharsets.UTF_8);
        return Arrays.equals(line, bodyLength, line.length, ending, 0, ENDING) ? Optional.of(hash) : Optional.empty();
    }

    /** SHA-256, 64 hexadecimal digits. */
    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    private static String hash(String previous, byte[] body) {
        MessageDigest digest = digest();
        digest.update(previous.getBytes(StandardCharsets.US_ASCII));
        return HexFormat.of().formatHex(digest.digest(body));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("every Java platform has SHA-256", impossible);
        }
    }
}
