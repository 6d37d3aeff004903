package everyblade.record;

import java.util.Arrays;

/** The bytes of a file as they were when the job started, and their SHA-256. */
public final class FrozenFile {

    private final byte[] bytes;
    private final String hash;

    private FrozenFile(byte[] bytes) {
        this.bytes = bytes;
        this.hash = Chain.sha256(bytes);
    }

    /** A file of these bytes. */
    public static FrozenFile of(byte[] bytes) {
        return new FrozenFile(bytes.clone());
    }

    /** A copy of the bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** SHA-256 of the bytes, 64 hexadecimal digits. */
    public String hash() {
        return hash;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FrozenFile file && Arrays.equals(bytes, file.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }
}
