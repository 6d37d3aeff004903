package everyblade.desktop.window;

import everyblade.desktop.view.Shown;
import everyblade.desktop.view.Where;
import everyblade.desktop.words.Words;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Where the tip and the rotor are, what was kept last, and what is next. */
final class WherePanel {

    private final Words words;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap, hidemode 3", "[grow, fill]", "[]3[]"));
    private final JLabel rotor = Texts.bold(new JLabel(), 1.25f);
    private final JLabel tip = new JLabel();
    private final JLabel pad = new JLabel();
    private final JLabel last = new JLabel();
    private final JLabel next = Texts.bold(new JLabel(), 1);
    private final JButton take = new JButton();
    private String entry = "";

    WherePanel(Words words, Consumer<String> begin) {
        this.words = words;
        panel.getAccessibleContext().setAccessibleName(words.say("where.name"));
        for (JLabel label : java.util.List.of(rotor, tip, pad, last, next)) {
            panel.add(label, "wmin 0");
        }
        take.setName("take next");
        take.addActionListener(pressed -> begin.accept(entry));
        panel.add(take, "left, grow 0");
    }

    JComponent component() {
        return panel;
    }

    void show(Shown shown) {
        Where where = shown.where();
        Texts.wrap(rotor, where.rotor());
        Texts.wrap(tip, where.tip());
        Texts.wrap(pad, where.pad());
        Texts.wrap(last, where.last());
        Texts.wrap(next, words.say("where.next", where.next()));
        rotor.setVisible(!where.rotor().isBlank());
        pad.setVisible(!where.pad().isBlank());
        entry = where.entry().orElse("");
        take.setText(words.say("where.take", entry.strip()));
        take.setVisible(!entry.isEmpty() && shown.state().open());
        panel.revalidate();
    }
}
