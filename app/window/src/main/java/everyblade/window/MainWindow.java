package everyblade.window;

import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.practice.drill.Truth;
import everyblade.session.CommandRun;
import everyblade.session.Keeping;
import everyblade.session.Session;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.model.Shelf;
import everyblade.window.view.Choices;
import everyblade.window.view.Practising;
import everyblade.window.view.RecentJob;
import everyblade.window.view.ReviewDesk;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Image;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** The one window: a start screen or a job, and what belongs to neither. */
final class MainWindow {

    private static final int REFRESH_MILLIS = 2000;
    private static final int WORDS_TO_PICK = 46;

    private final Surroundings around;
    private final Shelf shelf;
    private final CommandRun commands;
    private final Runnable closed;
    private final Places places;
    private final JFrame frame;
    private final JPanel content;
    private final JPanel foot;
    private final Timer refreshing;
    private Choices choices;
    private Words words;
    private final Waiting waiting;
    private final Faults faults;
    private final Door door;
    private final Authoring authoring;
    private final Reviewing reviewing;
    private final Following following;
    private Optional<JobScreen> job = Optional.empty();
    private Optional<StartPanel> start = Optional.empty();
    private Optional<Drilling> drilling = Optional.empty();

    MainWindow(Surroundings around, Shelf shelf, CommandRun commands, Runnable closed) {
        this.around = around;
        this.shelf = shelf;
        this.commands = commands;
        this.closed = closed;
        this.places = new Places(around);
        this.choices = places.choices();
        Looks.use(choices); // before anything is made, for which Swing would have another look made ready
        this.frame = new JFrame("Everyblade");
        this.content = new JPanel(new BorderLayout());
        this.foot = new JPanel(new BorderLayout());
        this.waiting = new Waiting();
        this.faults = new Faults(places.faults(), around.clock(), this::faulty);
        this.door = new Workers(waiting, this::stopped, faults::add);
        this.following = new Following(() -> new Workers(new Waiting(), failure -> {}, faults::add), around);
        this.authoring = new Authoring(door, around.clock(), this::startAgain);
        this.reviewing = new Reviewing(door, new AtReview());
        this.refreshing = new Timer(REFRESH_MILLIS, due -> refresh());
        foot.add(following.component());
        speak(choices.language());
        frame.setContentPane(new Over(content, waiting.component(), this::foot, this::aboveFoot, false));
        new FramePlace(frame).begin(choices.place());
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        Presence presence = new Presence(around.clock(), () -> job.ifPresent(JobScreen::welcomeBack), this::close);
        frame.addWindowListener(presence);
        frame.addWindowFocusListener(presence);
    }

    /** What is waited for is told above the entry line of a job, else at the lower edge. */
    private Component foot() {
        return job.map(screen -> (Component) screen.entry().component())
                .filter(entry -> SwingUtilities.isDescendingFrom(entry, content))
                .orElse(foot);
    }

    /** Words to pick, and what is wrong with an entry, come between. */
    private int aboveFoot() {
        return foot() == foot ? 0 : Looks.scaled(WORDS_TO_PICK);
    }

    /** Speaks this language from now on, wherever something is shown anew. */
    void speak(Locale language) {
        words = Words.of(language);
        waiting.speak(words);
    }

    /** Shows the window with the start screen. */
    void open() {
        show();
        frame.setVisible(true);
        start.ifPresent(StartPanel::focus);
        focus();
        authoring.screen().ifPresent(AuthorScreen::watch);
        reviewing.screen().ifPresent(ReviewScreen::focus);
        refreshing.start();
    }

    /** Bears this sign from now on, in all its sizes. */
    void sign(List<Image> sizes) {
        frame.setIconImages(sizes);
    }

    /** Opens records as they are to be shown now. */
    JobOpening opening() {
        return new JobOpening(around, words, choices.pictures(), waiting);
    }

    /**
     * Opens a drill, and goes through it once more if it has ended; not on the event thread.
     *
     * @return what shows it, on the event thread
     */
    Runnable drilled(DrillRecord drill, Truth truth) {
        Practising practising = new Practising(drill, truth);
        Optional<DrillRecord.Told> told = drill.folder().ended()
                ? Optional.of(drill.told(truth, drill.job().fold(), drill.job().coverage(), waiting.progress()))
                : Optional.empty();
        JobOpening.Opened opened = opening().drill(drill.job().folder().path());
        return () -> practise(practising, opened, told);
    }

