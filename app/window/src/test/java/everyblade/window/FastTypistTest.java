package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.SlowDisk;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody types faster than the disk takes entries: each Enter is one entry, in the order of the strokes. */
class FastTypistTest {

    private static final int STANDARD = KeyEvent.KEY_LOCATION_STANDARD;
    private static final int NUMPAD = KeyEvent.KEY_LOCATION_NUMPAD;

    @TempDir
    Path folder;

    private final List<String> wrong = new CopyOnWriteArrayList<>();
    private final SlowDisk disk = new SlowDisk();
    private Workshop workshop;
    private Session session;
    private Workers workers;
    private Offscreen screen;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder, disk.asDisk());
        session = workshop.counting();
        workers = new Workers(
                Offscreen.on(Waiting::new),
                failure -> wrong.add(failure.getMessage()),
                fault -> wrong.add(fault.toString()));
        screen = Offscreen.of(session, workers, Choices.first(Locale.ENGLISH));
        disk.hold();
    }

    @AfterEach
    void close() {
        disk.letAll();
        workers.close();
        session.close();
        assertThat(wrong).isEmpty();
    }

    @Test
    void theLineIsTakenAtEnterAndShownAsBeingKept() throws Exception {
        screen.enter("turn on 20");

        assertThat(screen.text()).isEmpty();
        assertThat(screen.told()).isEqualTo("being kept: turn on 20");
        settle();
        assertThat(screen.told()).isEqualTo("kept 4: turn on 20");
    }

    @Test
    void aSecondEnterKeepsNothingTwice() throws Exception {
        screen.enter("turn on 20");
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        screen.strike(KeyEvent.VK_ENTER, NUMPAD);
        screen.press("keep");
        settle();

        assertThat(kept()).containsExactly("turn on 20");
    }

    @Test
    void whatDependsOnTheLastEntryWaitsUntilItIsKnown() throws Exception {
        screen.enter("turn on 20");
        screen.strike(KeyEvent.VK_Z, STANDARD, KeyEvent.CTRL_DOWN_MASK);

        assertThat(screen.told()).startsWith("An entry is still being kept");
        settle();
        assertThat(kept()).containsExactly("turn on 20");
    }

    @Test
    void aNumberAloneFollowsTheEntryBeforeItEvenIfThatIsNotKeptYet() throws Exception {
        screen.enter("turn on 5 blades");
        screen.enter("7");
        settle();

        assertThat(kept()).containsExactly("turn on 5 blades", "turn on 7 blades");
    }

    @Test
    void aRefusedLineComesBackAndWhatWasEnteredAfterItWaitsForThePerson() throws Exception {
        screen.enter("turn on 20");
        screen.enter("turn on many");
        screen.enter("look");
        type("no");
        settle();

        assertThat(kept()).containsExactly("turn on 20");
        assertThat(screen.text()).isEqualTo("no");
        assertThat(screen.told()).startsWith("NOT KEPT: turn on many").contains("look");

        type("te later");
        screen.strike(KeyEvent.VK_UP, STANDARD);
        assertThat(screen.text()).isEqualTo("turn on many");
        screen.enter("turn on 30");
        settle();
        screen.strike(KeyEvent.VK_UP, STANDARD);
        assertThat(screen.text()).isEqualTo("look");
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        settle();
        // The last one that waits comes into the empty line by itself.
        assertThat(screen.text()).isEqualTo("note later");
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        settle();

        assertThat(kept()).containsExactly("turn on 20", "turn on 30", "look", "note later");
    }

    @Test
    void aDoubtIsNotConfirmedByImpatience() throws Exception {
        screen.enter("note first");
        screen.enter("skip on 90");
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        settle();

        assertThat(kept()).containsExactly("note first");
        assertThat(screen.text()).isEqualTo("skip on 90");
        assertThat(screen.told()).contains("Enter keeps it as it is");
        screen.strike(KeyEvent.VK_ENTER, STANDARD);
        settle();
        assertThat(kept()).containsExactly("note first", "skip on 90");
    }

    @Test
    void nothingIsLostDoubledOrGluedHoweverTheDiskKeepsUp() throws Exception {
        Random random = new Random(20_261);
        int entries = Boolean.getBoolean("everyblade.campaign") ? 2000 : 150;
        List<String> typed = new ArrayList<>();
        for (int i = 0; i < entries; i++) {
            String line = random.nextBoolean() ? "note number " + i : "turn on 3" + random.nextInt(10);
            typed.add(line);
            for (int at = 0; at < line.length(); at++) {
                type(line.substring(at, at + 1));
                if (random.nextInt(12) == 0) {
                    disk.letOne();
                }
            }
            for (int strokes = 1 + random.nextInt(3); strokes > 0; strokes--) {
                screen.strike(KeyEvent.VK_ENTER, STANDARD);
            }
        }
        settle();

        assertThat(kept()).containsExactlyElementsOf(typed);
    }

    /** Types at the caret, as fingers do. */
    private void type(String letters) {
        Offscreen.on(() -> {
            screen.field().replaceSelection(letters);
            return true;
        });
    }

    /** What was kept since the screen came up. */
    private List<String> kept() {
        List<String> all = workshop.kept();
        return all.subList(3, all.size());
    }

    /** Lets the disk go, and returns when everything that was entered is answered. */
    private void settle() throws InterruptedException {
        disk.letAll();
        CountDownLatch done = new CountDownLatch(1);
        Offscreen.on(() -> {
            screen.screen().entry().onceSettled(done::countDown);
            return true;
        });
        assertThat(done.await(120, TimeUnit.SECONDS)).isTrue();
        Offscreen.on(() -> true);
        disk.hold();
    }
}
