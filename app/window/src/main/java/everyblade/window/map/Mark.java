package everyblade.window.map;

import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Ink;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A frame round a cell wherever it is drawn; where it is small, a circle round it as well.
 *
 * @param shapes the cell, in units of the component
 * @param heavy whether the cell is selected, not only under the mouse
 */
record Mark(List<Shape> shapes, boolean heavy) {

    private static final double SMALL = 9;
    private static final double RADIUS = 9;

    /** All that it may touch; empty if there is nothing to mark. */
    List<Rectangle> bounds() {
        return shapes.stream()
                .map(shape -> {
                    Rectangle bounds = shape.getBounds();
                    bounds.grow((int) RADIUS + 4, (int) RADIUS + 4);
                    return bounds;
                })
                .toList();
    }

    void paint(Graphics2D graphics, ScenePainter painter) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            for (Shape shape : shapes) {
                frame(g, painter, shape);
                Rectangle2D bounds = shape.getBounds2D();
                if (heavy && Math.max(bounds.getWidth(), bounds.getHeight()) < SMALL) {
                    frame(
                            g,
                            painter,
                            new Ellipse2D.Double(
                                    bounds.getCenterX() - RADIUS,
                                    bounds.getCenterY() - RADIUS,
                                    2 * RADIUS,
                                    2 * RADIUS));
                }
            }
        } finally {
            g.dispose();
        }
    }

    /** Dark on light, or light on dark: it is seen over every ink. */
    private void frame(Graphics2D g, ScenePainter painter, Shape shape) {
        float width = heavy ? 2.2f : 1.2f;
        g.setStroke(new BasicStroke(width + 2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.setColor(painter.colour(Ink.PAPER));
        g.draw(shape);
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.setColor(painter.colour(heavy ? Ink.ALERT : Ink.LINE));
        g.draw(shape);
    }
}
