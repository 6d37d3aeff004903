package everyblade.picture.paint;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;

/**
 * Paints scenes; one unit of the graphics it is given is a millimetre.
 *
 * @param theme colours of the inks
 * @param font one unit high
 */
public record ScenePainter(Theme theme, Font font) {

    /** The painter of a theme. */
    public static ScenePainter of(Theme theme) {
        return new ScenePainter(theme, SceneFont.font());
    }

    /** Paints the sheet and everything on it; leaves the graphics as they were. */
    public void paint(Scene scene, Graphics2D graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            smooth(g);
            g.setColor(colour(Ink.PAPER));
            g.fill(new Rectangle2D.Double(0, 0, scene.width(), scene.height()));
            scene.items().forEach(item -> ReadyItem.of(item, this).paint(g));
        } finally {
            g.dispose();
        }
    }

    /** Makes lines lie where the scene says, and edges smooth. */
    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    /** The colour of an ink. */
    public Color colour(Ink ink) {
        var colour = theme.colour(ink);
        return new Color(colour.red(), colour.green(), colour.blue());
    }
}
