package everyblade.window;

import everyblade.session.JobState;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.OpenLine;
import everyblade.window.view.PictureTask;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;

/**
 * The middle of a job's screen: the map with the usual panels beside it, or for a while a page that needs all the room
 * there, or a picture in place of the map.
 */
final class Middle {

    private static final int WIDTH = 325;

    /** So much of what letters grow the side grows: its lines break, and the map needs room too. */
    private static final double GROWS = 0.6;

    /** What the pages ask of the screen. */
    interface Doing {

        /** Says an entry. */
        void enter(String line);

        /** Puts text into the entry line, to go on with. */
        void begin(String text);

        /** Turns the map to a cell. */
        void select(CellAt cell);

        /** Goes back to the entry line. */
        void focusEntry();

        /** The job's pictures; may take long. */
        Callable<Album> album();
    }

    private enum Page {
        USUAL,
        CLOSING,
        FINDING,
        PICTURE
    }

    private final Words words;
    private final Door door;
    private final Doing doing;
    private final ClosingPanel closing;
    private final FindingPanel finding;
    private final PicturePanel picture;
    private final CardLayout fronts = new CardLayout();
    private final JPanel front = new JPanel(fronts);
    private final CardLayout sides = new CardLayout();
    private final JPanel side = new JPanel(sides);
    private final JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, front, side);
    private Runnable report = () -> {};
    private Runnable handover = () -> {};
    private Runnable sign = () -> {};
    private Page page = Page.USUAL;
    private JobState state;

    /**
     * The usual page.
     *
     * @param map in front
     * @param usual beside it
     */
    Middle(
            JComponent map,
            JComponent usual,
            Words words,
            Supplier<Choices> choices,
            Door door,
            InstantSource clock,
            Doing doing) {
        this.words = words;
        this.door = door;
        this.doing = doing;
        this.closing = new ClosingPanel(words, door, new AtClosing());
        this.finding = new FindingPanel(words, choices, door, clock, new AtFinding());
        this.picture = new PicturePanel(words, door, doing::begin, this::usual);
        front.add(map, Page.USUAL.name());
        front.add(picture.picture(), Page.PICTURE.name());
        side.add(usual, Page.USUAL.name());
        side.add(closing.component(), Page.CLOSING.name());
        side.add(finding.component(), Page.FINDING.name());
        side.add(picture.component(), Page.PICTURE.name());
        int chosen = choices.get().side();
        side.setPreferredSize(new Dimension(chosen > 0 ? chosen : (int) (WIDTH * (1 + GROWS * (Looks.text() - 1))), 0));
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder(0, 8, 4, 8));
    }

    JComponent component() {
        return split;
    }

    /** How wide what stands beside the map is now. */
    int sideWidth() {
        return side.getWidth();
    }

    /** What writes the report, and the page for the next shift, and what asks for a signature. */
    void onPages(Runnable writesReport, Runnable writesHandover, Runnable signs) {
        report = writesReport;
        handover = writesHandover;
        sign = signs;
    }

    void show(Shown shown) {
        state = shown.state();
        closing.show(state);
        finding.show(shown);
        picture.show(state);
    }

    /** What belongs to this cell comes first. */
    void selected(CellAt cell) {
        finding.at(cell);
    }

    /** Brings the closing list up, or goes back. */
    void turnClosing() {
        turn(page == Page.CLOSING ? Page.USUAL : Page.CLOSING);
    }

    /** Brings up the findings, and the form for a new one at this cell. */
    void find(Optional<CellAt> cell) {
        turn(Page.FINDING);
        cell.ifPresent(finding::at);
    }

    /** Brings up the newest picture, or goes back. */
    void turnPictures() {
        if (page == Page.PICTURE) {
            usual();
        } else {
            openPicture(album -> album.photos().stream().reduce((earlier, later) -> later));
        }
    }

    /** Brings up the picture that an entry names. */
    void picture(int entry) {
        openPicture(album -> album.find(String.valueOf(entry)));
    }

    private void openPicture(Function<Album, Optional<JobPhoto>> first) {
        door.run(words.say("wait.pictures"), doing.album(), album -> {
            turn(Page.PICTURE);
            picture.open(album, first.apply(album));
        });
    }

    private void usual() {
        turn(Page.USUAL);
    }

    private void turn(Page to) {
        page = to;
        sides.show(side, to.name());
        fronts.show(front, (to == Page.PICTURE ? Page.PICTURE : Page.USUAL).name());
        closing.shown(to == Page.CLOSING);
        switch (to) {
            case CLOSING -> closing.focus();
            case FINDING -> finding.focus();
            case PICTURE -> picture.focus();
            case USUAL -> doing.focusEntry();
        }
    }

    /** What a person does at the form for a finding. */
    private final class AtFinding implements FindingPanel.Doing {

        @Override
        public void enter(List<String> lines) {
            usual();
            lines.forEach(doing::enter);
        }

        @Override
        public void turnTo(CellAt cell) {
            doing.select(cell);
        }

        @Override
        public void picture(CellAt cell) {
            openPicture(album -> PictureTask.about(album, state, cell));
        }

        @Override
        public void back() {
            usual();
        }
    }

    /** What a person does at the closing list. */
    private final class AtClosing implements ClosingPanel.Doing {

        @Override
        public void turnTo(OpenLine line) {
            line.cell().ifPresent(doing::select);
            if (!line.entry().isEmpty()) {
                doing.begin(line.entry());
            }
        }

        @Override
        public void back() {
            usual();
        }

        @Override
        public void report() {
            report.run();
        }

        @Override
        public void handover() {
            handover.run();
        }

        @Override
        public void sign() {
            sign.run();
        }
    }
}
