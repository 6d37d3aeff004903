package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** How fast the window answers; run only when asked for, on a machine that does nothing else. */
@EnabledIfSystemProperty(named = "everyblade.figures", matches = "true")
class FiguresTest {

    private static final int ENTRIES = 2000;
    private static final int WARM_UP = 200;

    @TempDir
    Path folder;

    @Test
    void aKeyIsEchoedWithin50MillisecondsWhileEntriesAreLogged() throws Exception {
        Workshop workshop = Workshop.in(folder);
        Workers workers = new Workers(
                Offscreen.on(Waiting::new),
                message -> {
                    throw new AssertionError(message);
                },
                fault -> {
                    throw new AssertionError(fault);
                });
        try (Session session = workshop.counting()) {
            Offscreen screen = Offscreen.of(session, workers, Choices.first(Locale.ENGLISH));
            BufferedImage map = screen.paint();
            double[] millis = new double[ENTRIES];
            for (int i = 0; i < ENTRIES; i++) {
                String entry = "turn on 3" + i % 10;
                Offscreen.on(() -> {
                    screen.screen().entry().enter(entry);
                    return true;
                });
                long pressed = System.nanoTime();
                Offscreen.on(() -> echo(screen.field(), "1", map));
                millis[i] = (System.nanoTime() - pressed) / 1e6;
                Offscreen.on(() -> {
                    screen.field().setText("");
                    return true;
                });
                if (i % 100 == 0) {
                    repaint(screen, map);
                }
            }
            CountDownLatch done = new CountDownLatch(1);
            workers.run("the end", () -> true, end -> done.countDown());
            assertThat(done.await(120, TimeUnit.SECONDS)).isTrue();
            double[] warm = Arrays.copyOfRange(millis, WARM_UP, ENTRIES);
            Arrays.sort(warm);
            System.out.printf(
                    Locale.ROOT,
                    "key press to echo while logging %d entries: median %.1f ms, p99 %.1f ms, most %.1f ms%n",
                    ENTRIES,
                    warm[warm.length / 2],
                    warm[warm.length * 99 / 100],
                    warm[warm.length - 1]);
            assertThat(warm[warm.length * 99 / 100]).isLessThan(50);
        } finally {
            workers.close();
        }
    }

    /** The key's character in the field, and the field painted. */
    private static boolean echo(JTextField field, String character, BufferedImage image) {
        field.replaceSelection(character);
        Graphics2D g = image.createGraphics();
        field.paint(g);
        g.dispose();
        return true;
    }

    private static void repaint(Offscreen screen, BufferedImage image) {
        Offscreen.on(() -> {
            Graphics2D g = image.createGraphics();
            screen.screen().component().printAll(g);
            g.dispose();
            return true;
        });
    }
}
