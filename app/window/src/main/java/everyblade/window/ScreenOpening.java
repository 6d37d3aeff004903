package everyblade.window;

import everyblade.practice.drill.Truth;
import everyblade.session.CommandRun;
import everyblade.session.Opening;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.model.Shelf;
import everyblade.window.author.ModelFolder;
import everyblade.window.view.ReviewDesk;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Image;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import javax.swing.SwingUtilities;

/** Opens the window on the screen of this machine. */
public final class ScreenOpening implements Opening {

    private final CommandRun commands;
    private final Runnable before;

    /**
     * One that has {@code before} done before the screen is asked for.
     *
     * @param commands does what the window leaves to a command
     */
    public ScreenOpening(CommandRun commands, Runnable before) {
        this.commands = commands;
        this.before = before;
    }

    @Override
    public int open(Surroundings around, Shelf shelf, Optional<Path> job) {
        return open(around, shelf, window -> {
            Optional<Path> model = job.filter(ModelFolder::isOne);
            if (job.isEmpty() || model.isPresent()) {
                return () -> model.ifPresent(window::author);
            }
            if (DrillRecord.isOne(around, job.get())) {
                DrillRecord drill = DrillRecord.read(around, job.get());
                return window.drilled(drill, drill.truth(Optional.empty()));
            }
            JobOpening.Opened opened = window.opening().opened(job.get());
            return () -> window.enter(opened);
        });
    }

    @Override
    public int review(Surroundings around, Shelf shelf, Path job) {
        return open(around, shelf, window -> {
            ReviewDesk desk = window.opening().reviewed(job);
            return () -> window.review(desk);
        });
    }

    @Override
    public int drill(Surroundings around, Shelf shelf, DrillRecord drill, Truth truth) {
        return open(around, shelf, window -> window.drilled(drill, truth));
    }

    /**
     * Opens the window.
     *
     * @param first opens what is to be shown, off the event thread, and gives what shows it
     */
    private int open(Surroundings around, Shelf shelf, Function<MainWindow, Runnable> first) {
        before.run();
        if (!hasScreen()) {
            return Opening.NONE.open(around, shelf, Optional.empty());
        }
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<MainWindow> window = new AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> window.set(new MainWindow(around, shelf, commands, closed::countDown)));
            Thread.setDefaultUncaughtExceptionHandler(
                    (thread, fault) -> window.get().fault(fault));
            // Here, so that a job which cannot be opened is told where it was named, and no window comes up for it.
            Runnable shown = first.apply(window.get());
            SwingUtilities.invokeLater(() -> {
                shown.run();
                window.get().open();
            });
            sign(window.get());
            closed.await();
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException fault) {
            throw new IllegalStateException(fault.getCause());
        }
        return 0;
    }

    /** The sign of the program, drawn here and once the window is there: to draw it takes longer than all that is to be seen. */
    private static void sign(MainWindow window) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(() -> {});
        List<Image> sizes = ProgramIcon.sizes();
        SwingUtilities.invokeLater(() -> window.sign(sizes));
    }

    @Override
    public int rehearse(Surroundings around, Path job) {
        try {
            SwingUtilities.invokeAndWait(() -> Rehearsal.of(around, job));
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException fault) {
            throw fault.getCause() instanceof Failure failure ? failure : new IllegalStateException(fault.getCause());
        }
        return 0;
    }

    /** Asks before anything else does: without a screen the first window would hang or throw. */
    private static boolean hasScreen() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException unreachable) {
            return false;
        }
    }
}
