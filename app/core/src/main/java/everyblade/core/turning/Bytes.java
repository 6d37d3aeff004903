package everyblade.core.turning;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** Bytes that grow as numbers are written to their end, the largest byte of each first. */
final class Bytes {

    private ByteBuffer buffer = ByteBuffer.allocate(64);

    private ByteBuffer room(int more) {
        if (buffer.remaining() < more) {
            int needed = Math.addExact(buffer.position(), more);
            buffer = ByteBuffer.allocate(Math.max(needed, (int) Math.min(Integer.MAX_VALUE - 8L, 2L * needed)))
                    .put(all());
        }
        return buffer;
    }

    void writeByte(int value) {
        room(Byte.BYTES).put((byte) value);
    }

    void writeInt(int value) {
        room(Integer.BYTES).putInt(value);
    }

    void writeLong(long value) {
        room(Long.BYTES).putLong(value);
    }

    void writeDouble(double value) {
        room(Double.BYTES).putDouble(value);
    }

    void write(byte[] values) {
        room(values.length).put(values);
    }

    /** All that was written. */
    byte[] all() {
        return Arrays.copyOf(buffer.array(), buffer.position());
    }
}
