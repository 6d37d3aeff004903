package everyblade.desktop.window;

import everyblade.desktop.map.CellAt;
import everyblade.desktop.view.Left;
import everyblade.desktop.view.Shown;
import everyblade.desktop.words.Words;
import java.awt.Component;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListModel;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** What is left, most useful first; the one that is chosen shows on the map, and says how to reach it. */
final class LeftPanel {

    private final Words words;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap, hidemode 3", "[grow, fill]", "[]2[grow, fill]4[]"));
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final DefaultListModel<Left> model = new DefaultListModel<>();
    private final JList<Left> list = new Ellipsed(model);
    private final Paragraph how = new Paragraph();
    private final JPanel entries = new JPanel(new MigLayout("insets 0, gap 4"));
    private final Consumer<CellAt> select;
    private final Consumer<String> begin;
    private boolean filling;

    LeftPanel(Words words, Consumer<CellAt> select, Consumer<String> begin) {
        this.words = words;
        this.select = select;
        this.begin = begin;
        list.setName("left");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cells());
        list.getAccessibleContext().setAccessibleName(words.say("left.name"));
        list.getAccessibleContext().setAccessibleDescription(words.say("left.description"));
        list.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && !filling) {
                chosen();
            }
        });
        title.setLabelFor(list);
        panel.add(title);
        panel.add(
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER),
                "hmin 60");
        panel.add(how, "wmin 0");
        panel.add(entries, "hmin pref");
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.requestFocusInWindow();
    }

    void show(Shown shown) {
        List<Left> left = shown.left();
        String chosen =
                list.getSelectedValue() == null ? "" : list.getSelectedValue().what();
        if (left.equals(Collections.list(model.elements())) && !title.getText().isEmpty()) {
            return;
        }
        filling = true;
        model.clear();
        model.addAll(left);
        title.setText(left.isEmpty() ? words.say("left.nothing") : words.say("left.title", left.size()));
        for (int i = 0; i < left.size(); i++) {
            if (left.get(i).what().equals(chosen)) {
                list.setSelectedIndex(i);
            }
        }
        filling = false;
        tell();
    }

    private void chosen() {
        Left one = list.getSelectedValue();
        if (one != null) {
            select.accept(one.cell());
        }
        tell();
    }

    private void tell() {
        Left one = list.getSelectedValue();
        how.setVisible(one != null);
        entries.setVisible(one != null);
        entries.removeAll();
        if (one != null) {
            how.say(one.what() + ": " + one.why() + "; " + one.how());
            for (String entry : one.entries()) {
                JButton button = new JButton(entry);
                button.setName("way " + entry);
                button.setFocusable(false);
                button.addActionListener(pressed -> begin.accept(entry));
                entries.add(button);
            }
        }
        panel.revalidate();
        panel.repaint();
    }

    /** As wide as the room there is, so that long lines end in an ellipsis. */
    private static final class Ellipsed extends JList<Left> {

        private static final long serialVersionUID = 1;

        Ellipsed(ListModel<Left> model) {
            super(model);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }

    private static final class Cells extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean focus) {
            Left one = (Left) value;
            super.getListCellRendererComponent(list, one.what(), index, isSelected, focus);
            setToolTipText(one.what() + ": " + one.why() + "; " + one.how());
            setBorder(javax.swing.BorderFactory.createEmptyBorder(4, 6, 4, 6));
            return this;
        }
    }
}
