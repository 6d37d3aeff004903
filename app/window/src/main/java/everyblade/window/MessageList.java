package everyblade.window;

import everyblade.json.Problem;
import everyblade.json.Severity;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.author.Attempt;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** What is wrong with a model, errors first; the place of the message that is chosen is shown beside. */
final class MessageList {

    private final Words words;
    private final Theme theme;
    private final Consumer<Problem> show;
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final DefaultListModel<Problem> model = new DefaultListModel<>();
    private final JList<Problem> list = new Lines(model);
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fill, wrap", "[grow, fill]", "[]4[grow, fill]"));
    private boolean filling;

    MessageList(Words words, Theme theme, Consumer<Problem> show) {
        this.words = words;
        this.theme = theme;
        this.show = show;
        list.setName("author messages");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cells());
        Texts.name(list, words.say("author.messages"));
        list.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && !filling) {
                showChosen();
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                showChosen();
            }
        });
        Keys.on(list, "ENTER", this::showChosen);
        panel.setOpaque(false);
        title.setLabelFor(list);
        JScrollPane scroll =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        ModelText.leaveKeysToTheWindow(scroll);
        panel.add(title);
        panel.add(scroll, "hmin 60, wmin 0");
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        if (list.isSelectionEmpty() && !model.isEmpty()) {
            list.setSelectedIndex(0);
        }
        list.requestFocusInWindow();
    }

    /** Shows the messages of a reading; the one chosen before stays chosen if it is still there. */
    void show(Attempt attempt) {
        List<Problem> problems = attempt.problems();
        Texts.say(
                title,
                problems.isEmpty()
                        ? words.say("author.messages.none")
                        : words.say("author.messages.title", attempt.errors(), attempt.warnings()));
        if (problems.equals(Collections.list(model.elements()))) {
            return;
        }
        Problem chosen = list.getSelectedValue();
        filling = true;
        model.clear();
        model.addAll(problems);
        list.setSelectedValue(chosen, true);
        filling = false;
    }

    Optional<Problem> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void showChosen() {
        chosen().ifPresent(show);
    }

    /** {@code code  file:line:column}, which no language changes. */
    private static String head(Problem problem) {
        Path file = Path.of(problem.file()).getFileName();
        return problem.code() + "  " + file + ":" + problem.line() + ":" + problem.column();
    }

    /** A list whose lines are as wide as it is, and as high as their words then need. */
    private static final class Lines extends JList<Problem> {

        private static final long serialVersionUID = 1;

        Lines(DefaultListModel<Problem> model) {
            super(model);
            addComponentListener(new ComponentAdapter() {
                @Override
                public void componentResized(ComponentEvent event) {
                    setFixedCellHeight(1); // makes it forget the heights that it knows
                    setFixedCellHeight(-1);
                }
            });
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }

    /** One message: its sign, code and place; what is wrong; how to mend it. */
    private final class Cells extends JPanel implements ListCellRenderer<Problem> {

        private static final long serialVersionUID = 1;
        private static final int ASIDE = 6;

        private final JLabel head = Texts.bold(new JLabel(), 1);
        private final Paragraph what = new Paragraph();
        private final Paragraph mend = new Paragraph();

        Cells() {
            super(new MigLayout("insets 0, fillx, wrap, gapy 1", "[grow, fill]"));
            setBorder(BorderFactory.createEmptyBorder(5, ASIDE, 5, ASIDE));
            add(head, "wmin 0");
            add(what, "wmin 0");
            add(mend, "wmin 0");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Problem> of, Problem problem, int index, boolean isSelected, boolean focus) {
            boolean error = problem.severity() == Severity.ERROR;
            Texts.say(
                    head,
                    (error ? "✖ " : "⚠ ") + words.say(error ? "author.isError" : "author.isWarning") + "  "
                            + head(problem));
            what.say(problem.what() + ", " + problem.why());
            mend.say("→ " + problem.mend());
            setBackground(isSelected ? of.getSelectionBackground() : of.getBackground());
            head.setForeground(
                    isSelected ? of.getSelectionForeground() : Looks.colour(theme, error ? Ink.ALERT : Ink.LINE));
            what.setForeground(isSelected ? of.getSelectionForeground() : of.getForeground());
            mend.setForeground(isSelected ? of.getSelectionForeground() : of.getForeground());
            int width = Math.max(80, of.getWidth() - 2 * ASIDE);
            what.setSize(width, Short.MAX_VALUE);
            mend.setSize(width, Short.MAX_VALUE);
            Texts.name(this, head.getText() + ": " + what.getText() + ". " + mend.getText());
            return this;
        }

        @Override
        public Dimension getPreferredSize() {
            int height = 14
                    + head.getPreferredSize().height
                    + what.getPreferredSize().height
                    + mend.getPreferredSize().height;
            return new Dimension(0, height);
        }
    }
}
