package everyblade.window;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.MapWords;
import everyblade.picture.Terms;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.session.JobState;
import everyblade.spi.Row;
import everyblade.window.view.Choices;
import everyblade.window.view.ShareBar;
import everyblade.words.Words;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** How much of a row was seen, whole and by part, as bars with their numbers beside them. */
final class SharesPanel {

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel bars = new Column(new MigLayout("insets 8, fillx, wrap 3", "[][grow, fill][right]", "[]4[]"));
    private final List<Line> lines = new ArrayList<>();
    private String shownRow = "";
    private final JScrollPane scroll = new JScrollPane(bars);

    SharesPanel(Words words, Supplier<Choices> choices) {
        this.words = words;
        this.choices = choices;
        scroll.setBorder(BorderFactory.createEmptyBorder());
    }

    JComponent component() {
        return scroll;
    }

    void show(JobState state, String row) {
        RowCoverage coverage = state.coverage().row(row);
        List<ShareBar> now = new ArrayList<>(List.of(ShareBar.all(state.coverage(), words)));
        now.addAll(ShareBar.of(coverage, words));
        Theme theme = Looks.theme(choices.get());
        if (!row.equals(shownRow) || lines.size() != now.size()) {
            shownRow = row;
            lay(state.coverage(), coverage, now.size());
        }
        for (int i = 0; i < now.size(); i++) {
            lines.get(i).show(now.get(i), theme);
        }
    }

    private void lay(Coverage all, RowCoverage coverage, int count) {
        bars.removeAll();
        lines.clear();
        Row row = coverage.row();
        bars.add(new Paragraph(MapWords.of(words).figures()), "span 3, wmin 0, growx");
        for (int i = 0; i < count; i++) {
            if (i == 1) {
                bars.add(Texts.bold(Texts.label(row.name() + " (" + row.id() + ")"), 1), "span 3, wmin 0");
            }
            Line line = new Line();
            bars.add(line.name);
            bars.add(line.bar, "hmin 14");
            bars.add(line.numbers);
            lines.add(line);
        }
        Paragraph basis =
                new Paragraph(words.say(coverage.basis() == Basis.COMPUTED ? "share.computed" : "share.declared"));
        bars.add(basis, "span 3, wmin 0, growx");
        bars.add(new Paragraph(Terms.of(all, MapWords.of(words)).line()), "span 3, wmin 0, growx");
        bars.revalidate();
        bars.repaint();
    }

    /** One bar between its name and its numbers. */
    private final class Line {

        private final JLabel name = new JLabel();
        private final Bar bar = new Bar();
        private final JLabel numbers = new JLabel();

        void show(ShareBar share, Theme theme) {
            Texts.say(name, share.name());
            Texts.say(numbers, share.figures());
            bar.show(share, theme);
        }
    }

    /** Seen is solid, in part filled from below, a glimpse lined, maybe hatched: no colour is needed to tell them apart. */
    private static final class Bar extends JPanel {

        private static final long serialVersionUID = 1;
        private static final int HATCH = 5;

        private transient ShareBar bar;
        private Theme theme;

        void show(ShareBar share, Theme inTheme) {
            bar = share;
            theme = inTheme;
            Texts.tip(this, share.told());
            getAccessibleContext().setAccessibleName(share.told());
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            int width = getWidth() - 1;
            int height = getHeight() - 1;
            g.setColor(Looks.colour(theme, Ink.PAPER));
            g.fillRect(0, 0, width, height);
            int seen = (int) Math.round(bar.seen() * width);
            int part = (int) Math.round(bar.part() * width);
            int glimpsed = (int) Math.round(bar.glimpsed() * width);
            int maybe = (int) Math.round(bar.maybe() * width);
            g.setColor(Looks.colour(theme, Ink.SEEN));
            g.fillRect(0, 0, seen, height);
            g.setColor(Looks.colour(theme, Ink.PART));
            g.fillRect(seen, height / 3, part, height - height / 3);
            slits(g, seen + part, glimpsed, height);
            hatch(g, seen + part + glimpsed, maybe, height);
            g.setColor(Looks.colour(theme, Ink.LINE));
            g.drawRect(0, 0, width, height);
            g.dispose();
        }

        private void slits(Graphics2D g, int from, int width, int height) {
            g.setColor(Looks.colour(theme, Ink.PART_WASH));
            g.fillRect(from, 0, width, height);
            g.setColor(Looks.colour(theme, Ink.GLIMPSED));
            for (int x = from + 1; x < from + width; x += HATCH) {
                g.drawLine(x, 0, x, height);
            }
        }

        private void hatch(Graphics2D g, int from, int width, int height) {
            Shape clip = g.getClip();
            g.clipRect(from, 0, width, height);
            g.setColor(Looks.colour(theme, Ink.MAYBE_WASH));
            g.fillRect(from, 0, width, height);
            g.setColor(Looks.colour(theme, Ink.MAYBE));
            for (int x = from - height; x < from + width; x += HATCH) {
                g.drawLine(x, height, x + height, 0);
            }
            g.setClip(clip);
        }
    }
}
