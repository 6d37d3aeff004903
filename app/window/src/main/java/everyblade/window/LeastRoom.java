package everyblade.window;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** As large as there is room, but never smaller than what is in it can bear: then it scrolls. */
final class LeastRoom extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1;
    private static final int STEP = 24;

    private final transient Supplier<Dimension> least;

    private LeastRoom(JComponent inside, Supplier<Dimension> least) {
        super(new BorderLayout());
        this.least = least;
        add(inside);
    }

    /**
     * Something with what is needed to scroll it.
     *
     * @param least width and height that it needs at the time, units of the window
     */
    static JScrollPane scrolled(JComponent inside, Supplier<Dimension> least) {
        JScrollPane scroll = new JScrollPane(new LeastRoom(inside, least));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    @Override
    public Dimension getPreferredSize() {
        return least.get();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return least.get();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent().getWidth() >= least.get().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent().getHeight() >= least.get().height;
    }
}
