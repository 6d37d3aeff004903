package everyblade.window;

import everyblade.words.Visible;
import java.awt.Insets;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;

/**
 * Small things that all texts of the window share. Whatever a label, a button or a tool tip says goes through here, so
 * that nothing in it hides.
 */
final class Texts {

    private Texts() {}

    /** A label that says this. */
    static JLabel label(String text) {
        return new JLabel(Visible.text(text));
    }

    /** A button that says this. */
    static JButton button(String text) {
        return new JButton(Visible.text(text));
    }

    /** A button that says this and stays pressed or not. */
    static JToggleButton toggle(String text, boolean on) {
        return new JToggleButton(Visible.text(text), on);
    }

    static void say(JLabel label, String text) {
        label.setText(Visible.text(text));
    }

    static void say(AbstractButton button, String text) {
        button.setText(Visible.text(text));
    }

    /** Tells this about a component where a pointer rests on it; {@code null} for nothing. */
    static void tip(JComponent component, String text) {
        component.setToolTipText(text == null ? null : Visible.text(text));
    }

    /** Names a component for those who do not see it. */
    static void name(JComponent component, String name) {
        AccessibleContext context = component.getAccessibleContext();
        if (context != null) {
            context.setAccessibleName(name);
        }
    }

    /** Leaves the focus where it is when a button is pressed with a pointer; by keys it is still reached. */
    static void leaveFocus(AbstractButton button) {
        button.setRequestFocusEnabled(false);
    }

    /** Gives its words the room beside them, where there is little; what may be cut is told where a pointer rests on it. */
    static void tight(AbstractButton button) {
        button.setMargin(new Insets(2, 4, 2, 4));
        tip(button, button.getText());
    }

    /** Shows a sign on a button, with its words beside it where there is room for them; they are read out anyhow. */
    static void sign(AbstractButton button, Icon sign, String text, boolean room) {
        button.setIcon(sign);
        say(button, room ? text : "");
        name(button, Visible.text(text));
    }

    /** Puts a sign over the words of a button that need all its width; where letters are large, they do without. */
    static void signOver(AbstractButton button, Icon sign) {
        button.setIcon(Looks.large() ? null : sign);
        button.setVerticalTextPosition(SwingConstants.BOTTOM);
        button.setHorizontalTextPosition(SwingConstants.CENTER);
        button.setIconTextGap(0);
    }

    /** Makes the letters of a component smaller, and of less weight. */
    static <T extends JComponent> T faint(T component) {
        component.putClientProperty("FlatLaf.style", "font: 85%; foreground: $" + Looks.FAINT);
        return component;
    }

    /** Makes the letters of a component bold and so many times as large as usual, whatever that is at the time. */
    static <T extends JComponent> T bold(T component, float larger) {
        component.putClientProperty("FlatLaf.style", "font: bold " + Math.round(larger * 100) + "%");
        return component;
    }
}
