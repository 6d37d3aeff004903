package everyblade.picture.paint;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Shape;
import everyblade.picture.scene.Shape.Text;
import everyblade.picture.scene.Style;
import everyblade.picture.scene.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Paints scenes; one unit of the graphics it is given is a millimetre.
 *
 * @param theme colours of the inks
 * @param font one unit high
 */
public record ScenePainter(Theme theme, Font font) {

    /** What a letter that the font lacks is replaced by. */
    private static final int UNKNOWN = '?';

    /** The painter of a theme. */
    public static ScenePainter of(Theme theme) {
        return new ScenePainter(theme, SceneFont.font());
    }

    /** Paints the sheet and everything on it; leaves the graphics as they were. */
    public void paint(Scene scene, Graphics2D graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setColor(colour(Ink.PAPER));
            g.fill(new Rectangle2D.Double(0, 0, scene.width(), scene.height()));
            scene.items().forEach(item -> paint(item, g));
        } finally {
            g.dispose();
        }
    }

    private void paint(Item item, Graphics2D g) {
        Shape shape = item.shape();
        if (shape instanceof Text text) {
            paint(text, item.style(), g);
        } else {
            Path2D outline = outline(shape);
            Style style = item.style();
            style.fill().ifPresent(ink -> {
                g.setColor(colour(ink));
                g.fill(outline);
            });
            style.line().ifPresent(ink -> {
                g.setColor(colour(ink));
                g.setStroke(new BasicStroke((float) style.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
                g.draw(outline);
            });
        }
    }

    private static Path2D outline(Shape shape) {
        if (shape instanceof Shape.Patch patch) {
            return Outlines.of(patch);
        } else if (shape instanceof Shape.Strokes strokes) {
            return Outlines.of(strokes.lines(), false);
        } else if (shape instanceof Shape.Polygon polygon) {
            return Outlines.of(List.of(polygon.corners()), true);
        } else {
            return Outlines.of((Shape.Dots) shape);
        }
    }

    private void paint(Text text, Style style, Graphics2D graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Font sized = font.deriveFont((float) text.size());
            g.translate(text.at().x(), text.at().y());
            g.rotate(Math.toRadians(text.angle()));
            g.setFont(sized);
            g.setColor(colour(style.fill().orElse(Ink.LINE)));
            g.drawString(shown(text.words()), (float) (-text.anchor().share() * text.length()), 0);
        } finally {
            g.dispose();
        }
    }

    private String shown(String words) {
        return words.codePoints()
                .map(letter -> font.canDisplay(letter) ? letter : UNKNOWN)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private Color colour(Ink ink) {
        var colour = theme.colour(ink);
        return new Color(colour.red(), colour.green(), colour.blue());
    }
}
