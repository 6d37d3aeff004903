package everyblade.window;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JPanel;

/** Lines one below the other, as many as there is room for as a whole: what is last gives way, and none is cut through. */
final class WholeLines extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int LEAST = 3;

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

    /** The first lines. */
    @Override
    public Dimension getMinimumSize() {
        int lines = Math.min(LEAST, getComponentCount());
        return new Dimension(0, lines == 0 ? 0 : lines * getComponent(0).getPreferredSize().height);
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
