package everyblade.window;

import everyblade.core.finding.measure.PixelLine;
import everyblade.window.view.Framing;
import everyblade.window.view.Marks.Tool;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * How a measuring line looks in a picture: light on a dark edge, so that it shows on any metal; the known length broken, the
 * size in one stroke, each with its letter. Ends leave their very place free.
 */
enum MarkPainter {
    KNOWN(new Color(0x56b4e9), new float[] {7, 5}),
    SIZE(new Color(0xf0e442), null);

    /** Round what has the focus, and at the chosen end. */
    static final Color FOCUS = new Color(0xffffff);

    private static final Color EDGE = new Color(0x101418);
    private static final double FREE = 4;
    private static final double ARM = 12;

    private final Color colour;
    private final float[] dashes;

    MarkPainter(Color colour, float[] dashes) {
        this.colour = colour;
        this.dashes = dashes;
    }

    static MarkPainter of(Tool tool) {
        return tool == Tool.KNOWN ? KNOWN : SIZE;
    }

    /**
     * Paints a line.
     *
     * @param chosen the end that arrows move, 0 or 1; −1 for none
     */
    void paint(Graphics2D g, Framing frame, PixelLine line, int chosen, Words words) {
        double[] xs = {frame.across(line.x1()), frame.across(line.x2())};
        double[] ys = {frame.down(line.y1()), frame.down(line.y2())};
        double length = Math.hypot(xs[1] - xs[0], ys[1] - ys[0]);
        if (length > 2 * FREE) {
            double dx = (xs[1] - xs[0]) / length * FREE;
            double dy = (ys[1] - ys[0]) / length * FREE;
            stroke(g, new Line2D.Double(xs[0] + dx, ys[0] + dy, xs[1] - dx, ys[1] - dy), colour, dashes);
        }
        for (int end = 0; end < 2; end++) {
            stroke(g, cross(xs[end], ys[end]), end == chosen ? FOCUS : colour, null);
            if (end == chosen) {
                stroke(g, new Ellipse2D.Double(xs[end] - ARM, ys[end] - ARM, 2 * ARM, 2 * ARM), FOCUS, null);
            }
        }
        letter(g, words.say(this == KNOWN ? "picture.letterKnown" : "picture.letterSize"), xs[1] + ARM, ys[1] - ARM);
    }

    private static Shape cross(double x, double y) {
        Path2D cross = new Path2D.Double();
        for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            cross.moveTo(x + way[0] * FREE, y + way[1] * FREE);
            cross.lineTo(x + way[0] * ARM, y + way[1] * ARM);
        }
        return cross;
    }

    private static void stroke(Graphics2D g, Shape shape, Color colour, float[] dashes) {
        g.setColor(EDGE);
        g.setStroke(new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(colour);
        g.setStroke(new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
        g.draw(shape);
    }

    private void letter(Graphics2D g, String letter, double x, double y) {
        g.setColor(EDGE);
        for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            g.drawString(letter, (float) x + way[0], (float) y + way[1]);
        }
        g.setColor(colour);
        g.drawString(letter, (float) x, (float) y);
    }
}
