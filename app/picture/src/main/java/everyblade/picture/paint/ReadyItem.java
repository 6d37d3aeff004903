package everyblade.picture.paint;

import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Style;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** One item made ready to be painted again and again. */
sealed interface ReadyItem {

    /** Paints it; leaves colour, stroke and font of the graphics changed, nothing else. */
    void paint(Graphics2D g);

    /** All that it may touch, mm. */
    Rectangle2D bounds();

    /** An item in the colours and the font of a painter. */
    static ReadyItem of(Item item, ScenePainter painter) {
        if (item.shape() instanceof Text text) {
            return OutlinedWords.areNeeded(text.words(), painter.font())
                    ? ForeignWords.of(text, item.style(), painter)
                    : Words.of(text, item.style(), painter);
        }
        return Outlined.of(outline(item.shape()), item.style(), painter);
    }

    private static Path2D outline(DrawnShape shape) {
        if (shape instanceof DrawnShape.Patch patch) {
            return Outlines.of(patch);
        } else if (shape instanceof DrawnShape.Strokes strokes) {
            return Outlines.of(strokes.lines(), false);
        } else if (shape instanceof DrawnShape.Polygon polygon) {
            return Outlines.of(List.of(polygon.corners()), true);
        } else {
            return Outlines.of((DrawnShape.Dots) shape);
        }
    }

    /** A shape that is filled, outlined, or both; colours are null where it is not. */
    record Outlined(Path2D path, Color fill, Color line, BasicStroke stroke, Rectangle2D bounds) implements ReadyItem {

        /** How far a mitred corner may reach beyond half its line's width. */
        private static final double MITRE = 2;

        static Outlined of(Path2D path, Style style, ScenePainter painter) {
            Rectangle2D bounds = path.getBounds2D();
            double margin = style.line().isPresent() ? MITRE * style.width() : 0;
            bounds.setRect(
                    bounds.getX() - margin,
                    bounds.getY() - margin,
                    bounds.getWidth() + 2 * margin,
                    bounds.getHeight() + 2 * margin);
            return new Outlined(
                    path,
                    style.fill().map(painter::colour).orElse(null),
                    style.line().map(painter::colour).orElse(null),
                    style.line().isPresent()
                            ? new BasicStroke((float) style.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                            : null,
                    bounds);
        }

        @Override
        public void paint(Graphics2D g) {
            if (fill != null) {
                g.setColor(fill);
                g.fill(path);
            }
            if (line != null) {
                g.setColor(line);
                g.setStroke(stroke);
                g.draw(path);
            }
        }
    }

    /** A line of text in letters that the pictures' font lacks: joined and ordered as they are read, as an outline. */
    record ForeignWords(java.awt.Shape outline, Color colour, AffineTransform place, Rectangle2D bounds)
            implements ReadyItem {

        static ForeignWords of(Text text, Style style, ScenePainter painter) {
            AffineTransform place = AffineTransform.getTranslateInstance(
                    text.at().x(), text.at().y());
            place.rotate(Math.toRadians(text.angle()));
            OutlinedWords words = OutlinedWords.of(text.words(), painter.font().deriveFont((float) text.size()));
            place.translate(-text.anchor().share() * words.length(), 0);
            return new ForeignWords(
                    words.outline(),
                    painter.colour(style.fill().orElse(Ink.LINE)),
                    place,
                    place.createTransformedShape(words.outline()).getBounds2D());
        }

        @Override
        public void paint(Graphics2D g) {
            AffineTransform before = g.getTransform();
            g.transform(place);
            g.setColor(colour);
            g.fill(outline);
            g.setTransform(before);
        }
    }

    /** A line of text. */
    record Words(String words, Font font, Color colour, AffineTransform place, float start, Rectangle2D bounds)
            implements ReadyItem {

        /** What a letter that the font lacks is replaced by. */
        private static final int UNKNOWN = '?';

        static Words of(Text text, Style style, ScenePainter painter) {
            AffineTransform place = AffineTransform.getTranslateInstance(
                    text.at().x(), text.at().y());
            place.rotate(Math.toRadians(text.angle()));
            double start = -text.anchor().share() * text.length();
            double size = text.size();
            Rectangle2D box = new Rectangle2D.Double(start - size / 2, -size, text.length() + size, 1.5 * size);
            return new Words(
                    shown(text.words(), painter.font()),
                    painter.font().deriveFont((float) size),
                    painter.colour(style.fill().orElse(Ink.LINE)),
                    place,
                    (float) start,
                    place.createTransformedShape(box).getBounds2D());
        }

        @Override
        public void paint(Graphics2D g) {
            AffineTransform before = g.getTransform();
            g.transform(place);
            g.setFont(font);
            g.setColor(colour);
            g.drawString(words, start, 0);
            g.setTransform(before);
        }

        private static String shown(String words, Font font) {
            return words.codePoints()
                    .map(letter -> font.canDisplay(letter) ? letter : UNKNOWN)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }
}
