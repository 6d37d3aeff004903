package everyblade.core.turning;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** Bytes that grow as numbers are written to their end. */
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

    /** Writes a number that is read by {@link #whole}: the nearer to 0, the fewer bytes. */
    void writeWhole(long value) {
        bits(value << 1 ^ value >> 63);
    }

    /** Writes a number that is read by {@link #real}: the fewer digits, the fewer bytes. */
    void writeReal(double value) {
        bits(Long.reverse(Double.doubleToLongBits(value)));
    }

    /** Seven bits a byte, the lowest first, until no more are set. */
    private void bits(long left) {
        ByteBuffer in = room(10);
        while ((left & -128L) != 0) {
            in.put((byte) (left | 128));
            left >>>= 7;
        }
        in.put((byte) left);
    }

    static long whole(ByteBuffer in) {
        long bits = bits(in);
        return bits >>> 1 ^ -(bits & 1);
    }

    static double real(ByteBuffer in) {
        return Double.longBitsToDouble(Long.reverse(bits(in)));
    }

    private static long bits(ByteBuffer in) {
        long bits = 0;
        for (int shift = 0; ; shift += 7) {
            byte next = in.get();
            bits |= (next & 127L) << shift;
            if (next >= 0) {
                return bits;
            }
        }
    }

    void write(byte[] values) {
        room(values.length).put(values);
    }

    /** All that was written. */
    byte[] all() {
        return Arrays.copyOf(buffer.array(), buffer.position());
    }
}
