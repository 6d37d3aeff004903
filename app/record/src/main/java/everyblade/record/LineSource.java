package everyblade.record;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/** The lines of a file one by one, so that only one is held however many there are. */
final class LineSource {

    /** Bytes of the longest line: more than any that is written, whose text has 2,000 characters at most. */
    static final int LONGEST = 1 << 20;

    private final InputStream in;
    private byte[] buffer = new byte[1 << 16];
    private int start;
    private int end;

    LineSource(InputStream in) {
        this.in = in;
    }

    /**
     * The next line without its newline; empty if there is none, or only bytes without a newline.
     *
     * @throws Unreadable if it is longer than any line may be
     */
    Optional<byte[]> next() throws IOException, Unreadable {
        int seen = start;
        while (true) {
            for (int i = seen; i < end; i++) {
                if (buffer[i] == '\n') {
                    byte[] line = Arrays.copyOfRange(buffer, start, i);
                    start = i + 1;
                    return Optional.of(line);
                }
            }
            if (end - start > LONGEST) {
                throw new Unreadable(LineFlaw.Whole.TOO_LONG);
            }
            seen = end - start;
            makeRoom();
            int read = in.read(buffer, end, buffer.length - end);
            if (read < 0) {
                return Optional.empty();
            }
            end += read;
        }
    }

    private void makeRoom() {
        byte[] target = end - start > buffer.length / 2 ? new byte[buffer.length * 2] : buffer;
        System.arraycopy(buffer, start, target, 0, end - start);
        buffer = target;
        end -= start;
        start = 0;
    }

    /** How many bytes stand after the last newline, once there are no more lines. */
    int rest() {
        return end - start;
    }
}
