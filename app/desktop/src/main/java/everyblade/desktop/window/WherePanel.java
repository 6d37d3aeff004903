package everyblade.desktop.window;

import everyblade.desktop.view.NextToDo;
import everyblade.desktop.view.Shown;
import everyblade.desktop.view.Where;
import everyblade.desktop.words.Words;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Where the tip and the rotor are, what was kept last, and what is next. */
final class WherePanel {

    private final Words words;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap, hidemode 3", "[grow, fill]", "[]3[]"));
    private final Paragraph rotor = new Paragraph(1.25f);
    private final Paragraph tip = new Paragraph();
    private final Paragraph pad = new Paragraph();
    private final Paragraph last = new Paragraph();
    private final Paragraph next = new Paragraph(1f);
    private final JButton take = new JButton();
    private Optional<String> entry = Optional.empty();
    private boolean open;
    private boolean roomy = true;

    WherePanel(Words words, Consumer<String> begin) {
        this.words = words;
        panel.getAccessibleContext().setAccessibleName(words.say("where.name"));
        for (Paragraph label : java.util.List.of(rotor, tip, pad, last, next)) {
            panel.add(label, "wmin 0");
        }
        take.setName("take next");
        take.addActionListener(pressed -> entry.ifPresent(begin));
        panel.add(take, "left, grow 0");
        Texts.say(take, "");
        next(Optional.empty());
    }

    JComponent component() {
        return panel;
    }

    void show(Shown shown) {
        Where where = shown.where();
        rotor.say(where.rotor());
        tip.say(where.tip());
        pad.say(where.pad());
        last.say(where.last());
        rotor.setVisible(!where.rotor().isBlank());
        pad.setVisible(!where.pad().isBlank());
        open = shown.state().open();
        lay();
    }

    /** What is next; while that is being worked out, what was next before is grey, and cannot be taken. */
    void next(Optional<NextToDo> step) {
        boolean known = step.isPresent();
        next.setEnabled(known);
        take.setEnabled(known);
        if (known || next.getText().isEmpty()) {
            next.say(words.say("where.next", step.map(NextToDo::words).orElse("…")));
        }
        step.ifPresent(one -> {
            entry = one.entry();
            Texts.say(take, words.say("where.take", entry.orElse("").strip()));
        });
        next.getAccessibleContext().setAccessibleName(known ? next.getText() : words.say("where.next", "…"));
        lay();
    }

    /** Leaves out what to do next while another thing is chosen to be done. */
    void makeRoom(boolean wanted) {
        roomy = !wanted;
        lay();
    }

    private void lay() {
        next.setVisible(roomy);
        take.setVisible(roomy && open && entry.isPresent());
        panel.revalidate();
    }
}
