package everyblade.window;

import everyblade.fact.Fact;
import everyblade.session.Answer;
import everyblade.session.EntryLine;
import everyblade.session.JobState;
import everyblade.session.Session;
import everyblade.session.photo.Album;
import everyblade.window.map.CellAt;
import everyblade.window.view.Act;
import everyblade.window.view.ActLine;
import everyblade.window.view.Choices;
import everyblade.window.view.NewestPicture;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Shortcut;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.JComponent;

/**
 * The screen of one job: every panel shows the same state, and whatever a person says goes one way, through
 * {@link #enter}.
 */
final class JobScreen {

    /** What is done at the selected cell, wherever the focus is. */
    static final List<Act> OF_A_CELL = List.of(Act.FIND, Act.RECHECK);

    /** What these do depends on the last entry, which must be known. */
    private static final Set<Act> ON_THE_LAST = EnumSet.of(Act.AGAIN, Act.UNDO, Act.REDO);

    private final Session session;
    private final Door door;
    private final Words words;
    private final Supplier<Choices> choices;
    private final JobLayout layout;
    private final JComponent component;
    private final Banners banners;
    private final StagePanel stages;
    private final ViewPanel view;
    private final SidePanel side;
    private final Middle middle;
    private final EntryPanel entry;
    private final ActPanel acts;
    private final NumberPad numbers;
    private final Planning planning;
    private Consumer<Shown> watcher = watching -> {};
    private Consumer<Shown> neighbour = watching -> {};
    private Runnable follower = () -> {};
    private Shown shown;
    private int open;

    /**
     * @param session of the job; used through the door only
     * @param choices of the person, as they are at any moment
     */
    JobScreen(Session session, Shown first, Door door, Words words, Supplier<Choices> choices, InstantSource clock) {
        this.session = session;
        this.door = door;
        this.words = words;
        this.choices = choices;
        this.banners = new Banners(words, choices);
        this.stages = new StagePanel(words, choices, door, session.meshes());
        this.view = new ViewPanel(words, choices, this::act);
        this.side = new SidePanel(words, choices, door, this::select, this::begin, this::openPicture);
        this.layout = new JobLayout(stages.component(), view.component());
        this.middle = new Middle(layout.columns(), side.component(), words, choices, door, clock, new AtMiddle());
        this.entry = new EntryPanel(words, choices, door, clock, this::handIn, this::act);
        this.acts = new ActPanel(words, choices, this::act);
        this.numbers = new NumberPad(words, choices, entry);
        this.planning = new Planning(door, words, this::showNext);
        this.component = layout.whole(
                banners.component(), middle.component(), side, entry, List.of(acts.component(), numbers.component()));
        for (Act ofACell : OF_A_CELL) {
            Shortcut.of(ofACell).keys().forEach(key -> Keys.within(component, key, () -> act(ofACell)));
        }
        stages.onSelect(this::selected);
        stages.onChoose(row -> {
            side.chosen(row);
            filing();
        });
        view.onSelect(this::select);
        banners.onShow(stages::taken);
        show(first);
        banners.opened(session.notices());
    }

    JComponent component() {
        return component;
    }

    JobState state() {
        return shown.state();
    }

    Words words() {
        return words;
    }

    Session session() {
        return session;
    }

    EntryPanel entry() {
        return entry;
    }

    StagePanel stages() {
        return stages;
    }

    SidePanel side() {
        return side;
    }

    /** The map with what stands beside it, or in place of it. */
    Middle middle() {
        return middle;
    }

    Banners banners() {
        return banners;
    }

    ActPanel acts() {
        return acts;
    }

    NumberPad numbers() {
        return numbers;
    }

    /** Shows another state of the job everywhere. */
    void show(Shown newShown) {
        shown = newShown;
        banners.show(shown);
        stages.show(shown.state());
        view.show(shown);
        side.show(shown);
        middle.show(shown);
        entry.show(shown);
        acts.show(shown.state());
        filing();
        planning.show(shown);
        watcher.accept(shown);
        neighbour.accept(shown);
        follower.run();
    }

    /** Puts something in the place of all stages, beside the row in view; it is told of each further state that is shown. */
    void inPlaceOfStages(JComponent other, Consumer<Shown> told) {
        layout.inPlaceOfStages(other);
        neighbour = told;
    }

    private void showNext(Optional<NextToDo> next) {
        side.next(next);
        entry.next(next.flatMap(NextToDo::entry));
        List<CellAt> closes = next.map(NextToDo::closes).orElse(List.of());
        stages.foresee(closes);
        view.foresee(closes);
    }

    /** What there is to be shown now; to be worked out behind the door. */
    private Shown now() {
        return Shown.of(session.state(), words, ZoneId.systemDefault());
    }

