package everyblade.window;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** How the panels of a job's screen lie: warnings on top, the entry line and the acts below, columns between them. */
final class JobLayout {

    /** What the panels between banners and entry line need with usual letters; below that they scroll. */
    private static final Dimension LEAST = new Dimension(830, 236);

    /** From this width, with usual letters, what else are pages stands open in a column of this width. */
    private static final int WIDE = 1600;

    private static final int BESIDE = 330;

    /** Between the entry line and what comes over it. */
    private static final int GAP = 3;

    /** So wide where something else stands in the place of all stages. */
    private static final int LEAST_WITHOUT_STAGES = 600;

    private final JPanel panel = new JPanel(new BorderLayout());
    private final JPanel columns = new JPanel(new MigLayout(
            "insets 0, fill, gap 8, hidemode 3",
            Looks.large() ? "[grow 62, fill][grow 38, fill]" : "[grow 70, fill][grow 30, fill]",
            "[grow, fill]"));
    private final JComponent view;
    private int leastWidth = LEAST.width;

    /**
     * The columns alone.
     *
     * @param stages all of them, left
     * @param view the row in view, beside them
     */
    JobLayout(JComponent stages, JComponent view) {
        this.view = view;
        // Nothing in them asks for room of its own, or one would grow at the cost of the other.
        columns.add(stages, "w 10, wmin 0, hmin 0");
        columns.add(view, "w 10, wmin 0, hmin 0");
    }

    /** Stages and the row in view. */
    JComponent columns() {
        return columns;
    }

    /**
     * The whole screen.
     *
     * @param middle with the columns in it
     * @param below what stands under the entry line
     */
    JComponent whole(JComponent banners, JComponent middle, SidePanel side, EntryPanel entry, List<JComponent> below) {
        JPanel bottom = new JPanel(new MigLayout("insets 0 8 6 8, fillx, wrap, hidemode 3, gapy 4", "[grow]"));
        bottom.add(entry.component(), "growx");
        below.forEach(each -> bottom.add(each, "growx"));
        panel.add(banners, BorderLayout.NORTH);
        panel.add(
                LeastRoom.scrolled(middle, () -> new Dimension(Looks.scaled(leastWidth), Looks.scaled(LEAST.height))),
                BorderLayout.CENTER);
        panel.add(bottom, BorderLayout.SOUTH);
        panel.add(beside(side), BorderLayout.EAST);
        return new Over(panel, entry.over(), entry::component, () -> GAP, true);
    }

    private JComponent beside(SidePanel side) {
        JPanel open = new JPanel(new BorderLayout());
        open.setBorder(BorderFactory.createEmptyBorder(0, 0, 4, 8));
        open.add(side.beside());
        side.beside().setPreferredSize(new Dimension(Looks.scaled(BESIDE), 0));
        open.setVisible(false);
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                boolean wide = panel.getWidth() >= Looks.scaled(WIDE);
                open.setVisible(wide);
                side.wide(wide);
            }
        });
        return open;
    }

    /** Puts something in the place of all stages, beside the row in view. */
    void inPlaceOfStages(JComponent other) {
        leastWidth = LEAST_WITHOUT_STAGES;
        columns.removeAll();
        columns.setLayout(new MigLayout("insets 0, fill", "[grow, fill]", "[grow, fill]"));
        columns.add(view, "w 10, wmin 0, hmin 0");
        panel.add(other, BorderLayout.WEST);
    }
}
