package everyblade.desktop.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.desktop.view.Answer;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.ReviewDesk;
import everyblade.desktop.view.Session;
import everyblade.desktop.view.Workshop;
import everyblade.desktop.words.Words;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** How smoothly a long record of the largest engine is replayed; run only when asked for. */
@EnabledIfSystemProperty(named = "everyblade.figures", matches = "true")
class ReplayFiguresTest {

    private static final int ENTRIES = 2000;
    private static final double FRAME_MILLIS = 1000 / 60.0;
    private static final List<String> VIEWS = List.of("p11-c11 c11", "p3-c3 c3", "n5-t1 t1", "p12-c12 c12");

    @TempDir
    Path folder;

    private static List<String> entries() {
        List<String> entries = new ArrayList<>(List.of("heat 24 C"));
        for (int round = 0; entries.size() < ENTRIES; round++) {
            String[] view = VIEWS.get(round % VIEWS.size()).split(" ");
            entries.add("view " + view[0]);
            entries.add(round < VIEWS.size() ? "datum " + view[1] + " 1" : "here 1 ± 180");
            for (int i = 0; i < 60 && entries.size() < ENTRIES; i++) {
                entries.add(i % 20 == 19 ? "nick " + (i % 30 + 1) + " tip 0.3" : "turn on 6 ± 0.01 in 4 s");
            }
        }
        return entries;
    }

    private ReviewDesk desk() throws Exception {
        Path model = Path.of("..", "..", "engine-models", "corncrake-12", "engine.json");
        Workshop workshop = Workshop.of(folder, Files.readString(model), "7", "long", "Ann");
        try (Session session = workshop.open()) {
            for (String entry : entries()) {
                Answer answer = session.say(entry);
                assertThat(answer).as(entry + " " + answer).isInstanceOf(Answer.Kept.class);
            }
        }
        return ReviewDesk.open(workshop.around(), workshop.job(), "", Progress.NONE);
    }

    @Test
    void aLongRecordIsReplayedWithoutADroppedFrame() throws Exception {
        ReviewDesk desk = desk();
        Workers workers = new Workers(
                Offscreen.on(Waiting::new),
                message -> {
                    throw new AssertionError(message);
                },
                fault -> {
                    throw new AssertionError(fault);
                });
        try {
            Choices choices = Choices.first(Locale.ENGLISH);
            Dimension size = new Dimension(1280, 740);
            BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
            ReviewScreen screen = Offscreen.on(() -> {
                Looks.use(choices);
                ReviewScreen made = new ReviewScreen(
                        desk, desk.state(), false, "R. Viewer", workers, Words.of(Locale.ENGLISH), () -> choices, null);
                Rehearsal.lay(made.component(), size);
                return made;
            });
            while (Offscreen.on(() -> screen.replay().clock().length()) < ENTRIES) {
                Thread.sleep(100);
            }
            Offscreen.on(() -> paint(screen, image));
            for (int speed : new int[] {16, 64, 256}) {
                play(screen, image, speed);
            }
        } finally {
            workers.close();
        }
    }

    /** Plays all of it once: a frame is what happens on the event thread between two ticks, painting included. */
    private static void play(ReviewScreen screen, BufferedImage image, int speed) throws InterruptedException {
        double[] millis = new double[1_000_000];
        int frames = 0;
        int shown = -1;
        int states = 0;
        int waited = 0;
        Offscreen.on(() -> {
            screen.replay().speed(speed);
            screen.replay().turn();
            return true;
        });
        long began = System.nanoTime();
        while (Offscreen.on(() -> screen.replay().clock().playing())) {
            long from = System.nanoTime();
            int now = Offscreen.on(() -> {
                screen.replay().tick();
                paint(screen, image);
                return screen.replay().clock().entry();
            });
            millis[frames++] = (System.nanoTime() - from) / 1e6;
            states += now == shown ? 0 : 1;
            waited += now == shown && speed >= 60 ? 1 : 0;
            shown = now;
            long rest = (long) (FRAME_MILLIS * 1e6) - (System.nanoTime() - from);
            if (rest > 0) {
                Thread.sleep(rest / 1_000_000, (int) (rest % 1_000_000));
            }
        }
        double[] sorted = Arrays.copyOf(millis, frames);
        Arrays.sort(sorted);
        long dropped = Arrays.stream(sorted).filter(one -> one > FRAME_MILLIS).count();
        System.out.printf(
                Locale.ROOT,
                "replay of %d entries at %d a second: %.1f s, %d frames, %d states shown, %d frames waited; a frame takes"
                        + " median %.1f ms, p99 %.1f ms, most %.1f ms; %d dropped%n",
                ENTRIES,
                speed,
                (System.nanoTime() - began) / 1e9,
                frames,
                states,
                waited,
                sorted[frames / 2],
                sorted[frames * 99 / 100],
                sorted[frames - 1],
                dropped);
        assertThat(sorted[frames * 99 / 100]).isLessThan(FRAME_MILLIS);
    }

    private static boolean paint(ReviewScreen screen, BufferedImage image) {
        Graphics2D g = image.createGraphics();
        screen.component().paint(g);
        g.dispose();
        return true;
    }
}
