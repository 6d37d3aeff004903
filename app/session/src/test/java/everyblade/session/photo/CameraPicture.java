package everyblade.session.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** A picture of 64 by 48 pixels as a camera might leave it: stored with its upper left quarter red, the rest black. */
public final class CameraPicture {

    private static final short ORIENTATION = 0x0112;
    private static final short CHANGED = 0x0132;
    private static final short TEXT = 2;
    private static final short SHORT = 3;

    private CameraPicture() {}

    /**
     * A JPEG picture with EXIF.
     *
     * @param orientation 1 to 8
     * @param taken such as {@code 2026:05:14 06:27:15}, UTC; empty if the camera wrote none
     */
    public static byte[] jpeg(int orientation, String taken) {
        byte[] plain = plain();
        byte[] exif = exif(orientation, taken);
        return ByteBuffer.allocate(plain.length + exif.length + 4)
                .put(plain, 0, 2)
                .put((byte) 0xff)
                .put((byte) 0xe1)
                .putShort((short) (exif.length + 2))
                .put(exif)
                .put(plain, 2, plain.length - 2)
                .array();
    }

    private static byte[] plain() {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, 32, 24);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpeg", bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    /** Exif 2.32, section 4.5: a TIFF header and the fields of the picture, big-endian. */
    private static byte[] exif(int orientation, String taken) {
        byte[] text = (taken + "\0").getBytes(StandardCharsets.US_ASCII);
        int fields = taken.isEmpty() ? 1 : 2;
        int texts = 8 + 2 + fields * 12 + 4;
        ByteBuffer exif = ByteBuffer.allocate(6 + texts + text.length);
        exif.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII))
                .putShort((short) 42)
                .putInt(8);
        exif.putShort((short) fields);
        exif.putShort(ORIENTATION)
                .putShort(SHORT)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        if (fields > 1) {
            exif.putShort(CHANGED).putShort(TEXT).putInt(text.length).putInt(texts);
        }
        return exif.putInt(0).put(text).array();
    }
}
