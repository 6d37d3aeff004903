package everyblade.window;

import everyblade.window.view.ComparedLine;
import everyblade.words.Words;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Another record held against the one on the screen. */
final class ComparedPanel {

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap, gapy 4", "[grow, fill]", "[][][grow, fill][]"));
    private final Paragraph other = new Paragraph();
    private final LineList<ComparedLine> list = new LineList<>("compared", ComparedLine::text);

    ComparedPanel(Words words, Consumer<ComparedLine> select, Runnable back) {
        JLabel title = Texts.bold(Texts.label(words.say("compared")), 1.2f);
        title.setLabelFor(list);
        list.getAccessibleContext().setAccessibleName(words.say("compared"));
        list.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && list.getSelectedValue() != null) {
                select.accept(list.getSelectedValue());
            }
        });
        Keys.on(list, "ESCAPE", back);
        panel.add(title);
        panel.add(other, "wmin 0");
        panel.add(list.scrolled(), "hmin 90");
        JButton button = Texts.button(words.say("compared.back"));
        button.setName("compared.back");
        button.addActionListener(pressed -> back.run());
        panel.add(button, "hmin 34, grow 0");
    }

    JComponent component() {
        return panel;
    }

    void show(String named, List<ComparedLine> lines) {
        other.say(named);
        list.show(lines);
        list.requestFocusInWindow();
    }
}
