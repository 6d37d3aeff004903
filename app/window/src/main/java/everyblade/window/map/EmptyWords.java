package everyblade.window.map;

import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Lettering;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;

/** What stands in the middle of a component that has nothing else to show. */
final class EmptyWords {

    private static final double SIZE = 16;
    private static final int LINES = 4;

    private EmptyWords() {}

    static void paint(Graphics2D graphics, ScenePainter painter, String words, int width, int height) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setFont(painter.font().deriveFont((float) SIZE));
            g.setColor(painter.colour(Ink.FAINT));
            List<String> lines = Lettering.wrapped(words, SIZE, 0.8 * width, LINES);
            double y = height / 2.0 - 0.65 * SIZE * (lines.size() - 2);
            for (String line : lines) {
                g.drawString(line, (float) ((width - Lettering.length(line, SIZE)) / 2), (float) y);
                y += 1.3 * SIZE;
            }
        } finally {
            g.dispose();
        }
    }
}
