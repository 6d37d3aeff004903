package everyblade.window;

import everyblade.words.Visible;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/**
 * Running text that breaks into lines where it must, and where the text does; as high as its width makes it. A label of
 * HTML would do, but asks for a new layout each time it is painted at another width, and so never comes to rest.
 */
final class Paragraph extends JTextArea {

    private static final long serialVersionUID = 1;

    Paragraph(String text) {
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder()); // none at all would be made up by the next look
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // else it scrolls itself into view
        say(text);
    }

    /** The same in letters that are larger, and bold. */
    Paragraph(float larger) {
        this("");
        Texts.bold(this, larger);
    }

    Paragraph() {
        this("");
    }

    /** Says another text; nothing happens if it is the same one. */
    void say(String text) {
        String shown = Visible.text(text);
        if (!shown.equals(getText())) {
            setText(shown);
        }
        getAccessibleContext().setAccessibleName(shown);
    }
}
