package everyblade.picture.paint;

import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A scene as a PNG picture, fine enough to be read when enlarged. */
public final class ScenePng {

    /** Picture elements to a millimetre: 203 to an inch. */
    private static final int FINENESS = 8;

    private ScenePng() {}

    /** The picture; needs no display. */
    public static byte[] write(Scene scene, Theme theme) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scene.width() * FINENESS),
                (int) Math.ceil(scene.height() * FINENESS),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(FINENESS, FINENESS);
            ScenePainter.of(theme).paint(scene, g);
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
