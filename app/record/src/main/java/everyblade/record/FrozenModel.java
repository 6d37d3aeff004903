package everyblade.record;

import java.util.Arrays;

/** The bytes of {@code engine.json} as they were when the job started, and their SHA-256. */
public final class FrozenModel {

    private final byte[] bytes;
    private final String hash;

    private FrozenModel(byte[] bytes) {
        this.bytes = bytes;
        this.hash = Chain.sha256(bytes);
    }

    /** A model of these bytes. */
    public static FrozenModel of(byte[] engineJson) {
        return new FrozenModel(engineJson.clone());
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
        return other instanceof FrozenModel model && Arrays.equals(bytes, model.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }
}
