package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.ImageIO;

/** The map as a PNG picture, fine enough to be read when enlarged. */
public final class MapPng {

    /** Picture elements to a millimetre: 203 to an inch. */
    private static final int FINENESS = 8;

    private MapPng() {}

    /** Of all rows, or of one, in the plain style. */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row) {
        return write(coverage, facts, row, MapStyle.PLAIN);
    }

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        Scene scene = MapScene.of(coverage, facts, row, style);
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scene.width() * FINENESS),
                (int) Math.ceil(scene.height() * FINENESS),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(FINENESS, FINENESS);
            ScenePainter.of(style.theme()).paint(scene, g);
        } finally {
            g.dispose();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }
}
