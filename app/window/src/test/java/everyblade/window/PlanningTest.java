package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planning takes its time; nothing else waits for it. */
class PlanningTest {

    @TempDir
    Path folder;

    private final SlowPlanner door = new SlowPlanner();
    private Session session;
    private Offscreen screen;

    @BeforeEach
    void open() {
        session = Workshop.in(folder).counting();
        screen = Offscreen.of(session, door, Choices.first(Locale.ENGLISH));
    }

    @AfterEach
    void close() {
        session.close();
        assertThat(door.direct.failures).isEmpty();
    }

    @Test
    void aJobIsShownAndAnEntryAnsweredBeforeAnybodyKnowsWhatIsNext() {
        assertThat(next()).isEqualTo("Next: …");

        screen.enter("turn on 20");

        assertThat(screen.told()).startsWith("kept 4: turn on 20");
        screen.type("turn on 3");
        assertThat(screen.told()).isNotBlank().doesNotStartWith("kept");
        assertThat(next()).isEqualTo("Next: …");
    }

    @Test
    void whatIsNextIsToldOnceItIsKnownAndIsGreyAgainAfterTheNextEntry() {
        door.finish();
        String first = next();
        assertThat(first).startsWith("Next: 1. ");
        assertThat(steps()).isNotEmpty();
        assertThat(take().isEnabled()).isTrue();

        screen.enter("turn on 31");

        assertThat(next()).isEqualTo("Next: …");
        assertThat(take().isEnabled()).isFalse();
        door.finish();
        assertThat(take().isEnabled()).isTrue();
        assertThat(next()).isNotEqualTo(first);
    }

    @Test
    void whatWasPlannedForAnEarlierStateIsGivenUp() {
        screen.enter("slip");
        screen.enter("view p-v");

        assertThat(door.plans).hasSize(3);
        assertThat(door.plans.get(0).stopped).isTrue();
        assertThat(door.plans.get(1).stopped).isTrue();
        assertThat(door.plans.get(2).stopped).isFalse();
        assertThat(door.plans.get(0).ends())
                .as("planning that nobody waits for ends early")
                .isTrue();
        assertThat(next()).isEqualTo("Next: …");
    }

    private String next() {
        return Offscreen.find(screen.screen().component(), JPanel.class, "steps")
                .getAccessibleContext()
                .getAccessibleName();
    }

    private List<String> steps() {
        return Offscreen.all(Offscreen.find(screen.screen().component(), JPanel.class, "steps"))
                .filter(one -> one instanceof JTextArea)
                .map(one -> ((JTextArea) one).getText())
                .filter(text -> !text.isBlank())
                .toList();
    }

    private AbstractButton take() {
        return Offscreen.find(screen.screen().component(), AbstractButton.class, "take next");
    }

    /** A door at which what can be stopped is worked on when the test says so. */
    private static final class SlowPlanner implements Door {

        final DirectDoor direct = new DirectDoor();
        final List<Held> plans = new ArrayList<>();

        /** Works on the last one. */
        void finish() {
            Offscreen.on(() -> {
                plans.get(plans.size() - 1).work();
                return true;
            });
        }

        @Override
        public <T> void run(String what, Callable<T> work, Consumer<T> then) {
            direct.run(what, work, then);
        }

        @Override
        public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
            direct.latest(kind, work, then);
        }

        @Override
        public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
            direct.aside(what, work, then);
        }

        @Override
        public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
            Held held = new Held(direct, progress -> {
                then.accept(Optional.of(work.done(progress)));
                return true;
            });
            plans.add(held);
            return () -> held.stopped = true;
        }

        @Override
        public void fault(Throwable fault) {
            direct.fault(fault);
        }

        @Override
        public void close() {}
    }

    private static final class Held {

        private final Door door;
        private final Door.Watched<Boolean> work;
        boolean stopped;

        Held(Door door, Door.Watched<Boolean> work) {
            this.door = door;
            this.work = work;
        }

        void work() {
            door.run("plan", () -> work.done(Progress.NONE), done -> {});
        }

        /** Whether it ends by itself once it is stopped. */
        boolean ends() {
            try {
                work.done(new Progress() {
                    @Override
                    public boolean cancelled() {
                        return stopped;
                    }
                });
                return false;
            } catch (CancellationException given) {
                return true;
            } catch (Exception other) {
                throw new AssertionError(other);
            }
        }
    }
}
