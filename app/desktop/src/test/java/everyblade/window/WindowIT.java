package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.record.JobFolder;
import everyblade.record.JournalLine;
import everyblade.record.LocalDisk;
import everyblade.session.Opening;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.session.photo.CameraPicture;
import everyblade.window.view.Choices;
import java.awt.AWTError;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real window on a screen, with a real keyboard and mouse as far as the window can tell. */
class WindowIT {

    @TempDir
    Path folder;

    private final Hands hands = hasScreen() ? new Hands() : null;
    private Workshop workshop;
    private Surroundings around;
    private MainWindow window;

    static boolean hasScreen() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException unreachable) {
            return false;
        }
    }

    @BeforeEach
    void needsAScreen() {
        if (!hasScreen() && Boolean.getBoolean("everyblade.screen.required")) {
            throw new AssertionError("there is no screen, and one is required here");
        }
        Assumptions.assumeTrue(hasScreen(), "left out: there is no screen to open a window on");
        workshop = Workshop.in(folder);
        workshop.write("models/ring/engine.json", Workshop.RING);
        Surroundings plain = workshop.around();
        around = new Surroundings(
                plain.in(),
                plain.out(),
                plain.err(),
                java.time.InstantSource.system(),
                Map.of(
                        "HOME",
                        folder.toString(),
                        "EVERYBLADE_MODELS",
                        folder.resolve("models").toString()),
                folder,
                Optional.empty(),
                new LocalDisk());
        Choices.first(Locale.ENGLISH)
                .opened(workshop.job())
                .write(folder.resolve(".config/everyblade/window.properties"));
    }

    @AfterEach
    void closeWindow() {
        if (window != null) {
            Offscreen.on(() -> {
                window.close();
                return true;
            });
        }
    }

    private JFrame open() {
        window = Offscreen.on(() -> {
            MainWindow made = new MainWindow(around, shelf(), Commands::run, () -> {});
            made.open();
            return made;
        });
        JFrame frame = window.frame();
        hands.until("the window to be in front", frame::isActive);
        return frame;
    }

    /** Where this machine's own models are not. */
    private Shelf shelf() {
        Shelf[] found = new Shelf[1];
        Opening look = (world, shelf, job) -> {
            found[0] = shelf;
            return 0;
        };
        Commands.run(around, look);
        return found[0];
    }

    private void untilFocused(String name) {
        hands.until("the focus at " + name, () -> {
            var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner != null && name.equals(owner.getName());
        });
    }

    private static List<String> kept(Path job) {
        return new JobFolder(new LocalDisk(), job).read() instanceof JobFolder.Readable readable
                ? readable.job().journal().lines().stream()
                        .map(JournalLine::text)
                        .toList()
                : List.of();
    }

    private String told() {
        return window.job().orElseThrow().entry().told();
    }

    private void fromTheMenu(JFrame frame, String name) {
        hands.click(frame, "bar.more");
        hands.click(frame, name);
    }

    /** The window knows what is on disk a moment later. */
    private void untilAnswered() {
        hands.until("the window to know that it is", () -> !told().startsWith("being kept"));
    }

    private void untilKept(Path job, String entry) {
        hands.until(entry + " on disk", () -> {
            List<String> kept = kept(job);
            return !kept.isEmpty() && kept.get(kept.size() - 1).equals(entry);
        });
        untilAnswered();
        hands.until(
                "the entry line empty",
                () -> Offscreen.find(window.frame(), JTextField.class, "entry")
                        .getText()
                        .isEmpty());
    }

    /** Types a line and Enter. */
    private void say(Path job, String entry) {
        hands.type(entry);
        hands.strike(KeyEvent.VK_ENTER);
        untilKept(job, entry);
    }

    @Test
    void aWholeJobIsDoneByKeyboardAloneFromTheNewJobToTheReport() {
        JFrame frame = open();
        Path job = folder.resolve("Everyblade").resolve("first");

        untilFocused("start.new");
        hands.strike(KeyEvent.VK_SPACE);
        untilFocused("form.model");
        for (String text :
                List.of("", "1001", "a routine look", "A. Technician", "training manual", "7", "8412,6", "11903")) {
            hands.type(text);
            Component field =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            hands.strike(KeyEvent.VK_TAB);
            hands.until("the field after " + text, () -> {
                Component now =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                return now != null && now != field;
            });
        }
        untilFocused("form.scopeTip");
        hands.strike(KeyEvent.VK_TAB);
        untilFocused("form.folder");
        hands.control(KeyEvent.VK_A);
        hands.type(job.toString());
        hands.strike(KeyEvent.VK_TAB);
        untilFocused("form.start");
        hands.strike(KeyEvent.VK_SPACE);

        untilFocused("entry");
        say(job, "heat 20 C");
        hands.type("vi");
        hands.strike(KeyEvent.VK_TAB);
        hands.type("p-r");
        hands.strike(KeyEvent.VK_ENTER);
        untilKept(job, "view p-r");
        say(job, "datum r 1 at 0");
        hands.type("31");
        hands.strike(KeyEvent.VK_ENTER);
        untilKept(job, "turn on 31 deg");
        hands.strike(KeyEvent.VK_F12);
        hands.until("the same again", () -> kept(job).size() == 9);
        untilAnswered();
        hands.control(KeyEvent.VK_Z);
        untilKept(job, "void 9 because it was taken back at once");
        say(job, "here 12");
        hands.type("1");
        hands.strike(KeyEvent.VK_F2);
        hands.until("a question about the count", () -> told().contains("Enter keeps it"));
        hands.strike(KeyEvent.VK_ESCAPE);
        hands.type("12");
        hands.strike(KeyEvent.VK_F2);
        untilKept(job, "round 12");
        say(job, "dent 5 tip 1,2");
        say(job, "view p-v");
        say(job, "datum v 1");
        say(job, "draw 360");

        hands.control(KeyEvent.VK_P);
        hands.until(
                "the question for a file",
                () -> java.util.Arrays.stream(java.awt.Window.getWindows())
                        .anyMatch(one -> one instanceof java.awt.Dialog && one.isActive()));
        hands.strike(KeyEvent.VK_ENTER);
        Path report = job.resolveSibling("first-report.pdf");
        hands.until("the report", () -> Files.exists(report));

        assertThat(kept(job))
                .containsExactly(
                        "fact manual training manual",
                        "fact revision 7",
                        "fact hours 8412,6",
                        "fact cycles 11903",
                        "heat 20 C",
                        "view p-r",
                        "datum r 1 at 0",
                        "turn on 31 deg",
                        "turn on 31 deg",
                        "void 9 because it was taken back at once",
                        "here 12",
                        "round 12",
                        "dent 5 tip 1,2",
                        "view p-v",
                        "datum v 1",
                        "draw 360");
        assertThat(new JobFolder(new LocalDisk(), job).verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);
        assertThat(report).isNotEmptyFile();
    }

    @Test
    void aWholeJobIsDoneByMouseAlone() {
        JFrame frame = open();
        Path job = workshop.job();

        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        fromTheMenu(frame, "bar.numbers");
        byMouse(frame, job, "heat 20 C", "entry", "chip heat", "digit 2", "digit 0", "digit  ", "chip C");
        byMouse(frame, job, "view p-r", "entry", "chip view p-r");
        byMouse(frame, job, "datum r 1", "entry", "chip datum", "chip r", "digit 1");
        hands.click(frame, "act WATCH_TIP");
        untilKept(job, "watch tip");
        hands.click(frame, "act WATCH_ALL");
        untilKept(job, "watch all");
        hands.click(frame, "digit 1");
        hands.click(frame, "act ROUND");
        untilKept(job, "round 1");
        byMouse(frame, job, "view p-v", "entry", "chip view p-v");
        byMouse(frame, job, "datum v 1", "entry", "chip datum", "chip v", "digit 1");
        byMouse(frame, job, "draw 360", "entry", "chip draw", "digit 3", "digit 6", "digit 0");
        hands.click(frame, "act UNDO");
        untilKept(job, "void 9 because it was taken back at once");
        hands.click(frame, "act REDO");
        untilKept(job, "void 10 because it counts after all");

        hands.click(frame, "bar.report");
        hands.clickInDialog("Report…");
        Path report = job.resolveSibling("job-report.pdf");
        hands.until("the report", () -> Files.exists(report));

        assertThat(kept(job)).hasSize(11).contains("round 1", "draw 360");
        assertThat(window.job().orElseThrow().state().coverage().tally().unseen())
                .isZero();
    }

    /** Clicks these one after the other, then Keep. */
    private void byMouse(JFrame frame, Path job, String entry, String... names) {
        for (String name : names) {
            hands.click(frame, name);
        }
        hands.click(frame, "keep");
        hands.until(entry, () -> kept(job).contains(entry));
        hands.until(
                "the entry line empty",
                () -> Offscreen.find(frame, JTextField.class, "entry").getText().isEmpty());
    }

    @Test
    void whatIsOpenIsClosedAndWhatIsInAPictureIsMeasuredByKeyboardAlone() throws IOException {
        Files.write(folder.resolve("one.jpg"), CameraPicture.jpeg(6, ""));
        workshop.counting("tool out lamp", "photo one.jpg of 5 tip").close();
        JFrame frame = open();
        Path job = workshop.job();
        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        untilFocused("entry");

        hands.strike(KeyEvent.VK_F10);
        untilFocused("closing");
        JList<?> open = Offscreen.find(frame, JList.class, "closing");
        hands.until("what is open", () -> open.getSelectedValue() != null);
        hands.strike(KeyEvent.VK_ENTER);
        untilFocused("entry");
        hands.strike(KeyEvent.VK_ENTER);
        untilKept(job, "tool in lamp");

        hands.control(KeyEvent.VK_I);
        untilFocused("picture");
        PictureCanvas picture = Offscreen.find(frame, PictureCanvas.class, "picture");
        hands.until("the picture", () -> picture.framing().isPresent());
        for (int field = 0; field < 3; field++) {
            hands.strike(KeyEvent.VK_TAB);
        }
        untilFocused("picture.known");
        hands.type("20");
        hands.strike(KeyEvent.VK_ENTER);
        untilFocused("picture");
        hands.type("ks");
        hands.strike(KeyEvent.VK_RIGHT);
        hands.strike(KeyEvent.VK_ENTER);
        untilFocused("entry");
        String finding = Offscreen.find(frame, JTextField.class, "entry").getText();
        hands.strike(KeyEvent.VK_ENTER);
        hands.until("a question about a blade that is no longer in view", () -> told().contains("Enter keeps it"));
        hands.strike(KeyEvent.VK_ENTER);
        untilKept(job, finding);

        assertThat(finding).matches("nick 5 tip length [0-9.]+ ± [0-9.]+ mm");
    }

    @Test
    void theWindowComesToRest() {
        JFrame frame = open();
        hands.untilAtRest();
        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        hands.untilAtRest();
        for (String shown : List.of("bar.numbers", "bar.dark", "bar.gloves", "bar.language")) {
            fromTheMenu(frame, shown);
            hands.untilAtRest();
        }
        assertThat(kept(workshop.job())).isEmpty();
    }

    @Test
    void largerLettersLayEverythingOutAnewAndLeaveWhatIsBeingTyped() {
        JFrame frame = open();
        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        untilFocused("entry");
        hands.type("turn on");
        JobScreen before = window.job().orElseThrow();

        Offscreen.on(() -> {
            new BarDoing(window, new Places(around)).change(window.choices().text(150));
            return true;
        });

        hands.until("the screen anew", () -> window.job().orElseThrow() != before);
        assertThat(Offscreen.<String>on(
                        () -> Offscreen.find(frame, JTextField.class, "entry").getText()))
                .isEqualTo("turn on");
        assertThat(Offscreen.<Float>on(() ->
                        Offscreen.find(frame, JLabel.class, "kept 0").getFont().getSize2D()))
                .isEqualTo(21f);
    }

    @Test
    void nothingMovesWhenSomethingIsWaitedFor() {
        JFrame frame = open();
        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        untilFocused("entry");
        JobScreen screen = window.job().orElseThrow();
        Map<String, Point> before = places(frame);
        CountDownLatch goOn = new CountDownLatch(1);

        Offscreen.on(() -> {
            screen.work(
                    "wait.pictures",
                    () -> {
                        goOn.await();
                        return true;
                    },
                    done -> {});
            return true;
        });
        hands.until(
                "what is waited for",
                () -> Offscreen.find(frame, JComponent.class, "waiting").isShowing());
        assertThat(places(frame)).isEqualTo(before);
        goOn.countDown();
        hands.until(
                "the end of waiting",
                () -> !Offscreen.find(frame, JComponent.class, "waiting").isShowing());
        assertThat(places(frame)).isEqualTo(before);
    }

    /** Where that stands on the screen which a finger may be on its way to. */
    private static Map<String, Point> places(JFrame frame) {
        return Offscreen.on(() -> Stream.of("map", "wheel", "entry", "act LOOK", "take next", "pages")
                .collect(Collectors.toMap(
                        name -> name,
                        name -> SwingUtilities.convertPoint(
                                Offscreen.find(frame, JComponent.class, name), 0, 0, frame))));
    }

    @Test
    void theWindowAnswersToItsKeysAnywhere() {
        JFrame frame = open();
        hands.click(frame, "start.openRecent");
        hands.until("the job", () -> window.job().isPresent());
        untilFocused("entry");

        hands.control(KeyEvent.VK_M);
        untilFocused("map");
        hands.control(KeyEvent.VK_L);
        untilFocused("entry");
        hands.control(KeyEvent.VK_G);
        untilFocused("left");
        hands.strike(KeyEvent.VK_F1);
        hands.until(
                "the sheet of keys",
                () -> java.util.Arrays.stream(java.awt.Window.getWindows())
                        .anyMatch(one -> one instanceof java.awt.Dialog && one.isActive()));
        hands.strike(KeyEvent.VK_ESCAPE);
        hands.until("the window in front again", frame::isActive);
        hands.control(KeyEvent.VK_D);
        hands.until("the dark look", com.formdev.flatlaf.FlatLaf::isLafDark);
        hands.control(KeyEvent.VK_D);
        hands.until("the light look", () -> !com.formdev.flatlaf.FlatLaf.isLafDark());
        assertThat(kept(workshop.job())).isEmpty();
    }
}
