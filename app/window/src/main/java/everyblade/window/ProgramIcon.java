package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The program's sign: a row of blades, all seen but the one that is looked for. */
final class ProgramIcon {

    private static final int[] SIZES = {16, 20, 24, 32, 40, 48, 64, 128, 256};
    /** As many as can still be told apart at the smallest size. */
    private static final int BLADES = 8;

    private static final double GAP_DEGREES = 13;

    private ProgramIcon() {}

    /** At all sizes that platforms ask for. */
    static List<Image> sizes() {
        List<Area> row = row();
        return IntStream.of(SIZES)
                .mapToObj(size -> drawn(size, row))
                .map(Image.class::cast)
                .toList();
    }

    /** At a size in pixels. */
    static BufferedImage drawn(int size) {
        return drawn(size, row());
    }

    private static BufferedImage drawn(int size, List<Area> row) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(size, size);
        graphics.setColor(Looks.colour(Theme.DARK, Ink.PAPER));
        graphics.fill(new RoundRectangle2D.Double(0, 0, 1, 1, 0.36, 0.36));
        for (int blade = 0; blade < BLADES; blade++) {
            Area shape = row.get(blade);
            boolean isMissed = blade == 1;
            Color seen = Looks.colour(Theme.DARK, Ink.SEEN);
            Color missed = Looks.colour(Theme.DARK, Ink.MAYBE);
            graphics.setColor(isMissed ? missed : seen);
            if (isMissed) {
                graphics.setStroke(new BasicStroke(0.05f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                graphics.draw(shape);
            } else {
                graphics.fill(shape);
            }
        }
        graphics.dispose();
        return image;
    }

    private static List<Area> row() {
        return IntStream.range(0, BLADES).mapToObj(ProgramIcon::blade).toList();
    }

    /** One blade of the row, which leans as blades do, from the hub to the casing. */
    private static Area blade(int number) {
        double pitch = 360.0 / BLADES;
        Area blade = new Area(new Arc2D.Double(
                0.07, 0.07, 0.86, 0.86, 90 - pitch / 2 + GAP_DEGREES / 2, pitch - GAP_DEGREES, Arc2D.PIE));
        blade.subtract(new Area(new Ellipse2D.Double(0.33, 0.33, 0.34, 0.34)));
        blade.transform(AffineTransform.getRotateInstance(Math.toRadians(number * pitch), 0.5, 0.5));
        return blade;
    }
}
