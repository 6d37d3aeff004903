package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.view.Choices;
import everyblade.window.view.RotorPose;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.function.Supplier;

/** The row in view as a wheel, airfoil 1 marked, and the scope tip where it looks at it; seen like the map. */
final class RotorDial extends Painted {

    private static final long serialVersionUID = 1;
    private static final int SIZE = 132;

    private final transient Supplier<Choices> choices;
    private transient Optional<RotorPose> pose = Optional.empty();

    RotorDial(Words words, Supplier<Choices> choices) {
        this.choices = choices;
        setPreferredSize(new Dimension(SIZE, SIZE));
        setName("dial");
        Texts.tip(this, words.say("review.dial"));
    }

    /** Shows this; nothing where it is not known. */
    void show(Optional<RotorPose> newPose) {
        if (!newPose.equals(pose)) {
            pose = newPose;
            repaint();
        }
    }

    Optional<RotorPose> pose() {
        return pose;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(getWidth() / 2.0, getHeight() / 2.0);
        double radius = Math.min(getWidth(), getHeight()) / 2.0 - 16;
        Theme theme = Looks.theme(choices.get());
        g.setColor(Looks.colour(theme, Ink.FAINT));
        g.draw(new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius));
        pose.ifPresent(shown -> paint(g, theme, shown, radius));
        g.dispose();
    }

    private void paint(Graphics2D g, Theme theme, RotorPose shown, double radius) {
        for (int n = 1; n <= shown.row().count(); n++) {
            g.setColor(Looks.colour(theme, n == 1 ? Ink.LINE : Ink.FAINT));
            g.setStroke(new BasicStroke(n == 1 ? 3 : 1));
            double clock = shown.clock(n);
            g.draw(new Line2D.Double(
                    x(clock, radius - (n == 1 ? 16 : 9)),
                    y(clock, radius - (n == 1 ? 16 : 9)),
                    x(clock, radius),
                    y(clock, radius)));
        }
        String one = "1";
        double clock = shown.clock(1);
        g.setColor(Looks.colour(theme, Ink.LINE));
        g.setFont(getFont());
        int wide = g.getFontMetrics().stringWidth(one);
        g.drawString(one, (float) (x(clock, radius - 25) - wide / 2.0), (float) (y(clock, radius - 25) + 5));
        String row = shown.row().id();
        g.drawString(row, -g.getFontMetrics().stringWidth(row) / 2f, 5);
        Path2D tip = new Path2D.Double();
        tip.moveTo(x(shown.tip(), radius + 2), y(shown.tip(), radius + 2));
        tip.lineTo(x(shown.tip() - 6, radius + 14), y(shown.tip() - 6, radius + 14));
        tip.lineTo(x(shown.tip() + 6, radius + 14), y(shown.tip() + 6, radius + 14));
        tip.closePath();
        g.fill(tip);
    }

    private double x(double clock, double radius) {
        double across = radius * Math.sin(Math.toRadians(clock));
        return choices.get().fromAhead() ? -across : across;
    }

    private static double y(double clock, double radius) {
        return -radius * Math.cos(Math.toRadians(clock));
    }
}
