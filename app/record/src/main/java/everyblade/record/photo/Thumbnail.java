package everyblade.record.photo;

import everyblade.fact.Fact;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** A small copy of a picture, upright; only every so many pixels are ever held, so a large one costs no more memory. */
public final class Thumbnail {

    private Thumbnail() {}

    /**
     * A copy that fits into a square.
     *
     * @param most side of the square, pixels
     * @param orientation of the picture as it is stored, 1 to 8 as in EXIF
     * @return empty if the bytes cannot be shown as a picture
     */
    public static Optional<BufferedImage> of(byte[] bytes, int most, int orientation) {
        return decoded(bytes, most, orientation).map(Decoded::image);
    }

    /**
     * A copy, and what is wrong with the picture.
     *
     * @param image the copy; what could not be decoded is grey or black in it
     * @param damage as the end of a sentence; empty if all of it could be decoded
     */
    public record Decoded(BufferedImage image, Optional<Fact> damage) {}

    /** The same as {@link #of}, with what is wrong with the picture. */
    public static Optional<Decoded> decoded(byte[] bytes, int most, int orientation) {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            ImageReader reader = readers.next();
            try {
                List<String> warnings = new ArrayList<>();
                reader.setInput(in, true, true);
                reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
                int longer = Math.max(reader.getWidth(0), reader.getHeight(0));
                ImageReadParam param = reader.getDefaultReadParam();
                int step = Math.max(1, longer / most / 2);
                param.setSourceSubsampling(step, step, 0, 0);
                BufferedImage small = upright(reader.read(0, param), most, orientation);
                return Optional.of(new Decoded(small, damage(bytes, warnings)));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException notShown) {
            // Readers answer damaged pictures with whatever exception comes first.
            return Optional.empty();
        }
    }

    private static Optional<Fact> damage(byte[] bytes, List<String> warnings) {
        if (!Header.of(bytes).map(Header::whole).orElse(false)) {
            return Optional.of(PictureFlaw.Whole.CUT_OFF);
        }
        return warnings.stream().anyMatch(Thumbnail::tellsOfPixels)
                ? Optional.of(PictureFlaw.Whole.ELEMENTS_LOST)
                : Optional.empty();
    }

    /** What the reader of JPEG says of the data itself; a few bytes too many between its parts change no picture element. */
    private static boolean tellsOfPixels(String warning) {
        return (warning.contains("Corrupt JPEG data") && !warning.contains("extraneous"))
                || warning.contains("Premature");
    }

    private static BufferedImage upright(BufferedImage stored, int most, int orientation) {
        boolean lying = orientation >= 5;
        int width = lying ? stored.getHeight() : stored.getWidth();
        int height = lying ? stored.getWidth() : stored.getHeight();
        double scale = Math.min(1, (double) most / Math.max(width, height));
        BufferedImage small = new BufferedImage(
                (int) Math.max(1, Math.round(width * scale)),
                (int) Math.max(1, Math.round(height * scale)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.scale((double) small.getWidth() / width, (double) small.getHeight() / height);
        graphics.drawImage(stored, turned(stored.getWidth(), stored.getHeight(), orientation), null);
        graphics.dispose();
        return small;
    }

    /** From the stored picture to the upright one (EXIF 2.32, tag 0x0112: where row 0 and column 0 are). */
    private static AffineTransform turned(double w, double h, int orientation) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }
}
