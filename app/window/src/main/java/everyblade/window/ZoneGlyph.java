package everyblade.window;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;

/**
 * One airfoil's zones as small squares, tip above root, a group of columns for each side: those of a set are full, or half
 * full where they are only doubtful.
 */
record ZoneGlyph(Zoning zoning, ZoneSet zones, boolean doubtful, boolean rootAbove) implements Icon {

    private static final int SQUARE = 6;
    private static final int BETWEEN_SIDES = 3;

    private int spans() {
        return Math.max(1, zoning.spans().size());
    }

    private int sides() {
        return Math.max(1, zoning.sides().size());
    }

    private int chords() {
        return Math.max(1, zoning.chords().size());
    }

    private static int square() {
        return Looks.scaled(SQUARE);
    }

    @Override
    public int getIconWidth() {
        return sides() * chords() * square() + (sides() - 1) * BETWEEN_SIDES + 1;
    }

    @Override
    public int getIconHeight() {
        return spans() * square() + 1;
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int left, int top) {
        Graphics2D g = (Graphics2D) graphics.create(left, top, getIconWidth(), getIconHeight());
        g.setColor(on.getForeground());
        for (int zone = 0; zone < zoning.size(); zone++) {
            int side = zone / chords() % sides();
            int span = zone / chords() / sides();
            int x = (side * chords() + zone % chords()) * square() + side * BETWEEN_SIDES;
            int y = (rootAbove ? span : spans() - 1 - span) * square();
            g.drawRect(x, y, square(), square());
            if (zones.contains(zone) && doubtful) {
                g.fillPolygon(new int[] {x, x + square(), x}, new int[] {y, y + square(), y + square()}, 3);
            } else if (zones.contains(zone)) {
                g.fillRect(x, y, square(), square());
            }
        }
        g.dispose();
    }
}
