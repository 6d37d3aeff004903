package everyblade.window.map;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import javax.swing.JComponent;

/** A device of some scale, off any display, onto which components are painted at a place. */
record Screen(double scale, int left, int top, BufferedImage image) {

    static Screen of(JComponent component, double scale, int left, int top) {
        return new Screen(
                scale,
                left,
                top,
                new BufferedImage(
                        (int) Math.ceil((component.getWidth() + left) * scale),
                        (int) Math.ceil((component.getHeight() + top) * scale),
                        BufferedImage.TYPE_INT_RGB));
    }

    /** Paints a component as a window would, and gives every picture element. */
    int[] paint(JComponent component) {
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        g.translate(left, top);
        component.paint(g);
        g.dispose();
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** Where the middle of a picture element lies on the component, in its units. */
    double x(int column) {
        return (column + 0.5) / scale - left;
    }

    double y(int line) {
        return (line + 0.5) / scale - top;
    }

    /** How many picture elements of two paintings differ. */
    static long differing(int[] one, int[] other) {
        if (one.length != other.length) {
            throw new AssertionError("paintings of different sizes");
        }
        return IntStream.range(0, one.length).filter(i -> one[i] != other[i]).count();
    }
}
