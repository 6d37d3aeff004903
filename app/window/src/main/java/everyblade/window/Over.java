package everyblade.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.SwingUtilities;

/** Something that comes and goes over a screen, above a part of it, so that nothing of the screen moves for it. */
final class Over extends JLayeredPane {

    private static final long serialVersionUID = 1;

    private final Component screen;
    private final JComponent comes;
    private final transient Supplier<Component> foot;
    private final transient IntSupplier gap;
    private final boolean across;

    /**
     * Nothing is over the screen until what comes is made visible.
     *
     * @param foot the part of the screen above which it comes
     * @param gap how far above it, units
     * @param across whether it is as wide as that part; else no wider than it needs to be
     */
    Over(Component screen, JComponent comes, Supplier<Component> foot, IntSupplier gap, boolean across) {
        this.screen = screen;
        this.comes = comes;
        this.foot = foot;
        this.gap = gap;
        this.across = across;
        comes.putClientProperty(
                "FlatLaf.style", "background: @componentBackground; border: 4,8,4,8,$Component.borderColor,,8");
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
    private void place() {
        Component on = foot.get();
        Point corner = SwingUtilities.convertPoint(on.getParent(), on.getLocation(), this);
        int wide = across ? on.getWidth() : Math.min(on.getWidth(), comes.getPreferredSize().width);
        comes.setSize(wide, Short.MAX_VALUE);
        comes.doLayout();
        int high = Math.min(corner.y, comes.getPreferredSize().height);
        comes.setBounds(corner.x, corner.y - gap.getAsInt() - high, wide, high);
        comes.validate();
    }
}
