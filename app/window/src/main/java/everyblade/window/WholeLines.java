package everyblade.window;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JPanel;

/** Lines one below the other, as many as there is room for as a whole: what is last gives way, and none is cut through. */
final class WholeLines extends JPanel {

    private static final long serialVersionUID = 1;

    WholeLines() {
        super(null);
        setOpaque(false);
    }

    @Override
    public Dimension getPreferredSize() {
        int height = 0;
        for (Component line : getComponents()) {
            height += line.getPreferredSize().height;
        }
        return new Dimension(0, height);
    }

    /** The first line. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getComponentCount() == 0 ? 0 : getComponent(0).getPreferredSize().height);
    }

    @Override
    public void doLayout() {
        int y = 0;
        for (Component line : getComponents()) {
            int height = line.getPreferredSize().height;
            line.setVisible(y + height <= getHeight());
            line.setBounds(0, y, getWidth(), height);
            y += height;
        }
    }
}
