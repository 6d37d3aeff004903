package everyblade.desktop.window;

import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;

/** Small things that all texts of the window share. */
final class Texts {

    private Texts() {}

    /** Names a component for those who do not see it. */
    static void name(JComponent component, String name) {
        AccessibleContext context = component.getAccessibleContext();
        if (context != null) {
            context.setAccessibleName(name);
        }
    }

    /** Makes the letters of a component bold and so many times as large as usual, whatever that is at the time. */
    static <T extends JComponent> T bold(T component, float larger) {
        component.putClientProperty("FlatLaf.style", "font: bold " + Math.round(larger * 100) + "%");
        return component;
    }
}
