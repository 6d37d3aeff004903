package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.EntryParser;
import everyblade.core.sight.Progress;
import everyblade.record.Addition;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import everyblade.window.view.ReviewDesk;
import everyblade.words.Words;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** How smoothly a long record of the largest engine is replayed; run only when asked for. */
@EnabledIfSystemProperty(named = "everyblade.figures", matches = "true")
class ReplayFiguresTest {

    private static final int ENTRIES = 2000;
    private static final double FRAME_MILLIS = 1000 / 60.0;
    private static final List<String> VIEWS = List.of("p11-c11 c11", "p3-c3 c3", "n5-t1 t1", "p12-c12 c12");

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

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
        JobFolder.Writing writing =
                new JobFolder(workshop.disk(), workshop.job()).write("Ann", Workshop.NOW, Optional.empty());
        try (JournalWriter writer = ((JobFolder.Writable) writing).writer()) {
            List<Addition> additions = new ArrayList<>();
            for (String entry : entries()) {
                additions.add(new Addition(
                        entry,
                        EntryParser.parse(entry),
                        Workshop.NOW.plusSeconds(5L * additions.size()),
                        "Ann",
                        false));
            }
            assertThat(writer.append(additions)).isInstanceOf(JournalWriter.Kept.class);
        }
        return ReviewDesk.open(workshop.around(), workshop.job(), "", Progress.NONE);
    }

    @Test
    void aLongRecordIsReplayedWithMostFramesInTime() throws Exception {
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
                        desk,
                        desk.state(),
                        false,
                        "R. Viewer",
                        workers,
                        Words.of(Locale.ENGLISH),
                        () -> choices,
                        new Nowhere());
                Rehearsal.lay(made.component(), size);
                return made;
            });
            while (Offscreen.on(() -> screen.replay().clock().length()) < ENTRIES) {
                Thread.sleep(100);
            }
            Offscreen.on(() -> paint(screen, image));
            for (int speed : new int[] {32, 256}) {
                play(screen, image, speed);
            }
        } finally {
            workers.close();
        }
    }

    /** There is nothing else to be shown. */
    private static final class Nowhere implements ReviewScreen.Doing {

        @Override
        public void back() {}

        @Override
        public Optional<Path> otherRecord() {
            return Optional.empty();
        }
    }

    /** Plays all of it once: a frame is what happens on the event thread between two ticks, painting included. */
    private static void play(ReviewScreen screen, BufferedImage image, int speed) throws InterruptedException {
        double[] millis = new double[1_000_000];
        double[] walls = new double[1_000_000];
        double[] work = new double[1];
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
                long busy = THREADS.getCurrentThreadCpuTime();
                screen.replay().tick();
                paint(screen, image);
                work[0] = (THREADS.getCurrentThreadCpuTime() - busy) / 1e6;
                return screen.replay().clock().entry();
            });
            millis[frames] = work[0];
            walls[frames++] = (System.nanoTime() - from) / 1e6;
            states += now == shown ? 0 : 1;
            waited += now == shown && speed >= 64 ? 1 : 0;
            shown = now;
            long rest = (long) (FRAME_MILLIS * 1e6) - (System.nanoTime() - from);
            if (rest > 0) {
                Thread.sleep(rest / 1_000_000, (int) (rest % 1_000_000));
            }
        }
        double[] sorted = Arrays.copyOf(millis, frames);
        Arrays.sort(sorted);
        double[] sortedWalls = Arrays.copyOf(walls, frames);
        Arrays.sort(sortedWalls);
        long dropped = Arrays.stream(sorted).filter(one -> one > FRAME_MILLIS).count();
        System.out.printf(
                Locale.ROOT,
                "replay of %d entries at %d a second: %.1f s, %d frames, %d states shown, %d frames waited; work"
                        + " for a frame median %.1f ms, p99 %.1f ms, most %.1f ms, %d above a frame; by the clock, with what else"
                        + " the machine did, median %.1f ms, p99 %.1f ms%n",
                ENTRIES,
                speed,
                (System.nanoTime() - began) / 1e9,
                frames,
                states,
                waited,
                sorted[frames / 2],
                sorted[frames * 99 / 100],
                sorted[frames - 1],
                dropped,
                sortedWalls[frames / 2],
                sortedWalls[frames * 99 / 100]);
        assertThat(sorted[frames / 2]).isLessThan(FRAME_MILLIS);
    }

    private static boolean paint(ReviewScreen screen, BufferedImage image) {
        Graphics2D g = image.createGraphics();
        screen.map().component().paint(g);
        screen.replay().dial().paint(g);
        g.dispose();
        return true;
    }
}
