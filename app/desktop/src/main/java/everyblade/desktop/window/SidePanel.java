package everyblade.desktop.window;

import everyblade.desktop.map.CellAt;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.NextToDo;
import everyblade.desktop.view.Shown;
import everyblade.desktop.words.Words;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** Beside the map: where everything is, what is left, and pages with shares, findings, the course of the job, entries. */
final class SidePanel {

    private final JPanel panel = new JPanel(
            new MigLayout("insets 6 8 4 8, fill, wrap, gapy 4", "[grow, fill]", "[][grow 60, fill][grow 40, fill]"));
    private final JTabbedPane pages = new JTabbedPane();
    private final WherePanel where;
    private final LeftPanel left;
    private final SharesPanel shares;
    private final NotesPanel notes;
    private final PicturesPanel pictures;
    private final TimePanel time;
    private final LogPanel log;
    private Optional<CellAt> selected = Optional.empty();
    private JobState state;

    SidePanel(
            Words words,
            Supplier<Choices> choices,
            Door door,
            Consumer<CellAt> select,
            Consumer<String> begin,
            IntConsumer openPicture) {
        this.where = new WherePanel(words, begin);
        this.left = new LeftPanel(words, select, begin, where::makeRoom);
        this.shares = new SharesPanel(words, choices);
        this.notes = new NotesPanel(words, select, begin);
        this.pictures = new PicturesPanel(words, openPicture);
        this.time = new TimePanel(words, choices, door);
        this.log = new LogPanel(words, begin);
        pages.addTab(words.say("page.shares"), shares.component());
        pages.addTab(words.say("page.notes"), notes.component());
        pages.addTab(words.say("page.pictures"), pictures.component());
        pages.addTab(words.say("page.time"), time.component());
        pages.addTab(words.say("page.log"), log.component());
        pages.setName("pages");
        pages.putClientProperty("JTabbedPane.tabInsets", new java.awt.Insets(4, 9, 4, 9));
        pages.getAccessibleContext().setAccessibleName(words.say("page.name"));
        pages.addChangeListener(turned -> time.shown(pages.getSelectedComponent() == time.component()));
        panel.add(where.component(), "wmin 0");
        panel.add(left.component(), "wmin 0");
        panel.add(pages, "wmin 0, hmin 120");
        panel.setMinimumSize(new java.awt.Dimension(300, 100));
    }

    JComponent component() {
        return panel;
    }

    LeftPanel left() {
        return left;
    }

    void show(Shown shown) {
        state = shown.state();
        where.show(shown);
        left.show(shown);
        notes.show(shown.notes());
        pictures.show(state);
        time.show(state);
        log.show(state);
        showShares();
    }

    /** What is to be done next; empty while nobody knows. */
    void next(Optional<NextToDo> step) {
        where.next(step);
    }

    /** Shows what belongs to this cell. */
    void selected(CellAt cell) {
        selected = Optional.of(cell);
        showShares();
    }

    /** Shares of the row of the selected cell, else of the row in view. */
    private void showShares() {
        String first = state.model().rows().get(0).id();
        String inView = state.seat().map(seat -> seat.row().id()).orElse(first);
        shares.show(state, selected.map(CellAt::row).orElse(inView));
    }

    /** Shows the next page. */
    void nextPage() {
        pages.setSelectedIndex((pages.getSelectedIndex() + 1) % pages.getTabCount());
    }
}
