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

    private static final int LEAST_LINE = 28;
    /** Where letters are large, what is said of a row has a line of its own. */
    private static final int LEAST_OF_TWO = 44;

    private static final int MOST_LINE = Looks.GLOVE_TARGET;
    /** So wide is a line where lines stand in columns. */
    private static final int COLUMN = 100;

    /** What stands over and under wheels and lines. */
    private static final int AROUND_WHEELS = 96;

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
            new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER) {

                private static final long serialVersionUID = 1;

                @Override
                public Dimension getPreferredSize() {
                    return new Dimension(super.getPreferredSize().width, inColumns ? lines() * under() : 0);
                }
            };
    private boolean filling;
    private boolean inColumns;

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

    /** Lays its lines out in columns, as many as its width holds, or one below the other. */
    void inColumns(boolean wanted) {
        inColumns = wanted;
        list.setLayoutOrientation(wanted ? JList.VERTICAL_WRAP : JList.VERTICAL);
        fit();
    }

    private boolean twoLines() {
        return Looks.large() && !inColumns;
    }

    private int least() {
        return Looks.scaled(twoLines() ? LEAST_OF_TWO : LEAST_LINE);
    }

    private int lines() {
        return Math.max(1, (rows.size() + columns() - 1) / columns());
    }

    /** Height of a line under two wheels: what these leave free, for they are half as high as both are wide. */
    private int under() {
        int free = scroll.getParent().getHeight() - scroll.getParent().getWidth() / 2 - Looks.scaled(AROUND_WHEELS);
        return Math.max(least(), Math.min(MOST_LINE, free / lines()));
    }

    private int columns() {
        return inColumns ? Math.max(1, scroll.getWidth() / Looks.scaled(COLUMN)) : 1;
    }

    /** As high as there is room for, and as a finger needs. */
    private void fit() {
        int room = scroll.getViewport().getHeight() / lines();
        int height = Math.max(least(), Math.min(MOST_LINE, room));
        int width = inColumns ? scroll.getViewport().getWidth() / columns() : -1;
        if (list.getFixedCellHeight() != height || list.getFixedCellWidth() != width) {
            list.setVisibleRowCount(lines());
            list.setFixedCellHeight(height);
            list.setFixedCellWidth(width);
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

        /** What stands round and between the words of a line. */
        private static final int AROUND = 18;

        private final JLabel id = Texts.bold(new JLabel(), 1);
        private final JLabel stage = Texts.faint(new JLabel());
        private final JLabel percent = Texts.bold(new JLabel(), 1);
        private final ShareStroke bar = new ShareStroke();

        Line() {
            super(new MigLayout(
                    "insets 2 4 3 4, fill, gap 3 0, hidemode 3", "[pref!]push[pref!][pref!]", "push[][]1[6!]push"));
            add(id, "cell 0 0");
            add(percent, "cell 2 0");
            add(stage, Looks.large() ? "cell 0 1, span, right" : "cell 1 0");
            add(bar, "cell 0 2, span, growx, h 6!");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends RowCoverage> of, RowCoverage row, int index, boolean selected, boolean focus) {
            RowProgress progress = RowProgress.of(row);
            Texts.say(id, row.row().id());
            Texts.say(stage, progress.stage(MapWords.of(words)));
            Texts.say(percent, progress.percent());
            stage.setVisible(hasRoom(of)); // else the bar and what is told of the line say it
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

        private boolean hasRoom(JList<?> of) {
            int width = of.getFixedCellWidth() > 0 ? of.getFixedCellWidth() : of.getWidth();
            if (Looks.large() && inColumns) {
                return false;
            }
            int beside = twoLines() ? 0 : id.getPreferredSize().width + percent.getPreferredSize().width;
            return beside + stage.getPreferredSize().width + Looks.scaled(AROUND) <= width;
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
