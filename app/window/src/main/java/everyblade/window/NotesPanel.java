package everyblade.window;

import everyblade.window.map.CellAt;
import everyblade.window.view.Notes;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Findings, and what is to be looked at again or is still open. */
final class NotesPanel {

    private final Words words;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 4, fill, wrap, hidemode 3, gapy 2", "[grow, fill]", "[grow, fill][]"));
    private final LineList<Notes> list = new LineList<>("notes", this::text);
    private final JButton settle = new JButton();

    NotesPanel(Words words, Consumer<CellAt> select, Consumer<String> begin) {
        this.words = words;
        list.getAccessibleContext().setAccessibleName(words.say("page.notes"));
        list.addListSelectionListener(chosen -> {
            Notes one = list.getSelectedValue();
            settle.setVisible(one != null && !one.closes().isEmpty());
            Texts.say(
                    settle,
                    words.say(one != null && one.kind() == Notes.Kind.SENT_BACK ? "notes.answer" : "notes.settle"));
            if (one != null && !chosen.getValueIsAdjusting()) {
                one.cell().ifPresent(select);
            }
        });
        settle.setVisible(false);
        settle.addActionListener(pressed -> begin.accept(list.getSelectedValue().closes()));
        panel.setOpaque(false);
        panel.add(list.scrolled(), "hmin 40");
        panel.add(settle, "grow 0");
    }

    private String text(Notes note) {
        String kind = words.say("notes." + note.kind().name().toLowerCase(Locale.ROOT));
        return kind + " " + note.entry() + "   " + note.text();
    }

    JComponent component() {
        return panel;
    }

    void show(List<Notes> notes) {
        list.show(notes);
    }
}
