package everyblade.window;

import java.awt.LayoutManager;
import javax.swing.JPanel;

/** A part of the screen that belongs together, set off from the others by its ground and a line round it. */
final class Card extends JPanel {

    private static final long serialVersionUID = 1;

    Card(LayoutManager layout) {
        super(layout);
        putClientProperty(
                "FlatLaf.style", "arc: 8; background: @componentBackground; border: 1,1,1,1,$Component.borderColor,,8");
    }
}
