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

    /** As wide as the window; the text says how high it is once it has its width. */
    @Override
    public Dimension getPreferredSize() {
        Insets edges = getInsets();
        int room = across() - edges.left - edges.right - GAP - buttons.getPreferredSize().width;
        if (room > 0) {
            text.setSize(room, Short.MAX_VALUE);
        }
        return super.getPreferredSize();
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
