package everyblade.desktop.window;

import everyblade.desktop.map.CellAt;
import everyblade.desktop.view.Notes;
import everyblade.desktop.words.Words;
import java.awt.Component;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Findings, and what is to be looked at again or is still open. */
final class NotesPanel {

    private final JPanel panel =
            new JPanel(new MigLayout("insets 4, fill, wrap, hidemode 3", "[grow, fill]", "[grow, fill][]"));
    private final DefaultListModel<Notes> model = new DefaultListModel<>();
    private final JList<Notes> list = new JList<>(model);
    private final JButton settle = new JButton();

    NotesPanel(Words words, Consumer<CellAt> select, Consumer<String> begin) {
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("notes");
        list.getAccessibleContext().setAccessibleName(words.say("page.notes"));
        list.setCellRenderer(new Cells(words));
        list.addListSelectionListener(chosen -> {
            Notes one = list.getSelectedValue();
            settle.setVisible(one != null && one.kind() != Notes.Kind.FINDING);
            if (one != null && !chosen.getValueIsAdjusting()) {
                one.cell().ifPresent(select);
            }
        });
        settle.setText(words.say("notes.settle"));
        settle.setVisible(false);
        settle.addActionListener(
                pressed -> begin.accept("settle " + list.getSelectedValue().entry() + " because "));
        panel.add(
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER),
                "hmin 40");
        panel.add(settle, "grow 0");
    }

    JComponent component() {
        return panel;
    }

    void show(java.util.List<Notes> notes) {
        if (!notes.equals(java.util.Collections.list(model.elements()))) {
            model.clear();
            model.addAll(notes);
        }
    }

    private static final class Cells extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1;

        private final transient Words words;

        Cells(Words words) {
            this.words = words;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean focus) {
            Notes note = (Notes) value;
            String kind = words.say("notes." + note.kind().name().toLowerCase(Locale.ROOT));
            super.getListCellRendererComponent(
                    list, kind + " " + note.entry() + "   " + note.text(), index, isSelected, focus);
            setBorder(javax.swing.BorderFactory.createEmptyBorder(4, 6, 4, 6));
            setToolTipText(note.text());
            return this;
        }
    }
}
