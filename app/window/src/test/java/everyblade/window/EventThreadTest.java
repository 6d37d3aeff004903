package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may happen on the event thread, and that nothing of the screen is touched anywhere else. */
class EventThreadTest {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Far more than any event may take on a slow machine, far less than a wait for a disk or a hang. */
    private static final long TOO_LONG_MILLIS = 3000;

    @TempDir
    Path folder;

    private final List<String> wrong = new CopyOnWriteArrayList<>();
    private RepaintManager usual;
    private Watchdog watchdog;
    private volatile boolean timing;

    /** Notes whatever marks a component for painting on another thread. */
    private final class CheckingRepaintManager extends RepaintManager {

        @Override
        public void addInvalidComponent(JComponent component) {
            check(component);
            super.addInvalidComponent(component);
        }

        @Override
        public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
            check(component);
            super.addDirtyRegion(component, x, y, width, height);
        }

        private void check(JComponent component) {
            if (!SwingUtilities.isEventDispatchThread()) {
                wrong.add(component.getClass().getName() + " was touched on thread "
                        + Thread.currentThread().getName());
            }
        }
    }

    /** Notes every event that keeps a processor busy for too long; how busy the machine is otherwise says nothing. */
    private final class Watchdog extends EventQueue {

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long begin = THREADS.getCurrentThreadCpuTime();
            super.dispatchEvent(event);
            long millis = (THREADS.getCurrentThreadCpuTime() - begin) / 1_000_000;
            if (timing && millis > TOO_LONG_MILLIS) {
                wrong.add(event + " took " + millis + " ms on the event thread");
            }
        }

        void leave() {
            pop();
        }
    }

    @BeforeEach
    void watch() {
        usual = RepaintManager.currentManager(null);
        RepaintManager.setCurrentManager(new CheckingRepaintManager());
        watchdog = new Watchdog();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(watchdog);
    }

    @AfterEach
    void stopWatching() {
        watchdog.leave();
        RepaintManager.setCurrentManager(usual);
    }

    @Test
    void aJobIsLoggedOffTheEventThreadAndShownOnItAlone() throws Exception {
        Workshop workshop = Workshop.in(folder);
        Waiting waiting = Offscreen.on(Waiting::new);
        Workers workers =
                new Workers(waiting, failure -> wrong.add(failure.getMessage()), fault -> wrong.add(fault.toString()));
        try (Session session = workshop.counting()) {
            Offscreen screen = Offscreen.of(session, workers, Choices.first(Locale.ENGLISH));
            timing = true; // the first screen of a JVM takes its time
            for (int i = 0; i < 40; i++) {
                screen.enter("turn on 3" + i % 10);
                if (i % 10 == 0) {
                    screen.paint();
                }
            }
            CountDownLatch kept = new CountDownLatch(1);
            Offscreen.on(() -> {
                screen.screen().entry().onceSettled(kept::countDown);
                return true;
            });
            assertThat(kept.await(60, TimeUnit.SECONDS)).isTrue();

            assertThat(workshop.kept()).hasSizeGreaterThan(40);
        } finally {
            workers.close();
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theCheckSeesATouchFromAnotherThread() throws Exception {
        javax.swing.JLabel label = Offscreen.on(() -> new javax.swing.JLabel("a"));
        Thread other = new Thread(label::repaint, "another");
        other.start();
        other.join();

        assertThat(wrong).singleElement().asString().contains("JLabel was touched on thread another");
    }

    @Test
    void whatGoesWrongBehindTheDoorIsToldAndAFaultIsKept() throws Exception {
        List<String> told = new CopyOnWriteArrayList<>();
        Path log = folder.resolve("state/faults.log");
        Faults faults = new Faults(log, () -> Workshop.NOW, (fault, file) -> told.add("fault " + fault));
        Workers workers = new Workers(
                Offscreen.on(Waiting::new),
                failure -> told.add(SwingUtilities.isEventDispatchThread() + " " + failure.getMessage()),
                faults::add);
        workers.run(
                "something",
                () -> {
                    throw new everyblade.session.around.Failure("the disk is gone");
                },
                done -> told.add("done"));
        workers.run(
                "something",
                () -> {
                    throw new IllegalStateException("a fault");
                },
                done -> told.add("done"));
        settle(workers);
        workers.close();

        assertThat(told)
                .containsExactlyInAnyOrder("true the disk is gone", "fault java.lang.IllegalStateException: a fault");
        assertThat(log).content().contains("2026-05-14T06:00:00Z java.lang.IllegalStateException: a fault", "\tat ");
    }

    @Test
    void ofSeveralThingsOfOneKindTheNewestCounts() throws Exception {
        List<Integer> shown = new CopyOnWriteArrayList<>();
        Workers workers = new Workers(
                Offscreen.on(Waiting::new),
                failure -> wrong.add(failure.getMessage()),
                fault -> wrong.add(fault.toString()));
        CountDownLatch gate = new CountDownLatch(1);
        workers.run("first", () -> gate.await(10, TimeUnit.SECONDS), done -> {});
        for (int i = 0; i < 100; i++) {
            int number = i;
            workers.latest("preview", () -> number, shown::add);
        }
        gate.countDown();
        settle(workers);
        workers.close();

        assertThat(shown).containsExactly(99);
    }

    @Test
    void whatNobodyWaitsForAnyMoreIsNotShown() throws Exception {
        List<String> shown = new CopyOnWriteArrayList<>();
        Waiting waiting = Offscreen.on(Waiting::new);
        Workers workers =
                new Workers(waiting, failure -> wrong.add(failure.getMessage()), fault -> wrong.add(fault.toString()));
        CountDownLatch gate = new CountDownLatch(1);
        Offscreen.on(() -> {
            waiting.speak(Workshop.ENGLISH);
            workers.aside("the report", () -> gate.await(10, TimeUnit.SECONDS), done -> shown.add("report"));
            Offscreen.find(waiting.component(), javax.swing.JButton.class, "wait.stop")
                    .doClick(0);
            return true;
        });
        gate.countDown();
        Offscreen.on(() -> {
            workers.aside("another", () -> true, done -> shown.add("another"));
            return true;
        });
        for (int i = 0; i < 200 && shown.isEmpty(); i++) {
            Thread.sleep(20);
        }
        workers.close();

        assertThat(shown).containsExactly("another");
    }

    @Test
    void whatIsWatchedEndsEarlyForWhoeverHandedItInAndForAPersonWhoIsToldSo() throws Exception {
        List<Object> given = new CopyOnWriteArrayList<>();
        Waiting waiting = Offscreen.on(Waiting::new);
        Workers workers =
                new Workers(waiting, failure -> wrong.add(failure.getMessage()), fault -> wrong.add(fault.toString()));
        Door.Watched<String> endless = progress -> {
            while (!progress.cancelled()) {
                Thread.onSpinWait();
            }
            throw new CancellationException();
        };
        Runnable stop = Offscreen.on(() -> workers.watched("dropped", endless, given::add));
        Offscreen.on(() -> {
            stop.run();
            workers.watched("stopped", endless, given::add);
            Offscreen.find(waiting.component(), javax.swing.JButton.class, "wait.stop")
                    .doClick(0);
            return true;
        });
        CountDownLatch last = new CountDownLatch(1);
        Offscreen.on(() -> workers.watched("done", progress -> "done", done -> {
            given.add(done);
            last.countDown();
        }));
        assertThat(last.await(60, TimeUnit.SECONDS)).isTrue();
        workers.close();

        assertThat(given).containsExactly(Optional.empty(), Optional.of("done"));
        assertThat(wrong).isEmpty();
    }

    /** Returns when everything handed in so far was done and shown. */
    private static void settle(Workers workers) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Offscreen.on(() -> {
            workers.run("the end", () -> true, end -> done.countDown());
            return true;
        });
        assertThat(done.await(60, TimeUnit.SECONDS)).isTrue();
    }
}
