package everyblade.window;

import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Shown;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/**
 * What now: the next steps, and pages with what is left, findings, pictures, shares, the course of the job, entries. Where the
 * window is wide, findings, course and entries stand open in a column of their own instead.
 */
final class SidePanel {

    private static final int TAB = 27;
    private static final String STEPS = "42%";

    /** So much of the column beside. */
    private static final String THIRD = "grow, push, hmin 60, wmin 0, sizegroup";

    private final Words words;
    private final JPanel panel = new Card(new MigLayout(
            "insets 6 10 6 10, fill, wrap, gapy 6",
            "[0:0:, grow, fill]",
            "[shrinkprio 100][grow, fill, shrinkprio 200]"));
    private final JPanel beside = new Card(new MigLayout("insets 6 10 6 10, fill, wrap, gapy 4", "[0:0:, grow, fill]"));
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
    private boolean wide;

    SidePanel(
            Words words,
            Supplier<Choices> choices,
            Door door,
            Consumer<CellAt> select,
            Consumer<String> begin,
            IntConsumer openPicture) {
        this.words = words;
        this.steps = new StepsPanel(words, begin);
        this.left = new LeftPanel(words, select, begin);
        this.shares = new SharesPanel(words, choices);
        this.notes = new NotesPanel(words, select, begin);
        this.pictures = new PicturesPanel(words, openPicture);
        this.time = new TimePanel(words, choices, door);
        this.log = new LogPanel(words, begin);
        fill();
        pages.setOpaque(false);
        pages.setName("pages");
        pages.setTabLayoutPolicy(JTabbedPane.WRAP_TAB_LAYOUT);
        pages.putClientProperty(
                "FlatLaf.style", "rotateTabRuns: false; tabHeight: " + TAB); // a page's name never moves under a finger
        pages.putClientProperty("JTabbedPane.tabInsets", new java.awt.Insets(4, 7, 4, 7));
        pages.getAccessibleContext().setAccessibleName(words.say("page.name"));
        pages.addChangeListener(turned -> looking());
        panel.add(steps(), "wmin 0, h " + STEPS + "!"); // however many there are, the pages below stay where they are
        panel.add(pages, "wmin 0, hmin 110px");
        panel.setMinimumSize(new java.awt.Dimension(280, 100));
        beside.setName("beside");
    }

    /** The pages, and what stands open beside them. */
    private void fill() {
        pages.removeAll();
        beside.removeAll();
        page("page.left", ButtonSign.LEFT, left.component());
        place("page.notes", ButtonSign.FIND, notes.component());
        page("page.shares", ButtonSign.SHARES, shares.component());
        page("page.pictures", ButtonSign.PHOTO, pictures.component());
        place("page.time", ButtonSign.COURSE, time.component());
        place("page.log", ButtonSign.ENTRIES, log.component());
        beside.setVisible(wide);
        looking();
    }

    private void place(String key, ButtonSign sign, JComponent component) {
        if (wide) {
            JLabel title = Texts.bold(Texts.label(words.say(key)), 1);
            title.setIcon(sign);
            beside.add(title, "wmin 0");
            beside.add(component, THIRD);
        } else {
            page(key, sign, component);
        }
    }

    /** A page; where letters are large its sign alone is on its tab, and its name where a pointer rests on it. */
    private void page(String key, ButtonSign sign, JComponent component) {
        String name = words.say(key);
        pages.addTab(Looks.large() ? "" : Visible.text(name), sign, component, Visible.text(name));
        pages.getAccessibleContext()
                .getAccessibleChild(pages.getTabCount() - 1)
                .getAccessibleContext()
                .setAccessibleName(Visible.text(name));
    }

    private void looking() {
        time.shown(wide || pages.getSelectedComponent() == time.component());
    }

    /** Whether there is room for a column beside the pages. */
    void wide(boolean isWide) {
        if (isWide != wide) {
            wide = isWide;
            fill();
            title();
            panel.revalidate();
            beside.revalidate();
        }
    }

    /** Findings, course and entries, where there is room for them; else not visible. */
    JComponent beside() {
        return beside;
    }

    /** The steps, which scroll where letters are so large that they would take all the room. */
    private JComponent steps() {
        Column column = new Column(new MigLayout("insets 0, fillx", "[grow, fill]"));
        column.setOpaque(false);
        column.add(steps.component(), "wmin 0");
        JScrollPane scroll = new JScrollPane(column) {

            private static final long serialVersionUID = 1;

            /** Steps that come or go give room to the pages below, or take it. */
            @Override
            public boolean isValidateRoot() {
                return false;
            }
        };
        column.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                column.revalidate(); // lines that break know their height only once they know their width
            }
        });
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
        title();
        notes.show(shown.notes());
        pictures.show(state);
        time.show(state);
        log.show(state);
        showShares();
    }

    private void title() {
        pages.setTitleAt(0, Visible.text(Looks.large() ? Integer.toString(left.count()) : left.title()));
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
