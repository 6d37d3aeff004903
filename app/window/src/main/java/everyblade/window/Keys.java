package everyblade.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Binds keys to what they do. */
final class Keys {

    private Keys() {}

    /** While the component has the focus. */
    static void on(JComponent component, String key, Runnable action) {
        bind(component, JComponent.WHEN_FOCUSED, key, action);
    }

    /** While the component's window has the focus. */
    static void anywhere(JComponent component, String key, Runnable action) {
        bind(component, JComponent.WHEN_IN_FOCUSED_WINDOW, key, action);
    }

    /** While the component, or one in it, has the focus. */
    static void within(JComponent component, String key, Runnable action) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, action);
    }

    private static void bind(JComponent component, int when, String key, Runnable action) {
        component.getInputMap(when).put(KeyStroke.getKeyStroke(key), key);
        component.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }
}
