package everyblade.desktop.window;

import everyblade.desktop.command.Opening;
import everyblade.desktop.command.Shelf;
import everyblade.desktop.command.Surroundings;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;

/** Opens the window on the screen of this machine. */
public final class ScreenOpening implements Opening {

    @Override
    public int open(Surroundings around, Shelf shelf, Optional<Path> job) {
        if (!hasScreen()) {
            return Opening.NONE.open(around, shelf, job);
        }
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<RuntimeException> unopened = new AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> {
                try {
                    new MainWindow(around, shelf, closed::countDown).open(job);
                } catch (RuntimeException failure) {
                    unopened.set(failure);
                    closed.countDown();
                }
            });
            closed.await();
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException fault) {
            throw new IllegalStateException(fault.getCause());
        }
        if (unopened.get() != null) {
            throw unopened.get();
        }
        return 0;
    }

    /** Asks before anything else does: without a screen the first window would hang or throw. */
    private static boolean hasScreen() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | java.awt.HeadlessException unreachable) {
            return false;
        }
    }
}
