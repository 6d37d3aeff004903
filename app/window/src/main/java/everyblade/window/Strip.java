package everyblade.window;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A strip across the window with text on it, and buttons at its end; as high as the text needs at this width. */
final class Strip extends JPanel {

    private static final long serialVersionUID = 1;

    private static final int GAP = 8;

    private final Paragraph text = new Paragraph();
    /** Lines that are shown at most; those beyond are cut as a whole. */
    private int most = Integer.MAX_VALUE;

    private final JPanel buttons = new JPanel(new MigLayout("insets 0, gap 4"));

    Strip() {
        super(new BorderLayout(GAP, 0));
        setBorder(BorderFactory.createEmptyBorder(3, 12, 3, 12));
        buttons.setOpaque(false);
        add(text, BorderLayout.CENTER);
        add(buttons, BorderLayout.EAST);
    }

    /** Shows this text in these colours, with these buttons. */
    void show(String said, Color ink, Color ground, List<? extends Component> pressed) {
        text.say(said);
        text.setForeground(ink);
        setBackground(ground);
        buttons.removeAll();
        pressed.forEach(buttons::add);
        setVisible(true);
        revalidate();
        repaint();
    }

    /** Shows at most so many lines of the text from now on. */
    void cut(int lines) {
        most = lines;
        revalidate();
    }

    /** How high it is with so many lines. */
    int height(int lines) {
        return getInsets().top + getInsets().bottom + lines * line();
    }

    private int line() {
        return text.getFontMetrics(text.getFont()).getHeight();
    }

    /** Whether there is more to its text than it shows where it is so wide. */
    boolean isCut(int width) {
        return whole(width) > shown(width);
    }

    private int shown(int width) {
        return (int) Math.min(whole(width), (long) most * line());
    }

    /** Height of all its text, which says how high it is once it has its width. */
    private int whole(int width) {
        Insets edges = getInsets();
        int room = width - edges.left - edges.right - GAP - buttons.getPreferredSize().width;
        if (room > 0) {
            text.setSize(room, Short.MAX_VALUE);
        }
        return text.getPreferredSize().height;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        text.setSize(text.getWidth(), Math.min(text.getHeight(), shown(getWidth())));
    }

    /** As wide as the window. */
    @Override
    public Dimension getPreferredSize() {
        Insets edges = getInsets();
        int shown = shown(across());
        Dimension all = super.getPreferredSize();
        return new Dimension(all.width, edges.top + edges.bottom + Math.max(shown, buttons.getPreferredSize().height));
    }

    private int across() {
        Container outermost = this;
        while (outermost.getParent() instanceof JComponent parent) {
            outermost = parent;
        }
        return outermost.getWidth();
    }

    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }
}
