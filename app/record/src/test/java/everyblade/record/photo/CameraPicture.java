package everyblade.record.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/** Pictures as a camera might leave them: drawn here, with the EXIF that is asked for. */
public final class CameraPicture {

    private static final int ORIENTATION = 0x0112;
    private static final int CAMERA_FIELDS = 0x8769;
    private static final int TAKEN = 0x9003;
    private static final int DIFFERENCE = 0x9011;

    private CameraPicture() {}

    /** A picture of which the upper left quarter is of this colour, the rest of another that it determines. */
    public static BufferedImage drawn(int width, int height, int colour) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(new Color(~colour & 0xffffff));
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(new Color(colour & 0xffffff));
        graphics.fillRect(0, 0, width / 2, height / 2);
        graphics.dispose();
        return image;
    }

    /** Encoded as {@code jpeg} or {@code png}. */
    public static byte[] encoded(BufferedImage image, String type) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, type, bytes)) {
                throw new AssertionError("no writer for " + type);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    public static byte[] png(int colour) {
        return encoded(drawn(16, 12, colour), "png");
    }

    /**
     * A JPEG picture with EXIF.
     *
     * @param taken such as {@code 2026:05:14 06:27:15}; empty for none
     * @param difference from UTC such as {@code +02:00}; empty for none
     */
    public static byte[] jpeg(int orientation, String taken, String difference) {
        byte[] plain = encoded(drawn(64, 48, 0xc02020), "jpeg");
        Map<Integer, String> camera = new TreeMap<>();
        if (!taken.isEmpty()) {
            camera.put(TAKEN, taken);
        }
        if (!difference.isEmpty()) {
            camera.put(DIFFERENCE, difference);
        }
        byte[] exif = exif(orientation, camera);
        ByteBuffer jpeg = ByteBuffer.allocate(plain.length + exif.length + 4);
        jpeg.put(plain, 0, 2).put((byte) 0xff).put((byte) 0xe1).putShort((short) (exif.length + 2));
        return jpeg.put(exif).put(plain, 2, plain.length - 2).array();
    }

    /** Exif 2.32, section 4.5: a TIFF header, the fields of the picture, and those of the camera, big-endian. */
    private static byte[] exif(int orientation, Map<Integer, String> camera) {
        int first = 8;
        int second = first + 2 + 2 * 12 + 4;
        int texts = second + 2 + camera.size() * 12 + 4;
        ByteBuffer tiff = ByteBuffer.allocate(texts + 200);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(first);
        tiff.putShort((short) 2);
        tiff.putShort((short) ORIENTATION)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putShort((short) CAMERA_FIELDS).putShort((short) 4).putInt(1).putInt(second);
        tiff.putInt(0);
        tiff.putShort((short) camera.size());
        int next = texts;
        for (Map.Entry<Integer, String> field : camera.entrySet()) {
            byte[] text = (field.getValue() + "\0").getBytes(StandardCharsets.US_ASCII);
            tiff.putShort((short) (int) field.getKey())
                    .putShort((short) 2)
                    .putInt(text.length)
                    .putInt(next);
            System.arraycopy(text, 0, tiff.array(), next, text.length);
            next += text.length;
        }
        tiff.putInt(0);
        byte[] marked = new byte[6 + next];
        System.arraycopy("Exif".getBytes(StandardCharsets.US_ASCII), 0, marked, 0, 4);
        System.arraycopy(Arrays.copyOf(tiff.array(), next), 0, marked, 6, next);
        return marked;
    }
}
