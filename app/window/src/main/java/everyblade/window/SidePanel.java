package everyblade.window;

import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** What now: the next steps, and pages with what is left, findings, pictures, shares, the course of the job, entries. */
final class SidePanel {

    private final JPanel panel = new Card(new MigLayout(
            "insets 6 10 6 10, fill, wrap, gapy 6",
            "[0:0:, grow, fill]",
            "[shrinkprio 100][grow, fill, shrinkprio 200]"));
    private final JTabbedPane pages = new JTabbedPane();
    private final StepsPanel steps;
    private final LeftPanel left;
    private final SharesPanel shares;
    private final NotesPanel notes;
    private final PicturesPanel pictures;
    private final TimePanel time;
    private final LogPanel log;
    private String row = "";
    private JobState state;

    SidePanel(
            Words words,
            Supplier<Choices> choices,
            Door door,
            Consumer<CellAt> select,
            Consumer<String> begin,
            IntConsumer openPicture) {
        this.steps = new StepsPanel(words, begin);
        this.left = new LeftPanel(words, select, begin);
        this.shares = new SharesPanel(words, choices);
        this.notes = new NotesPanel(words, select, begin);
        this.pictures = new PicturesPanel(words, openPicture);
        this.time = new TimePanel(words, choices, door);
        this.log = new LogPanel(words, begin);
        pages.addTab(words.say("page.left"), left.component());
        pages.addTab(words.say("page.notes"), notes.component());
        pages.addTab(words.say("page.shares"), shares.component());
        pages.addTab(words.say("page.pictures"), pictures.component());
        pages.addTab(words.say("page.time"), time.component());
        pages.addTab(words.say("page.log"), log.component());
        pages.setName("pages");
        pages.setTabLayoutPolicy(JTabbedPane.WRAP_TAB_LAYOUT);
        pages.putClientProperty(
                "FlatLaf.style", "rotateTabRuns: false; tabHeight: 27"); // a page's name never moves under a finger
        pages.putClientProperty("JTabbedPane.tabInsets", new java.awt.Insets(4, 7, 4, 7));
        pages.getAccessibleContext().setAccessibleName(words.say("page.name"));
        pages.addChangeListener(turned -> time.shown(pages.getSelectedComponent() == time.component()));
        panel.add(steps(), "wmin 0, hmin 60px");
        panel.add(pages, "wmin 0, hmin 110px");
        panel.setMinimumSize(new java.awt.Dimension(280, 100));
    }

    /** The steps, which scroll where letters are so large that they would take all the room. */
    private JComponent steps() {
        Column column = new Column(new MigLayout("insets 0, fillx", "[grow, fill]"));
        column.setOpaque(false);
        column.add(steps.component(), "wmin 0");
        JScrollPane scroll = new JScrollPane(column);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }

    JComponent component() {
        return panel;
    }

    /** Brings what is left to the front, for the keys. */
    void goLeft() {
        pages.setSelectedComponent(left.component());
        left.focus();
    }

    void show(Shown shown) {
        state = shown.state();
        steps.show(shown);
        left.show(shown);
        pages.setTitleAt(0, everyblade.words.Visible.text(left.title()));
        notes.show(shown.notes());
        pictures.show(state);
        time.show(state);
        log.show(state);
        showShares();
    }

    /** What is to be done next; empty while nobody knows. */
    void next(java.util.Optional<NextToDo> step) {
        steps.next(step);
    }

    /** Shows what belongs to this row. */
    void chosen(String chosenRow) {
        row = chosenRow;
        showShares();
    }

    private void showShares() {
        if (state != null && !row.isEmpty()) {
            shares.show(state, row);
        }
    }

    /** Shows the next page. */
    void nextPage() {
        pages.setSelectedIndex((pages.getSelectedIndex() + 1) % pages.getTabCount());
    }
}
