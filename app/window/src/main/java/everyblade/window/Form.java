package everyblade.window;

import everyblade.words.Words;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** Names and fields in pairs on a panel, and text of any length below them. */
record Form(JPanel panel, Words words) {

    /** Adds a field after its name. */
    void field(String key, JComponent input) {
        JLabel label = Texts.label(words.say(key));
        label.setLabelFor(input);
        input.getAccessibleContext().setAccessibleName(words.say(key));
        if (input.getName() == null) {
            input.setName(key);
        }
        panel.add(label);
        panel.add(input, "wmin 50");
    }

    /** Text that scrolls where there is no room for all of it. */
    static JScrollPane scrolled(Paragraph text) {
        Column column = new Column(new MigLayout("insets 0, fillx", "[grow, fill]"));
        column.add(text, "wmin 0");
        JScrollPane scroll = new JScrollPane(column);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        column.setOpaque(false);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }
}
