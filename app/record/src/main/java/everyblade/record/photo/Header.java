package everyblade.record.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What the header of a picture says, read without decoding anything.
 *
 * @param type {@code jpeg} or {@code png}
 * @param width pixels
 * @param height pixels
 * @param scans how often the picture is gone over; 1 for PNG
 * @param whole whether the end is there, and what stands before it is told apart soundly
 */
record Header(String type, int width, int height, int scans, boolean whole) {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] FIRST_CHUNK = "IHDR".getBytes(StandardCharsets.US_ASCII);

    private static final int MARKER = 0xff;
    private static final int START_OF_IMAGE = 0xd8;
    private static final int END_OF_IMAGE = 0xd9;
    private static final int START_OF_SCAN = 0xda;

    /** Of these bytes; empty if they are neither JPEG nor PNG, or end before saying how large the picture is. */
    static Optional<Header> of(byte[] bytes) {
        if (bytes.length > 24 && Arrays.equals(bytes, 0, PNG.length, PNG, 0, PNG.length)) {
            boolean begins = Arrays.equals(bytes, 12, 16, FIRST_CHUNK, 0, FIRST_CHUNK.length);
            return positive(new Header("png", word(bytes, 16), word(bytes, 20), 1, isWholePng(bytes)))
                    .filter(header -> begins);
        }
        boolean isJpeg = bytes.length > 4 && at(bytes, 0) == MARKER && at(bytes, 1) == START_OF_IMAGE;
        return isJpeg ? jpeg(bytes) : Optional.empty();
    }

    private static Optional<Header> jpeg(byte[] bytes) {
        int width = 0;
        int height = 0;
        int scans = 0;
        boolean ended = false;
        int i = 2;
        while (i + 1 < bytes.length) {
            if (at(bytes, i) != MARKER || at(bytes, i + 1) == 0 || at(bytes, i + 1) == MARKER) {
                i++; // within the data of a scan, or fill bytes
                continue;
            }
            int marker = at(bytes, i + 1);
            if (marker == END_OF_IMAGE) {
                ended = true;
                break;
            }
            if (i + 3 >= bytes.length) {
                break;
            }
            if (marker == START_OF_SCAN) {
                scans++;
            }
            if (isFrame(marker) && i + 8 < bytes.length && width == 0) {
                height = half(bytes, i + 5);
                width = half(bytes, i + 7);
            }
            boolean alone = marker == 1 || marker >= 0xd0 && marker <= START_OF_IMAGE;
            i += alone ? 2 : 2 + Math.max(2, half(bytes, i + 2));
        }
        return scans == 0 ? Optional.empty() : positive(new Header("jpeg", width, height, scans, ended));
    }

    /** Chunk by chunk to the last one (PNG, third edition, section 5.3), each with the check sum that it carries. */
    private static boolean isWholePng(byte[] bytes) {
        long i = PNG.length;
        while (i + 12 <= bytes.length) {
            int at = (int) i;
            long length = word(bytes, at) & 0xffffffffL;
            if (length > bytes.length - i - 12) {
                return false;
            }
            CRC32 sum = new CRC32();
            sum.update(bytes, at + 4, (int) length + 4);
            if ((int) sum.getValue() != word(bytes, at + 8 + (int) length)) {
                return false;
            }
            if (new String(bytes, at + 4, 4, StandardCharsets.US_ASCII).equals("IEND")) {
                return true;
            }
            i += 12 + length;
        }
        return false;
    }

    private static Optional<Header> positive(Header header) {
        return Optional.of(header).filter(known -> known.width > 0 && known.height > 0);
    }

    /** Start of frame: SOF0 to SOF15 without the three codes that mean tables. */
    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private static int at(byte[] bytes, int i) {
        return bytes[i] & 0xff;
    }

    private static int half(byte[] bytes, int i) {
        return at(bytes, i) << 8 | at(bytes, i + 1);
    }

    private static int word(byte[] bytes, int i) {
        return half(bytes, i) << 16 | half(bytes, i + 2);
    }
}
