package everyblade.record.drill;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Bytes that nobody reads without a key, and that nobody exchanges: AES-GCM with a key from words by PBKDF2, and beside it the
 * SHA-256 of salt and bytes, which they must still have when they are shown.
 *
 * <p>With an examiner's words this keeps the truth from everybody who has the folder only. Without, the words are empty: then it
 * keeps the truth from whoever opens the file in an editor, not from whoever takes this program apart. In both cases nobody can
 * change the truth afterwards.
 *
 * @param commitment SHA-256 of salt and bytes, hexadecimal
 * @param salt 32 bytes; known from the beginning, for the key is made with it
 * @param box the enciphered bytes, hexadecimal
 */
public record Sealed(String commitment, String salt, String box) {

    private static final HexFormat HEX = HexFormat.of();
    private static final int SALT = 32;
    private static final int NONCE = 12;
    private static final int ROUNDS = 210_000;
    private static final int KEY_BITS = 256;
    private static final int TAG_BITS = 128;

    /** How many random bytes {@link #of} takes. */
    public static final int RANDOM = SALT + NONCE;

    /**
     * Seals bytes.
     *
     * @param words of the examiner; empty for none
     * @param random {@link #RANDOM} bytes that nobody knows
     */
    public static Sealed of(byte[] bytes, String words, byte[] random) {
        byte[] salt = Arrays.copyOf(random, SALT);
        byte[] nonce = Arrays.copyOfRange(random, SALT, RANDOM);
        try {
            Cipher cipher = cipher(Cipher.ENCRYPT_MODE, words, salt, nonce);
            byte[] box = cipher.doFinal(bytes);
            return new Sealed(commitment(salt, bytes), HEX.formatHex(salt), HEX.formatHex(nonce) + HEX.formatHex(box));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java has AES-GCM and PBKDF2", missing);
        }
    }

    /** The bytes; empty if the words are not those with which they were sealed, or what was sealed was changed. */
    public Optional<byte[]> open(String words) {
        try {
            byte[] whole = HEX.parseHex(box);
            byte[] salted = HEX.parseHex(salt);
            Cipher cipher = cipher(Cipher.DECRYPT_MODE, words, salted, Arrays.copyOf(whole, NONCE));
            byte[] bytes = cipher.doFinal(whole, NONCE, whole.length - NONCE);
            return isOf(bytes) ? Optional.of(bytes) : Optional.empty();
        } catch (AEADBadTagException | IllegalArgumentException otherwise) {
            return Optional.empty();
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java has AES-GCM and PBKDF2", missing);
        }
    }

    /** Whether these are the bytes that were sealed. */
    boolean isOf(byte[] bytes) {
        return commitment(HEX.parseHex(salt), bytes).equals(commitment);
    }

    private static Cipher cipher(int mode, String words, byte[] salt, byte[] nonce) throws GeneralSecurityException {
        byte[] key = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                .generateSecret(new PBEKeySpec(words.toCharArray(), salt, ROUNDS, KEY_BITS))
                .getEncoded();
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
        return cipher;
    }

    private static String commitment(byte[] salt, byte[] bytes) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update("everyblade drill\n".getBytes(StandardCharsets.US_ASCII));
            digest.update(salt);
            return HEX.formatHex(digest.digest(bytes));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
