package everyblade.window;

import everyblade.core.coverage.RowCoverage;
import everyblade.picture.MapWords;
import everyblade.picture.RowProgress;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
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

/** All rows, a line each: what is done, what is to be said of it, a bar. The chosen line is the chosen row. */
final class RowList {

    private static final int LEAST_LINE = 30;
    private static final int MOST_LINE = Looks.GLOVE_TARGET;

    private final Words words;
    private final Supplier<Theme> theme;
    private final DefaultListModel<RowCoverage> rows = new DefaultListModel<>();
    private final JList<RowCoverage> list = new JList<>(rows) {

        private static final long serialVersionUID = 1;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    };
    private final JScrollPane scroll =
            new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    private boolean filling;

    RowList(Words words, Supplier<Theme> theme, Consumer<String> choose) {
        this.words = words;
        this.theme = theme;
        list.setName("rows");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Line());
        Texts.name(list, words.say("rows.name"));
        list.addListSelectionListener(chosen -> {
            if (!filling && !chosen.getValueIsAdjusting() && list.getSelectedValue() != null) {
                choose.accept(list.getSelectedValue().row().id());
            }
        });
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().addChangeListener(moved -> fit());
    }

    JComponent component() {
        return scroll;
    }

    /** As high as there is room for, and as a finger needs. */
    private void fit() {
        int room = scroll.getViewport().getHeight() / Math.max(1, rows.size());
        int height = Math.max(Looks.scaled(LEAST_LINE), Math.min(MOST_LINE, room));
        if (list.getFixedCellHeight() != height) {
            list.setFixedCellHeight(height);
        }
    }

    void show(List<RowCoverage> shown, String chosen) {
        filling = true;
        if (rows.size() == shown.size()) {
            for (int i = 0; i < shown.size(); i++) {
                if (rows.get(i) != shown.get(i)) {
                    rows.set(i, shown.get(i));
                }
            }
        } else {
            rows.clear();
            rows.addAll(shown);
            fit();
        }
        choose(chosen);
        filling = false;
    }

    /** Shows which row is chosen, without telling anybody. */
    void choose(String row) {
        boolean before = filling;
        filling = true;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).row().id().equals(row)) {
                list.setSelectedIndex(i);
                list.ensureIndexIsVisible(i);
            }
        }
        filling = before;
    }

    /** One line, painted for each row in turn. */
    private final class Line extends JPanel implements ListCellRenderer<RowCoverage> {

        private static final long serialVersionUID = 1;

        private final JLabel id = Texts.bold(new JLabel(), 1);
        private final JLabel stage = new JLabel();
        private final JLabel percent = Texts.bold(new JLabel(), 1);
        private final ShareStroke bar = new ShareStroke();

        Line() {
            super(new MigLayout(
                    "insets 2 6 4 6, fill, gap 3 1",
                    Looks.large() ? "[pref!]push[pref!]" : "[pref!][0:pref, grow, right][pref!]",
                    "push[]0[6!]push"));
            add(id, "wmin 0");
            if (!Looks.large()) { // else the bar and what is told of the line say it, and the rings have the room
                add(stage, "wmin 0");
            }
            add(percent, "wrap");
            add(bar, "span, growx, h 6!");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends RowCoverage> of, RowCoverage row, int index, boolean selected, boolean focus) {
            RowProgress progress = RowProgress.of(row);
            Texts.say(id, row.row().id());
            Texts.say(stage, progress.stage(MapWords.of(words)));
            Texts.say(percent, progress.percent());
            stage.setForeground(Looks.letters(theme.get(), ink(progress.stage())));
            id.setForeground(Looks.colour(theme.get(), Ink.LINE));
            percent.setForeground(Looks.colour(theme.get(), Ink.LINE));
            bar.show(progress, theme.get());
            setBackground(selected ? Looks.colour(theme.get(), Ink.STEP_1) : of.getBackground());
            setBorder(BorderFactory.createLineBorder(
                    selected ? Looks.colour(theme.get(), Ink.SEEN) : of.getBackground(), selected ? 2 : 1, true));
            String told = Visible.text(row.row().name() + " (" + row.row().id() + "), " + progress.percent() + ", "
                    + progress.stage(MapWords.of(words)));
            getAccessibleContext().setAccessibleName(told);
            Texts.tip(this, told);
            return this;
        }
    }

    private static Ink ink(RowProgress.Stage stage) {
        return switch (stage) {
            case COMPLETE -> Ink.PART;
            case MAYBE -> Ink.MAYBE;
            case NOT_BEGUN, NO_VIEW, LEFT -> Ink.FAINT; // work that waits is nothing wrong
        };
    }

    /** Seen, seen as far as it can be, maybe; the rest is left. */
    static final class ShareStroke extends JComponent {

        private static final long serialVersionUID = 1;
        private static final int HATCH = 4;

        private transient RowProgress progress;
        private Theme theme = Theme.LIGHT;

        ShareStroke() {
            setPreferredSize(new Dimension(60, 6));
        }

        void show(RowProgress shown, Theme inTheme) {
            progress = shown;
            theme = inTheme;
            repaint();
        }

        @Override
        protected void paintComponent(Graphics g) {
            if (progress == null) {
                return;
            }
            int width = getWidth() - 1;
            int height = getHeight() - 1;
            int seen = (int) Math.round(progress.seen() * width);
            int part = (int) Math.round(progress.part() * width);
            int maybe = (int) Math.round(progress.maybe() * width);
            g.setColor(Looks.colour(theme, Ink.PAPER));
            g.fillRect(0, 0, width, height);
            g.setColor(Looks.colour(theme, Ink.SEEN));
            g.fillRect(0, 0, seen, height);
            g.setColor(Looks.colour(theme, Ink.PART));
            g.fillRect(seen, 0, part, height);
            g.setColor(Looks.colour(theme, Ink.MAYBE_WASH));
            g.fillRect(seen + part, 0, maybe, height);
            g.setColor(Looks.colour(theme, Ink.MAYBE));
            for (int x = 0; x < maybe; x += HATCH) {
                g.drawLine(seen + part + x, height, Math.min(seen + part + maybe, seen + part + x + height), 0);
            }
            g.setColor(Looks.colour(theme, Ink.FAINT));
            g.drawRect(0, 0, width, height);
        }
    }
}