    JFrame frame() {
        return frame;
    }

    Words words() {
        return words;
    }

    Choices choices() {
        return choices;
    }

    Optional<JobScreen> job() {
        return job;
    }

    Optional<AuthorScreen> authoring() {
        return authoring.screen();
    }

    Optional<ReviewScreen> reviewing() {
        return reviewing.screen();
    }

    Papers papers() {
        return new Papers(frame, new JobStarting(around, shelf, commands), places, door, words, drilling.isPresent());
    }

    private JobScreen screen(JobOpening.Opened opened) {
        if (!around.packed().holds(opened.shown().state().folder())) {
            choose(choices.opened(opened.shown().state().folder()));
        }
        JobScreen screen = new JobScreen(opened.session(), opened.shown(), door, words, () -> choices, around.clock());
        screen.banners()
                .onTrouble(
                        () -> saving(screen).again(),
                        () -> saving(screen).elsewhere(),
                        () -> saving(screen).tryWriting());
        BarDoing doing = new BarDoing(this, places);
        screen.middle().onPages(doing::report, doing::handover, () -> papers().sign(screen));
        drilling.ifPresent(drill -> drill.show(
                screen,
                words,
                new MapStyle(
                        Looks.theme(choices),
                        choices.fromAhead() ? Facing.FORWARD_LOOKING_AFT : Facing.AFT_LOOKING_FORWARD)));
        screen.onFollowed(following::nudge);
        return screen;
    }

    /** Lays everything out: after a job was opened or left, and after the language was changed. */
    void show() {
        content.removeAll();
        start = Optional.empty();
        JComponent middle = drilling.map(Drilling::component)
                .or(() -> job.map(JobScreen::component))
                .or(authoring::component)
                .or(reviewing::component)
                .orElseGet(this::startScreen);
        TopBar bar = new TopBar(words, choices, job, new BarDoing(this, places));
        content.add(bar.component(), BorderLayout.NORTH);
        content.add(middle, BorderLayout.CENTER);
        content.add(foot, BorderLayout.SOUTH);
        bar.bind(content);
        frame.setTitle(Visible.text(job.map(screen -> screen.state().model().name() + ", "
                        + screen.state().beginning().serial() + " – Everyblade")
                .or(authoring::title)
                .or(reviewing::title)
                .orElse("Everyblade")));
        content.revalidate();
        content.repaint();
    }

    /** Shows something else in the middle, under the same bar. */
    void middle(JComponent component) {
        content.remove(((BorderLayout) content.getLayout()).getLayoutComponent(BorderLayout.CENTER));
        content.add(component, BorderLayout.CENTER);
        content.revalidate();
        content.repaint();
    }

    /** Back on the start screen, with the focus on its first button, since what had it is gone. */
    void startAgain() {
        show();
        frame.validate();
        start.ifPresent(StartPanel::focus);
    }

    Starting starting() {
        return new Starting(this, around, shelf, commands, places, door);
    }

    private JComponent startScreen() {
        StartPanel shown = new StartPanel(words, places.demo(), choices.recent(), starting());
        start = Optional.of(shown);
        return shown.component();
    }

    /** Keeps the job that is worked on in the shop's store as well, if that is to be. */
    void follow() {
        boolean wanted = choices.follows() && !choices.store().isBlank() && drilling.isEmpty();
        Optional<Path> worked = job.map(screen -> screen.state().folder())
                .filter(folder -> wanted && !around.packed().holds(folder));
        worked.ifPresentOrElse(folder -> following.begin(choices.store(), around.path(folder), words), following::end);
    }

    /** Keeps what the person has chosen. */
    void choose(Choices other) {
        choices = other;
        places.keep(choices);
    }

    private void stopped(Failure failure) {
        failed(failure.line(words));
    }

    void failed(String message) {
        if (job.isPresent()) {
            job.get().tell(List.of(message));
        } else if (authoring.screen().isPresent()) {
            authoring.screen().get().tell(message);
        } else if (reviewing.screen().isPresent()) {
            reviewing.screen().get().tell(message);
        } else {
            JOptionPane.showMessageDialog(frame, Visible.text(message), "Everyblade", JOptionPane.ERROR_MESSAGE);
        }
    }

