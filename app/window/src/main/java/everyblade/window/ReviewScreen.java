package everyblade.window;

import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.session.JobState;
import everyblade.session.job.Reviewer;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.ComparedLine;
import everyblade.window.view.Replay;
import everyblade.window.view.ReviewDesk;
import everyblade.window.view.ReviewKey;
import everyblade.window.view.RiskLine;
import everyblade.window.view.SaidLine;
import everyblade.window.view.TipSight;
import everyblade.words.Words;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/**
 * The screen of a reviewer: the map with a replay below it, and beside it first what was done, and only once they have said
 * what they would still want to see, what the technician makes of it.
 */
final class ReviewScreen {

    private static final int WIDTH = 460;
    private static final String FIRST = "first";
    private static final String BOTH = "both";
    private static final String COMPARED = "compared";

    /** What the screen asks of the window. */
    interface Doing {

        /** Leaves the screen. */
        void back();

        /** Asks which record to hold this one against. */
        Optional<Path> otherRecord();
    }

    private final ReviewDesk desk;
    private final Door door;
    private final Words words;
    private final Supplier<Choices> choices;
    private final Doing doing;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final Strip strip = new Strip();
    private final Strip notice = new Strip();
    private final JTextField name = new JTextField();
    private final CardLayout cards = new CardLayout();
    private final JPanel side = new JPanel(cards);
    private final ReplayMap map;
    private final FirstLookPanel first;
    private final BothSidesPanel both;
    private final ComparedPanel compared;
    private final ReplayBar replay;
    private JobState state;
    private boolean blind;

    /**
     * @param desk of the record; used through the door only
     * @param state of it
     * @param blind whether the reviewer has yet to say what they would still want to see
     * @param by the name under which they review; blank if they have not said
     */
    ReviewScreen(
            ReviewDesk desk,
            JobState state,
            boolean blind,
            String by,
            Door door,
            Words words,
            Supplier<Choices> choices,
            Doing doing) {
        this.desk = desk;
        this.state = state;
        this.blind = blind;
        this.door = door;
        this.words = words;
        this.choices = choices;
        this.doing = doing;
        this.map = new ReplayMap(words, choices, this::selected);
        this.first = new FirstLookPanel(words, this::say, this::seek, this::select, this::showAll);
        this.both = new BothSidesPanel(words, door, this::say, this::turnTo, this::select, this::compare);
        this.compared = new ComparedPanel(words, line -> line.cell().ifPresent(this::show), this::turnBack);
        this.replay = new ReplayBar(words, choices, door, System::nanoTime, frame -> map.show(frame.state()));
        name.setText(by);
        lay();
        keys();
        tellOfTheRecord();
        open();
    }

