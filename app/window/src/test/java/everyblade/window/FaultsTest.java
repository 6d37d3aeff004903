package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultsTest {

    @TempDir
    Path folder;

    private final List<String> told = new CopyOnWriteArrayList<>();

    private Faults keptIn(Path file) {
        return new Faults(file, () -> Workshop.NOW, (fault, kept) -> told.add(fault + " in " + kept.getFileName()));
    }

    @Test
    void onTheEventThreadReachThePersonInALineAndAFileAsAWhole() throws Exception {
        Path log = folder.resolve("state").resolve("faults.log");
        Faults faults = keptIn(log);
        Thread.UncaughtExceptionHandler usual = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> faults.add(fault));
        try {
            SwingUtilities.invokeLater(() -> {
                throw new IllegalStateException("no such row\nat all");
            });
            Offscreen.on(() -> true);
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(usual);
        }

        assertThat(told).containsExactly("java.lang.IllegalStateException: no such row in faults.log");
        assertThat(log).content().contains("2026-05-14T06:00:00Z", "no such row\nat all", "FaultsTest");
    }

    @Test
    void thatComeAgainAndAgainAreToldOnce() {
        Faults faults = keptIn(folder.resolve("faults.log"));
        RuntimeException atEachPainting = new RuntimeException("painting");
        for (int i = 0; i < 50; i++) {
            faults.add(atEachPainting);
        }
        faults.add(new RuntimeException("another"));

        assertThat(told).hasSize(2);
    }

    @Test
    void doNotFillTheDisk() throws IOException {
        Path log = folder.resolve("faults.log");
        Files.write(log, new byte[(1 << 20) + 1]);
        keptIn(log).add(new RuntimeException("one more"));

        assertThat(log).content().contains("one more").hasSizeLessThan(20_000);
        assertThat(folder.resolve("faults.log.old")).exists();
    }

    @Test
    void areToldWhereNothingCanBeKept() throws IOException {
        Path file = Files.writeString(folder.resolve("a file"), "");
        keptIn(file.resolve("faults.log")).add(new RuntimeException("full"));

        assertThat(told).containsExactly("java.lang.RuntimeException: full in faults.log");
    }
}
