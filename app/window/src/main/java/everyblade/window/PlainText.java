package everyblade.window;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * The door through which every component that Swing would let speak HTML gets its look: it is told to show its text as it
 * stands before it shows any. Names, notes and paths come from other people; as HTML, they could draw what they like and
 * fetch pictures from anywhere.
 */
public final class PlainText {

    /** Whatever Swing shows as HTML if its text begins so, in its own dialogs, lists and tool tips too. */
    private static final List<String> SPEAKING = List.of(
            "LabelUI",
            "ButtonUI",
            "ToggleButtonUI",
            "CheckBoxUI",
            "RadioButtonUI",
            "MenuUI",
            "MenuItemUI",
            "CheckBoxMenuItemUI",
            "RadioButtonMenuItemUI",
            "TabbedPaneUI",
            "ToolTipUI");

    private PlainText() {}

    /** Makes every component that is made from now on show its text as it stands. */
    static void install() {
        SPEAKING.forEach(id -> UIManager.put(id, PlainText.class.getName()));
    }

    /** What Swing asks for when a component gets its look. */
    public static ComponentUI createUI(JComponent component) {
        component.putClientProperty("html.disable", Boolean.TRUE);
        String id = component.getUIClassID();
        String look = String.valueOf(UIManager.getLookAndFeelDefaults().get(id));
        try {
            return (ComponentUI)
                    Class.forName(look).getMethod("createUI", JComponent.class).invoke(null, component);
        } catch (ClassNotFoundException
                | NoSuchMethodException
                | IllegalAccessException
                | InvocationTargetException no) {
            throw new IllegalStateException("the look has no " + id + " named " + look, no);
        }
    }
}
