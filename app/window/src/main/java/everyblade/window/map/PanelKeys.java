package everyblade.window.map;

import everyblade.picture.MapStep;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keyboard of a panel that has the focus. */
final class PanelKeys {

    private static final double MOVE = 60;

    private PanelKeys() {}

    static void on(CellPanel panel) {
        bind(panel, "RIGHT", () -> panel.walk(MapStep.RIGHT));
        bind(panel, "LEFT", () -> panel.walk(MapStep.LEFT));
        bind(panel, "UP", () -> panel.walk(MapStep.UP));
        bind(panel, "DOWN", () -> panel.walk(MapStep.DOWN));
        bind(panel, "PAGE_UP", () -> panel.walk(MapStep.NEXT));
        bind(panel, "PAGE_DOWN", () -> panel.walk(MapStep.PREVIOUS));
        bind(panel, "ENTER", () -> panel.selected().ifPresent(panel::choose));
        bind(panel, "ESCAPE", () -> panel.select(null));
        bind(panel, "typed +", panel::zoomIn);
        bind(panel, "typed -", panel::zoomOut);
        bind(panel, "typed 0", panel::fit);
        bind(panel, "shift RIGHT", () -> panel.pan(-MOVE, 0));
        bind(panel, "shift LEFT", () -> panel.pan(MOVE, 0));
        bind(panel, "shift UP", () -> panel.pan(0, MOVE));
        bind(panel, "shift DOWN", () -> panel.pan(0, -MOVE));
        panel.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                panel.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                panel.repaint();
            }
        });
    }

    private static void bind(CellPanel panel, String key, Runnable does) {
        panel.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        panel.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }
}
