package everyblade.window;

import everyblade.window.view.NextToDo;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What to do now, in numbered lines, and one large button that puts the first of them into the entry line. */
final class StepsPanel {

    private static final int MOST = 6;

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap, hidemode 3, gapy 2", "[grow, fill]"));
    private final JPanel lines =
            new JPanel(new MigLayout("insets 0, fillx, wrap 2, gapy 2", "[22!, right]6[grow, fill]"));
    private final Paragraph note = new Paragraph();
    private final JButton take = new JButton();
    private final JLabel takes = new JLabel();
    private Optional<String> entry = Optional.empty();
    private boolean open;

    StepsPanel(Words words, Consumer<String> begin) {
        this.words = words;
        panel.setOpaque(false);
        lines.setOpaque(false);
        panel.setName("steps");
        panel.add(Texts.bold(Texts.label(words.say("steps.title")), 1.1f));
        take.setName("take next");
        take.setLayout(new MigLayout("insets 2 0 2 0, gap 0, wrap, fill", "[grow, center]"));
        takes.putClientProperty("FlatLaf.style", "font: bold 130%; foreground: @componentBackground");
        JLabel what = Texts.label(words.say("steps.take"));
        what.putClientProperty("FlatLaf.style", "font: 85%; foreground: @componentBackground");
        take.add(takes, "wmin 0");
        if (!Looks.large()) {
            take.add(what, "wmin 0");
        }
        Texts.tip(take, what.getText());
        take.putClientProperty("FlatLaf.style", "background: @accentColor; disabledBackground: $Button.background");
        take.addActionListener(pressed -> entry.ifPresent(begin));
        panel.add(take, "hmin 52px, wmin 0"); // over the steps: how many these are must not move it
        panel.add(lines, "wmin 0");
        panel.add(note, "wmin 0");
        next(Optional.empty());
    }

    JComponent component() {
        return panel;
    }

    void show(Shown shown) {
        open = shown.state().open();
        take.setVisible(open && entry.isPresent());
    }

    /** What is next; while that is being worked out, what was next before is grey, and cannot be taken. */
    void next(Optional<NextToDo> step) {
        step.ifPresent(this::tell);
        boolean known = step.isPresent();
        panel.getAccessibleContext()
                .setAccessibleName(
                        words.say("where.next", step.map(NextToDo::words).orElse("…")));
        for (java.awt.Component line : lines.getComponents()) {
            line.setEnabled(known);
        }
        note.setEnabled(known);
        take.setEnabled(known);
        takes.setEnabled(known);
        panel.revalidate();
        panel.repaint();
    }

    private void tell(NextToDo step) {
        List<String> steps = step.steps();
        lines.removeAll();
        for (int i = 0; i < Math.min(MOST, steps.size()); i++) {
            lines.add(Texts.bold(Texts.label(Integer.toString(i + 1)), 1));
            lines.add(Texts.bold(new Paragraph(steps.get(i)), 1.1f), "wmin 0");
        }
        if (steps.size() > MOST) {
            lines.add(Texts.label(words.say("steps.more", steps.size() - MOST)), "skip 1, wmin 0");
        }
        lines.setVisible(!steps.isEmpty());
        Texts.tip(lines, step.closes().isEmpty() ? "" : words.say("steps.foreseen"));
        note.say(step.note());
        note.setVisible(!step.note().isBlank());
        entry = step.entry();
        Texts.say(takes, entry.orElse("").strip());
        take.getAccessibleContext()
                .setAccessibleName(words.say("where.take", entry.orElse("").strip()));
        take.setVisible(open && entry.isPresent());
    }
}