    private void lay() {
        side.add(first.component(), FIRST);
        side.add(both.component(), BOTH);
        side.add(compared.component(), COMPARED);
        JPanel right =
                new JPanel(new MigLayout("insets 6 8 4 10, fill, wrap, gapy 6", "[grow, fill]", "[][grow, fill]"));
        JPanel who = new JPanel(new MigLayout("insets 0, fillx", "[][grow, fill]"));
        JLabel label = Texts.label(words.say("review.name"));
        label.setLabelFor(name);
        name.setName("reviewer");
        who.add(label);
        who.add(name, "hmin 34");
        right.add(who, "wmin 0");
        right.add(side, "wmin 0, hmin 0");
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, map.component(), right);
        split.setBorder(null);
        split.setResizeWeight(1);
        map.component().setMinimumSize(new Dimension(300, 200));
        map.component().setPreferredSize(new Dimension(500, 500));
        right.setMinimumSize(new Dimension(320, 200));
        right.setPreferredSize(new Dimension(WIDTH, 500));
        replay.component().setBorder(BorderFactory.createEmptyBorder());
        JPanel strips = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap, hidemode 3", "[grow, fill]"));
        strips.add(strip, "wmin 0");
        strips.add(notice, "wmin 0");
        notice.setVisible(false);
        panel.add(strips, BorderLayout.NORTH);
        panel.add(split, BorderLayout.CENTER);
        panel.add(replay.component(), BorderLayout.SOUTH);
    }

    private void keys() {
        Map<ReviewKey, Runnable> actions = new EnumMap<>(ReviewKey.class);
        actions.put(ReviewKey.PLAY, replay::turn);
        actions.put(ReviewKey.BACK_ONE, replay::back);
        actions.put(ReviewKey.ON_ONE, replay::on);
        actions.put(ReviewKey.SLOWER, () -> replay.faster(-1));
        actions.put(ReviewKey.FASTER, () -> replay.faster(1));
        actions.put(ReviewKey.FIRST, () -> replay.seek(0));
        actions.put(ReviewKey.LAST, () -> replay.seek(replay.clock().length()));
        actions.put(ReviewKey.GO_MAP, map::focus);
        actions.put(ReviewKey.GO_LIST, () -> {
            if (blind) {
                first.focusList();
            } else {
                both.focusList();
            }
        });
        actions.put(ReviewKey.GO_SAID, () -> {
            if (blind) {
                first.focusSaid();
            } else {
                both.focusSaid();
            }
        });
        actions.put(ReviewKey.GO_WORDS, () -> form().focus());
        actions.put(ReviewKey.SHOW_ALL, this::showAll);
        actions.put(ReviewKey.COMPARE, this::compare);
        actions.put(ReviewKey.BACK, doing::back);
        actions.forEach((key, action) -> key.keys().forEach(one -> Keys.within(panel, one, action)));
    }

    private SayForm form() {
        return blind ? first.form() : both.form();
    }

    /** What a reviewer must know before anything else: that nothing is changed, and what is wrong with the record. */
    private void tellOfTheRecord() {
        Theme theme = Looks.theme(choices.get());
        boolean wrong = !desk.notices().isEmpty();
        String told = words.say(
                "review.readOnly", state.fold().entries().size(), state.head().substring(0, 12));
        String notice = state.model().notice().map(said -> " " + said).orElse("");
        strip.show(
                String.join(
                        "\n",
                        Stream.concat(desk.notices().stream(), Stream.of(told + notice))
                                .toList()),
                Looks.colour(theme, wrong ? Ink.PAPER : Ink.LINE),
                wrong ? Looks.colour(theme, Ink.ALERT) : panel.getBackground(),
                List.of());
    }

    /** Tells something about what was wanted. */
    void tell(String line) {
        Theme theme = Looks.theme(choices.get());
        JButton close = Texts.button(words.say("banner.close"));
        close.setName("banner.close");
        close.addActionListener(pressed -> notice.setVisible(false));
        notice.show(line, Looks.colour(theme, Ink.LINE), Looks.colour(theme, Ink.PART_WASH), List.of(close));
    }

    /** What there is to be shown and played, worked out behind the door. */
    private record Worked(Replay replay, TipSight tip) {}

    private void open() {
        cards.show(side, blind ? FIRST : BOTH);
        map.tellFigures(!blind);
        boolean now = blind;
        door.run(words.say("review.wait"), () -> new Worked(desk.replay(now), desk.tip()), worked -> {
            replay.open(worked.replay(), worked.tip());
            show(state);
        });
    }

    private void show(JobState newState) {
        state = newState;
        if (blind) {
            first.show(state);
        } else {
            both.show(state);
        }
    }

    JComponent component() {
        return panel;
    }

    ReviewDesk desk() {
        return desk;
    }

    JobState state() {
        return state;
    }

    ReplayMap map() {
        return map;
    }

    ReplayBar replay() {
        return replay;
    }

    boolean blind() {
        return blind;
    }

    /** The name under which the reviewer speaks; blank if they have not said. */
    String by() {
        return name.getText().strip();
    }

    /** Puts the focus where the reviewer begins. */
    void focus() {
        if (by().isEmpty()) {
            name.requestFocusInWindow();
        } else {
            form().focus();
        }
    }

    private void seek(int entry) {
        replay.seek(entry);
    }

    private void select(SaidLine line) {
        line.cell().ifPresent(this::show);
    }

    /** Shows the place of a line as the whole record has it; else the record when the line came into it. */
    private void turnTo(RiskLine line) {
        if (line.cell().isPresent()) {
            replay.seek(replay.clock().length());
            show(line.cell().get());
        } else {
            line.entry().ifPresent(replay::seek);
        }
    }

    private void show(CellAt cell) {
        map.select(cell);
        selected(cell);
    }

    private void selected(CellAt cell) {
        form().at(
                        Optional.of(cell),
                        at -> state.coverage().row(at.row()).zoning().names().get(at.zone()));
    }

    private void compare() {
        if (blind) {
            tell(words.say("review.blindYet"));
            return;
        }
        doing.otherRecord()
                .ifPresent(folder -> door.watched(
                        words.say("review.wait.compare"),
                        progress -> ComparedLine.of(desk.compared(folder, progress), words),
                        lines -> lines.ifPresent(all -> {
                            cards.show(side, COMPARED);
                            compared.show(folder.toString(), all);
                        })));
    }

    private void turnBack() {
        cards.show(side, BOTH);
        both.focusList();
    }

    private void say(What what, String text, Optional<ReviewedPlace> place) {
        keep(new Reviewer.Said(what, text, place, OptionalInt.empty()), () -> form().said());
    }

    private void showAll() {
        if (blind) {
            keep(new Reviewer.Said(What.SHOWN, "", Optional.empty(), OptionalInt.empty()), () -> {
                blind = false;
                open();
                map.selected().ifPresent(this::selected);
                both.focusList();
            });
        }
    }

    private void keep(Reviewer.Said said, Runnable then) {
        String by = by();
        if (by.isEmpty()) {
            tell(words.say("review.noName"));
            name.requestFocusInWindow();
            return;
        }
        door.run(words.say("review.wait.keep"), () -> desk.say(by, List.of(said)), newState -> {
            then.run();
            show(newState);
            desk.notices(by).forEach(this::tell);
        });
    }

    /** Plays no more. */
    void close() {
        replay.close();
    }
}
