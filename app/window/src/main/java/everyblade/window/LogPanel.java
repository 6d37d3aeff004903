package everyblade.window;

import everyblade.core.turning.Logged;
import everyblade.session.JobState;
import everyblade.session.Keeping;
import everyblade.words.Words;
import java.awt.Component;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Every entry, the last one first; what is void is struck through, what is only in memory says so. */
final class LogPanel {

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout("insets 4, fill, wrap", "[grow, fill]", "[grow, fill][]"));
    private final DefaultListModel<String> model = new DefaultListModel<>();
    private final JList<String> list = new JList<>(model) {

        private static final long serialVersionUID = 1;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    };
    private int count;

    LogPanel(Words words, Consumer<String> begin) {
        this.words = words;
        panel.setOpaque(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("log");
        list.getAccessibleContext().setAccessibleName(words.say("page.log"));
        list.setCellRenderer(new Cells());
        JButton strike = Texts.button(words.say("log.void"));
        strike.addActionListener(pressed -> {
            if (list.getSelectedIndex() >= 0) {
                begin.accept("void " + (count - list.getSelectedIndex()) + " because ");
            }
        });
        panel.add(
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER),
                "hmin 40");
        panel.add(strike, "grow 0");
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state) {
        List<Logged> entries = state.fold().entries();
        int unsaved = state.keeping() instanceof Keeping.InMemory memory
                ? memory.unsaved().size()
                : 0;
        boolean goesOn = entries.size() == count + 1
                && unsaved == 0
                && !(entries.get(entries.size() - 1).entry() instanceof everyblade.core.entry.RecordEntry.Void);
        if (goesOn) {
            model.add(0, line(state, entries.get(count), false));
        } else {
            model.clear();
            for (int i = entries.size() - 1; i >= 0; i--) {
                model.addElement(line(state, entries.get(i), i >= entries.size() - unsaved));
            }
        }
        count = entries.size();
    }

    private String line(JobState state, Logged logged, boolean unsaved) {
        String text = logged.number() + "  " + words.time(logged.at(), ZoneId.systemDefault()) + "  " + logged.text();
        String marked = state.fold().isVoid(logged.number()) ? words.say("log.isVoid", text) : text;
        return unsaved ? words.say("log.unsaved", marked) : marked;
    }

    private static final class Cells extends VisibleCells {

        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean focus) {
            super.getListCellRendererComponent(list, value, index, isSelected, focus);
            Texts.tip(this, String.valueOf(value));
            return this;
        }
    }
}
