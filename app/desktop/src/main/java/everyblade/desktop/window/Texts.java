package everyblade.desktop.window;

import java.awt.Font;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** Labels of running text. */
final class Texts {

    private static final String TEXT = "everyblade.text";

    private Texts() {}

    /** A label that breaks its text into lines where it must, and where the text does. */
    static JLabel wrapping(String text) {
        JLabel label = new JLabel();
        wrap(label, text);
        return label;
    }

    /** Breaks another text; nothing happens if it is the same one, since laying out HTML is slow. */
    static void wrap(JLabel label, String text) {
        if (text.equals(label.getClientProperty(TEXT))) {
            return;
        }
        label.putClientProperty(TEXT, text);
        label.setText("<html>" + escaped(text).replace("\n", "<br>") + "</html>");
        label.getAccessibleContext().setAccessibleName(text);
    }

    /** Text for a label or list that reads HTML, so that an entry with {@code <} in it shows as it is. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Names a component for those who do not see it. */
    static void name(JComponent component, String name) {
        AccessibleContext context = component.getAccessibleContext();
        if (context != null) {
            context.setAccessibleName(name);
        }
    }

    static JLabel bold(JLabel label, float larger) {
        label.setFont(label.getFont().deriveFont(Font.BOLD, label.getFont().getSize2D() * larger));
        return label;
    }
}
