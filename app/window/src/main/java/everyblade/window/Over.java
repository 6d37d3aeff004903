package everyblade.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.SwingUtilities;

/** Something that comes and goes over a screen, right above a part of it, so that nothing of the screen moves for it. */
final class Over extends JLayeredPane {

    private static final long serialVersionUID = 1;
    private static final int GAP = 3;

    private final Component screen;
    private final JComponent comes;
    private final Component foot;

    /**
     * Nothing is over the screen until what comes is made visible.
     *
     * @param foot the part of the screen above which it comes, and as wide
     */
    Over(Component screen, JComponent comes, Component foot) {
        this.screen = screen;
        this.comes = comes;
        this.foot = foot;
        add(screen, DEFAULT_LAYER);
        add(comes, PALETTE_LAYER);
    }

    @Override
    public Dimension getPreferredSize() {
        return screen.getPreferredSize();
    }

    @Override
    public Dimension getMinimumSize() {
        return screen.getMinimumSize();
    }

    @Override
    public void doLayout() {
        screen.setBounds(0, 0, getWidth(), getHeight());
        if (!screen.isValid()) {
            screen.validate(); // else what is below has no place yet
        }
        place();
    }

    /** Puts what comes in its place, as high as its words need at that width. */
    void place() {
        Point corner = SwingUtilities.convertPoint(foot.getParent(), foot.getLocation(), this);
        comes.setSize(foot.getWidth(), Short.MAX_VALUE);
        comes.doLayout();
        int high = Math.min(corner.y, comes.getPreferredSize().height);
        comes.setBounds(corner.x, corner.y - GAP - high, foot.getWidth(), high);
        comes.validate();
    }
}