    private void faulty(String fault, Path kept) {
        SwingUtilities.invokeLater(() -> failed(words.say("fault.told", fault, kept)));
    }

    /** What went wrong in this window without anybody seeing to it; from any thread. */
    void fault(Throwable fault) {
        faults.add(fault);
    }

    /** Brings the focus to where a job is gone on with. */
    void focus() {
        job.ifPresent(screen -> drilling.ifPresentOrElse(
                drill -> drill.focus(screen), () -> screen.entry().focus()));
    }

    /** Goes on with this job. */
    void enter(JobOpening.Opened opened) {
        job = Optional.of(screen(opened));
        show();
        follow();
        focus();
    }

    /** Goes on with this drill, or shows what came of it. */
    private void practise(Practising practising, JobOpening.Opened opened, Optional<DrillRecord.Told> told) {
        Door eyeDoor = new Workers(new Waiting(), this::stopped, faults::add);
        drilling = Optional.of(
                new Drilling(practising, told, door, eyeDoor, around.clock(), words, waiting.progress(), this::show));
        enter(opened);
    }

    /** Shows the engine model that is written in a folder. */
    void author(Path folder) {
        authoring.open(folder, words, choices);
        show();
    }

    /** Shows a record to be reviewed. */
    void review(ReviewDesk desk) {
        reviewing.open(desk, words, () -> choices);
        show();
        reviewing.screen().ifPresent(ReviewScreen::focus);
    }

    /** Gives the job free; behind the door, after whatever is still being written. */
    private void leave(Runnable then) {
        if (job.isEmpty()) {
            then.run();
            return;
        }
        JobScreen screen = job.get();
        choose(choices.side(screen.middle().sideWidth())
                .left(RecentJob.of(screen.state(), screen.open(), around.clock().instant(), ZoneId.systemDefault())));
        Session session = screen.session();
        job = Optional.empty();
        following.end();
        drilling.ifPresent(Drilling::close);
        drilling = Optional.empty();
        door.run(
                words.say("wait.save"),
                () -> {
                    session.close();
                    return true;
                },
                done -> then.run());
    }

    /** Leaves what is shown, once it is settled and if nothing would be lost, and then does this. */
    void leaveFor(Runnable then) {
        onceSettled(() -> {
            if (mayLeave()) {
                leave(then);
            }
        });
    }

    /** Makes what is neither a job nor the start screen anew. */
    void again(boolean reviews) {
        authoring.again(words, choices);
        if (reviews) {
            reviewing.again(words, () -> choices);
        }
    }

    /** Everything anew, in other words or letters, once what it says was worked out; what was being typed stays. */
    void anew() {
        if (job.isEmpty()) {
            again(true);
            show();
            return;
        }
        JobScreen before = job.get();
        door.run(words.say("wait.open"), () -> opening().shown(before.session()), opened -> {
            JobScreen screen = screen(opened);
            screen.entry().begin(before.entry().text());
            job = Optional.of(screen);
            show();
            focus();
        });
    }

    private boolean mayLeave() {
        return job.map(screen -> saving(screen).mayLeave()).orElse(true);
    }

    /** What was entered is answered before anything else becomes of the job. */
    void onceSettled(Runnable then) {
        job.ifPresentOrElse(screen -> screen.entry().onceSettled(then), then);
    }

    private void refresh() {
        job.filter(screen -> screen.state().keeping() instanceof Keeping.ReadOnly)
                .ifPresent(JobScreen::refresh);
    }

    Saving saving(JobScreen screen) {
        return new Saving(screen, places, words, frame, folder -> choose(choices.opened(folder)));
    }

    /** Closes the window, unless entries would be lost and the person wants to save them first. */
    void close() {
        onceSettled(this::closeNow);
    }

    private void closeNow() {
        if (!mayLeave()) {
            return;
        }
        refreshing.stop();
        choose(choices.place(new FramePlace(frame).now()));
        authoring.close();
        reviewing.close();
        frame.dispose();
        leave(() -> {
            door.close();
            closed.run();
        });
    }

    /** What a reviewer's screen asks. */
    private final class AtReview implements ReviewScreen.Doing {

        @Override
        public void back() {
            reviewing.close();
            startAgain();
        }

        @Override
        public Optional<Path> otherRecord() {
            return places.askFolder(frame, words.say("review.compare"));
        }
    }
}
