package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.core.sight.Progress;
import everyblade.picture.MapStyle;
import everyblade.practice.drill.Truth;
import everyblade.record.LocalDisk;
import everyblade.record.RecordKind;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.window.view.Choices;
import everyblade.window.view.Practising;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A drill on a ring of twelve blades, made once and copied for each test, and the screen on which it is done. */
abstract class WithADrill {

    static final String PADS = """
            "spools": [ { "id": "shaft", "pads": [
              { "id": "direct", "directions": ["cw", "ccw"] }, { "id": "crank", "directions": ["cw"] } ] } ],
            """;

    @TempDir
    static Path made;

    private static Truth truth;

    @TempDir
    Path folder;

    private final long[] now = {1_000_000};
    Surroundings around;
    Session session;
    Practising practising;
    DrillScreen screen;
    JobScreen job;
    Drilling drilling;
    boolean draws;

    /** Made once, and copied by each test: what seals it, and opens it again, is slow on purpose. */
    @BeforeAll
    static void aDrillOnAShapedRing() throws Exception {
        Files.createDirectories(made.resolve("ring"));
        Files.writeString(made.resolve("ring/engine.json"), Workshop.SHAPED.replace("\"walls\"", PADS + "\"walls\""));
        Surroundings around = around(made);
        String[] line = {"drill", "new", "d", "--model", "ring", "--row", "r", "--by", "Ann", "--seed", "3", "--burst"};
        assertThat(Commands.run(around, line)).isZero();
        truth = DrillRecord.read(around, Path.of("d")).truth(Optional.empty());
    }

    private static Surroundings around(Path folder) {
        return new Surroundings(
                InputStream.nullInputStream(),
                new PrintStream(new ByteArrayOutputStream(), true),
                new PrintStream(new ByteArrayOutputStream(), true),
                InstantSource.fixed(Instant.parse("2026-05-14T06:00:00Z")),
                Map.of(),
                folder,
                Optional.empty(),
                new LocalDisk());
    }

    @BeforeEach
    void aCopyOfTheDrill() throws Exception {
        try (Stream<Path> files = Files.walk(made)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(made.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        around = around(folder);
        DrillRecord drill = DrillRecord.read(around, Path.of("d"));
        session = Session.open(around, Path.of("d"), RecordKind.DRILL, List.of(), Progress.NONE);
        practising = new Practising(drill, truth);
        speak(Locale.ENGLISH);
    }

    /** Makes pictures only where a test looks at them. */
    private final class SlowEye implements Door {

        private final DirectDoor door = new DirectDoor();

        @Override
        public <T> void run(String what, Callable<T> work, Consumer<T> then) {
            if (draws) {
                door.run(what, work, then);
            }
        }

        @Override
        public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
            run(kind, work, then);
        }

        @Override
        public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
            run(what, work, then);
        }

        @Override
        public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
            return door.watched(what, work, then);
        }

        @Override
        public void fault(Throwable fault) {
            door.fault(fault);
        }

        @Override
        public void close() {}
    }

    void speak(Locale language) {
        Offscreen.on(() -> {
            Words words = Words.of(language);
            Choices choices = Choices.first(language);
            DirectDoor door = new DirectDoor();
            InstantSource clock = () -> Instant.ofEpochMilli(now[0]);
            Shown shown = Shown.of(session.state(), words, ZoneOffset.UTC);
            job = new JobScreen(session, shown, door, words, () -> choices, clock);
            drilling = new Drilling(
                    practising, Optional.empty(), door, new SlowEye(), clock, words, Progress.NONE, () -> {});
            drilling.show(job, words, MapStyle.PLAIN);
            screen = drilling.screen().orElseThrow();
            screen.stop(); // the test makes the time pass
            return null;
        });
    }

    @AfterEach
    void close() {
        session.close();
    }

    void enter(String line) {
        Offscreen.on(() -> {
            job.entry().enter(line);
            return null;
        });
        pass(25);
    }

    void pass(long millis) {
        Offscreen.on(() -> {
            now[0] += millis;
            screen.tick();
            return null;
        });
    }

    void strike(String key) {
        Offscreen.on(() -> {
            JComponent scope = screen.scope();
            Object name = scope.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(key));
            scope.getActionMap().get(name).actionPerformed(null);
            return null;
        });
    }

    void hold(String key, long millis) {
        strike(key);
        for (long passed = 0; passed < millis; passed += 25) {
            pass(25);
        }
        int name = key.lastIndexOf(' ') + 1;
        strike(key.substring(0, name) + "released " + key.substring(name));
        pass(50);
    }

    /** All that labels, texts and lists say. */
    static List<String> texts(JComponent root) {
        return Offscreen.on(() -> Offscreen.all(root)
                .flatMap(each -> each instanceof JTextComponent text
                        ? Stream.of(text.getText())
                        : each instanceof JLabel label && label.getText() != null
                                ? Stream.of(label.getText())
                                : each instanceof JList<?> list
                                        ? IntStream.range(0, list.getModel().getSize())
                                                .mapToObj(i -> String.valueOf(
                                                        list.getModel().getElementAt(i)))
                                        : Stream.<String>empty())
                .toList());
    }

    boolean told(String words) {
        return texts(job.component()).stream().anyMatch(text -> text.contains(words));
    }

    /** The picture that was asked for never comes, so no other one is; what is in it is looked at all the same. */
    void looksOnly() {
        draws = true;
    }
}
