package everyblade.desktop.window;

import everyblade.desktop.command.ClosingText;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.OpenLine;
import everyblade.desktop.view.Shortcut;
import everyblade.desktop.words.Words;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The closing list beside the map: everything that is open, worked out only while somebody looks at it. */
final class ClosingPanel {

    /** What a person does here. */
    interface Doing {

        /** Shows a line on the map, or begins the entry that closes it, or both. */
        void turnTo(OpenLine line);

        void back();

        void report();

        void handover();
    }

    private final Words words;
    private final Door door;
    private final Doing doing;
    private final JPanel panel = new JPanel(
            new MigLayout("insets 6 8 4 8, fill, wrap, hidemode 3, gapy 4", "[grow, fill]", "[][grow, fill][][]"));
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final DefaultListModel<OpenLine> model = new DefaultListModel<>();
    private final JList<OpenLine> list = new Wide(model);
    private JobState state;
    private boolean looking;

    ClosingPanel(Words words, Door door, Doing doing) {
        this.words = words;
        this.door = door;
        this.doing = doing;
        list.setName("closing");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new OpenCells(words));
        list.getAccessibleContext().setAccessibleName(words.say("closing.name"));
        list.getAccessibleContext().setAccessibleDescription(words.say("closing.hint"));
        Keys.on(list, "ENTER", this::turnTo);
        Keys.on(list, "ESCAPE", doing::back);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                if (click.getClickCount() == 2) {
                    turnTo();
                }
            }
        });
        list.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                measureAgain();
            }
        });
        title.setLabelFor(list);
        title.setName("closing title");
        panel.add(title);
        panel.add(
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER),
                "hmin 60");
        panel.add(new Paragraph(words.say("closing.hint")), "wmin 0");
        panel.add(buttons());
        panel.setMinimumSize(new java.awt.Dimension(300, 100));
    }

    private JComponent buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 4", "[][]push[]"));
        button(buttons, "bar.report", Shortcut.REPORT, doing::report);
        button(buttons, "closing.handover", Shortcut.HANDOVER, doing::handover);
        button(buttons, "closing.back", Shortcut.CLOSING, doing::back);
        return buttons;
    }

    private void button(JPanel buttons, String key, Shortcut shortcut, Runnable action) {
        JButton button = new JButton(words.say(key));
        button.setName("closing " + key);
        String told =
                words.say(shortcut.words()) + " (" + KeyNames.of(shortcut.keys().get(0), words) + ")";
        button.setToolTipText(told);
        button.getAccessibleContext().setAccessibleDescription(told);
        button.addActionListener(pressed -> action.run());
        buttons.add(button);
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.requestFocusInWindow();
    }

    void show(JobState newState) {
        state = newState;
        work();
    }

    /** Whether the list is in front. */
    void shown(boolean isLooking) {
        looking = isLooking;
        work();
    }

    private void work() {
        if (looking && state != null) {
            JobState now = state;
            door.latest("closing", () -> OpenLine.of(now), this::fill);
        }
    }

    private void fill(List<OpenLine> lines) {
        int chosen = Math.max(0, list.getSelectedIndex());
        long open = lines.stream().filter(OpenLine::open).count();
        title.setText(open == 0 ? ClosingText.NOTHING : words.say("closing.title", open));
        if (!lines.equals(java.util.Collections.list(model.elements()))) {
            model.clear();
            model.addAll(lines);
            list.setSelectedIndex(Math.min(chosen, lines.size() - 1));
            list.ensureIndexIsVisible(Math.max(0, list.getSelectedIndex()));
        }
    }

    private void turnTo() {
        if (list.getSelectedValue() != null) {
            doing.turnTo(list.getSelectedValue());
        }
    }

    /** A list keeps the heights of its lines until it is told that they changed. */
    private void measureAgain() {
        list.setFixedCellHeight(1);
        list.setFixedCellHeight(-1);
    }

    /** A list of lines that break where its width makes them. */
    private static final class Wide extends JList<OpenLine> {

        private static final long serialVersionUID = 1;

        Wide(DefaultListModel<OpenLine> model) {
            super(model);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }
}