    /** Does something with the session behind the door, and shows what came of it. */
    <T> void work(String what, Callable<T> work, Consumer<T> then) {
        door.run(
                words.say(what),
                () -> {
                    T value = work.call();
                    return Map.entry(now(), Optional.ofNullable(value));
                },
                done -> {
                    show(done.getKey());
                    then.accept(done.getValue().orElse(null));
                });
    }

    /** Hands an entry in; the panels show it only when it is safe, or when it is known not to be. */
    private void handIn(String line, boolean meant) {
        door.run(
                words.say("wait.entry"),
                () -> {
                    Answer answer = answer(line, meant);
                    return Map.entry(
                            answer, answer instanceof Answer.Kept ? Optional.of(now()) : Optional.<Shown>empty());
                },
                said -> {
                    said.getValue().ifPresent(this::show);
                    if (said.getKey() instanceof Answer.Kept kept) {
                        banners.answered(kept);
                    }
                    entry.answered(said.getKey());
                });
    }

    /** A fault of the program itself. */
    record Fault(String fault) implements Fact {}

    /** The entry line must hear of whatever becomes of an entry, or it would wait for ever. */
    private Answer answer(String line, boolean meant) {
        try {
            return session.enter(EntryLine.expand(session.state(), line), meant, words);
        } catch (RuntimeException fault) {
            door.fault(fault);
            return new Answer.Refused(line, 1, new Fault(String.valueOf(fault)));
        }
    }

    /** Puts text into the entry line, to go on with. */
    private void begin(String text) {
        entry.begin(text);
    }

    /** Begins the entry that accepts all that no view shows, with a reason that the person may change. */
    void acceptUnshown() {
        if (entry.text().isBlank()) {
            begin("noaccess unshown because " + words.say("act.unshownBecause"));
        } else {
            entry.tell(words.say("act.typed"));
        }
    }

    /** Does what a key or button stands for. */
    void act(Act act) {
        if (ON_THE_LAST.contains(act) && entry.keeping()) {
            entry.tell(words.say("act.keeping"));
            return;
        }
        Optional<String> picture =
                act == Act.PHOTO ? choices.get().pictures().flatMap(NewestPicture::in) : Optional.empty();
        ActLine.Outcome outcome = new ActLine(shown.state(), entry.text(), stages.selected(), picture, words).of(act);
        if (outcome instanceof ActLine.Line line) {
            entry.say(line.text());
        } else if (outcome instanceof ActLine.Not not) {
            entry.tell(not.reason());
        } else if (act == Act.FIND) {
            middle.find(stages.selected());
        } else {
            entry.begin(((ActLine.Begin) outcome).text());
        }
    }

    private void openPicture(int entry) {
        middle.picture(entry);
    }

    private void selected(CellAt cell) {
        view.select(cell);
        middle.selected(cell);
        filing();
    }

    private void select(CellAt cell) {
        stages.select(cell);
        selected(cell);
    }

    /** What a finding is filed on is said before it is. */
    private void filing() {
        acts.fileOn(stages.chosen(), stages.selected());
    }

    /** Counts beside the job what is open before it can be closed; what was asked of an earlier state is given up. */
    void countOpen(Shown of, IntConsumer tell) {
        door.latest("open", () -> of.state().closing().items().size(), count -> {
            open = count;
            tell.accept(count);
        });
    }

    /** How much was open when it was last counted. */
    int open() {
        return open;
    }

    /** Tells of every state that is shown, this one included. */
    void onShown(Consumer<Shown> watching) {
        watcher = watching;
        watcher.accept(shown);
    }

    /** Calls whoever follows the job elsewhere after each further state that is shown. */
    void onFollowed(Runnable follows) {
        follower = follows;
    }

    /** What the pages of the middle ask of the screen. */
    private final class AtMiddle implements Middle.Doing {

        @Override
        public void enter(String line) {
            entry.enter(line);
        }

        @Override
        public void begin(String text) {
            JobScreen.this.begin(text);
        }

        @Override
        public void select(CellAt cell) {
            JobScreen.this.select(cell);
        }

        @Override
        public void focusEntry() {
            entry.focus();
        }

        @Override
        public Callable<Album> album() {
            return session::album;
        }
    }

    /** Brings up again what was going on, after something else had the person's attention. */
    void welcomeBack() {
        banners.welcomeBack(shown.where(), planning.next());
        entry.focus();
    }

    /** Shows the map and everything else as was chosen. */
    void restyle() {
        stages.restyle();
        view.restyle();
        show(shown);
    }

    /** Sees whether whoever else is writing has gone on. */
    void refresh() {
        door.latest(
                "refresh",
                () -> session.refresh() ? Optional.of(now()) : Optional.<Shown>empty(),
                changed -> changed.ifPresent(this::show));
    }

    /** What the person should be told that is not about an entry. */
    void tell(List<String> lines) {
        banners.opened(lines);
    }
}
