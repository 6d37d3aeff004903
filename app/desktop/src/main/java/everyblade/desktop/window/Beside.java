package everyblade.desktop.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What stands beside the map: the usual panels, or for a while one that needs all the room. */
final class Beside {

    private static final int WIDTH = 430;

    /** What may stand there. */
    enum Page {
        /** Where everything is, what is left, and the pages with the rest. */
        USUAL,
        CLOSING,
        FINDING
    }

    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final Map<Page, JComponent> pages = new EnumMap<>(Page.class);
    private Page page = Page.USUAL;

    Beside() {
        panel.setPreferredSize(new Dimension(UIScale.scale(WIDTH), 0));
    }

    /** Adds what is shown for a page. */
    void add(Page of, JComponent component) {
        pages.put(of, component);
        panel.add(component, of.name());
    }

    JComponent component() {
        return panel;
    }

    Page page() {
        return page;
    }

    void turn(Page to) {
        page = to;
        cards.show(panel, to.name());
    }
}
