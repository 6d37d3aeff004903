package everyblade.picture.sight;

import everyblade.picture.scene.Point;
import java.awt.image.BufferedImage;

/**
 * A piece of a tone for the legend.
 *
 * @param tone of it
 * @param corner upper left, mm on the sheet
 * @param width mm
 * @param height mm
 */
record ToneSample(Tone tone, Point corner, double width, double height) {

    /** From this light on the left to full light on the right. */
    private static final double LEAST = 0.25;

    /** Drawn on a sheet with so many picture elements to a millimetre. */
    void onto(BufferedImage image, int fineness) {
        int left = (int) Math.round(corner.x() * fineness);
        int top = (int) Math.round(corner.y() * fineness);
        int across = (int) Math.round(width * fineness);
        for (int y = 0; y < (int) Math.round(height * fineness); y++) {
            for (int x = 0; x < across; x++) {
                double light = LEAST + (1 - LEAST) * x / across;
                image.setRGB(left + x, top + y, tone.at(light, x, y));
            }
        }
    }
}
