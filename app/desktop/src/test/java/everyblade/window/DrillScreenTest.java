package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.core.sight.Progress;
import everyblade.picture.MapStyle;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.Harm;
import everyblade.record.LocalDisk;
import everyblade.record.RecordKind;
import everyblade.record.drill.DrillFolder;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Choices;
import everyblade.window.view.Motion;
import everyblade.window.view.Practising;
import everyblade.window.view.RecentJob;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrillScreenTest {

    private static final String PADS = """
            "spools": [ { "id": "shaft", "pads": [
              { "id": "direct", "directions": ["cw", "ccw"] }, { "id": "crank", "directions": ["cw"] } ] } ],
            """;

    @TempDir
    static Path made;

    private static Truth truth;

    @TempDir
    Path folder;

    private final long[] now = {1_000_000};
    private Surroundings around;
    private Session session;
    private Practising practising;
    private DrillScreen screen;
    private JobScreen job;
    private Drilling drilling;
    private boolean draws;

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

    private void speak(Locale language) {
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

    private void enter(String line) {
        Offscreen.on(() -> {
            job.entry().enter(line);
            return null;
        });
        pass(25);
    }

    /** All that labels, texts and lists say. */
    private static List<String> texts(JComponent root) {
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

    private void pass(long millis) {
        Offscreen.on(() -> {
            now[0] += millis;
            screen.tick();
            return null;
        });
    }

    private void strike(String key) {
        Offscreen.on(() -> {
            JComponent scope = screen.scope();
            Object name = scope.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(key));
            scope.getActionMap().get(name).actionPerformed(null);
            return null;
        });
    }

    private void hold(String key, long millis) {
        strike(key);
        for (long passed = 0; passed < millis; passed += 25) {
            pass(25);
        }
        int name = key.lastIndexOf(' ') + 1;
        strike(key.substring(0, name) + "released " + key.substring(name));
        pass(50);
    }

    private int brightness() {
        return Offscreen.on(() -> {
            screen.scope().setSize(200, 200);
            BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
            screen.scope().paint(image.createGraphics());
            int lit = 0;
            for (int x = 40; x < 160; x++) {
                for (int y = 60; y < 160; y++) {
                    lit += (image.getRGB(x, y) & 255) > 20 ? 1 : 0;
                }
            }
            return lit;
        });
    }

    @Test
    void nothing_is_seen_before_a_view_is_entered_and_the_engine_after() {
        draws = true;
        pass(25);
        assertThat(practising.moment()).isEmpty();

        enter("view p-r");

        assertThat(practising.moment().orElseThrow().tip().station()).isEqualTo("far");
        assertThat(brightness()).isGreaterThan(3000);
        enter("at near");
        assertThat(practising.moment().orElseThrow().tip().station()).isEqualTo("near");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PAGE_DOWN", "UP", "LEFT", "COMMA", "ADD", "MINUS", "shift UP", "ctrl PERIOD"})
    void a_key_moves_for_as_long_as_it_is_held(String key) {
        enter("view p-r");
        enter("at near");
        var before = practising.moment().orElseThrow();

        hold(key, 200);

        var after = practising.moment().orElseThrow();
        assertThat(after).isNotEqualTo(before);
        pass(500);
        assertThat(practising.moment()).contains(after);
    }

    @Test
    void turning_among_the_blades_loses_the_tip_until_another_view_is_entered() {
        enter("view p-r");
        enter("at near");
        for (int i = 0; i < 50 && practising.struck().isEmpty(); i++) {
            practising.move(Motion.IN, 1);
            practising.move(Motion.CLOCKWISE, 0.01);
        }

        assertThat(practising.struck()).contains("r");
        assertThat(practising.moment()).isEmpty();
        enter("view p-r");
        assertThat(practising.struck()).isEmpty();
        assertThat(practising.moment()).isPresent();
    }

    @Test
    void the_tools_turns_are_counted_from_where_they_were_zeroed() {
        enter("view p-r");
        hold("ADD", 1000);
        double turned = practising.toolTurns(session.state()).orElseThrow();
        assertThat(turned).isBetween(0.04, 0.08); // 0.7 blades of 30° a second

        strike("0");

        assertThat(practising.toolTurns(session.state())).contains(0.0);
    }

    @Test
    void each_call_of_a_burst_is_answered_at_once() {
        var damage = practising.truth().damage().get(0);
        enter("view p-r");
        enter("datum r 1");
        String line = damage.kind().called().orElseThrow().word() + " " + damage.airfoil() + " "
                + damage.zones().get(0);
        Offscreen.on(() -> {
            session.enter(line, true, Words.of(Locale.ENGLISH));
            job.show(Shown.of(session.state(), Words.of(Locale.ENGLISH), ZoneOffset.UTC));
            return null;
        });

        assertThat(texts(job.component())).anyMatch(text -> text.startsWith("Right. It is"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void after_the_end_the_truth_is_told_and_the_drill_can_be_seen_again(String language) {
        speak(Locale.forLanguageTag(language));
        enter("view p-r");
        hold("ADD", 1500);

        Offscreen.on(() -> {
            drilling.endNow(session.state());
            return null;
        });

        DrillFolder ended = practising.drill().folder();
        assertThat(ended.ended()).isTrue();
        assertThat(ended.track().samples()).hasSizeGreaterThan(5);
        assertThat(texts(drilling.component()))
                .anyMatch(text -> text.contains(language.equals("en") ? "8 pieces of damage" : "8 Schäden"));
        CellPanel truly = Offscreen.find(drilling.component(), CellPanel.class, "drill.truly");
        CellPanel claimed = Offscreen.find(drilling.component(), CellPanel.class, "drill.claimed");
        JList<?> list = Offscreen.find(drilling.component(), JList.class, "drill.result");
        Offscreen.on(() -> {
            list.setSelectedIndex(2);
            return null;
        });
        Harm first = practising.truth().damage().get(0);
        assertThat(truly.selected().orElseThrow().airfoil()).isEqualTo(first.airfoil());
        assertThat(claimed.selected()).isEqualTo(truly.selected());
    }

    @Test
    void what_goes_by_in_a_burst_without_a_call_is_told_once_and_counts_as_missed() {
        enter("view p-r");
        enter("datum r 1");
        looksOnly();
        List<String> told = new ArrayList<>();
        for (int i = 0; i < 240 && told.isEmpty(); i++) {
            practising.move(Motion.CLOCKWISE, 0.05);
            pass(250);
            texts(job.component()).stream()
                    .filter(text -> text.contains("Gone by without a call"))
                    .forEach(told::add);
        }

        assertThat(told).isNotEmpty();
        List<TipTrack.Sample> track = practising.take();
        assertThat(new TipTrack(track).told()).isNotEmpty();
    }

    @Test
    void losing_the_tip_is_in_the_track() {
        enter("view p-r");
        enter("at near");
        for (int i = 0; i < 50 && practising.struck().isEmpty(); i++) {
            practising.move(Motion.IN, 1);
            practising.move(Motion.CLOCKWISE, 0.01);
        }

        assertThat(new TipTrack(practising.take()).lost()).containsExactly("r");
    }

    @Test
    void the_report_of_a_drill_is_written_and_says_what_it_is() {
        enter("view p-r");
        JobStarting commands =
                new JobStarting(around, new Shelf(around, List.of(), new Consent(around, Set.of())), Commands::run);
        Path page = folder.resolve("d-report.html");

        assertThat(commands.write(Papers.Paper.REPORT.command(true), folder.resolve("d"), page))
                .isEmpty();
        assertThat(page).content().contains("DRILL");
        assertThat(commands.write(Papers.Paper.REPORT.command(false), folder.resolve("d"), folder.resolve("e.html")))
                .hasValueSatisfying(problem -> assertThat(problem).startsWith("A drill, not a job"));
    }

    @Test
    void a_recent_drill_is_told_from_a_job_and_can_be_opened_again() {
        Path drill = folder.resolve("d");
        Path other = folder.resolve("ring");
        List<Path> opened = new ArrayList<>();
        StartPanel start = Offscreen.on(() -> new StartPanel(
                Words.of(Locale.ENGLISH),
                Optional.empty(),
                List.of(recent(drill), recent(other)),
                new OnlyOpening(opened)));

        Offscreen.on(() -> {
            Offscreen.find(start.component(), JButton.class, "start.openRecent").doClick();
            return null;
        });

        assertThat(opened).containsExactly(drill);
        JList<?> list = Offscreen.on(() -> Offscreen.find(start.component(), JList.class, "recent"));
        assertThat(rendered(list, 0)).isEqualTo("DRILL: " + drill);
        assertThat(rendered(list, 1)).isEqualTo(other.toString());
    }

    private static RecentJob recent(Path folder) {
        return new RecentJob(folder, Optional.empty());
    }

    private static <T> String rendered(JList<T> list, int index) {
        return Offscreen.on(() -> ((JTextComponent) list.getCellRenderer()
                        .getListCellRendererComponent(list, list.getModel().getElementAt(index), index, false, false))
                .getText());
    }

    /** Keeps what is to be opened, and does nothing. */
    private final class OnlyOpening implements StartPanel.Doing {

        private final List<Path> opened;

        OnlyOpening(List<Path> opened) {
            this.opened = opened;
        }

        @Override
        public void open(Path job) {
            opened.add(job);
        }

        @Override
        public boolean isDrill(Path folder) {
            return DrillRecord.isOne(around, folder);
        }

        @Override
        public void review(Path job) {}

        @Override
        public void newJob() {}

        @Override
        public void practise() {}

        @Override
        public void fleet() {}

        @Override
        public void author() {}

        @Override
        public void choose(boolean review) {}
    }

    @Test
    void a_drill_goes_on_where_it_was_left() {
        enter("view p-r");
        hold("ADD", 1000);
        Offscreen.on(() -> {
            screen.stop();
            return null;
        });

        Practising again = new Practising(practising.drill(), practising.truth());
        again.follow(session.state());

        assertThat(again.moment().orElseThrow().shafts())
                .containsEntry(
                        "shaft", practising.moment().orElseThrow().shafts().get("shaft"));
        assertThat(again.toolTurns(session.state())).isEqualTo(practising.toolTurns(session.state()));
    }

    @Test
    void a_pad_that_turns_the_shaft_one_way_only_does_so_in_a_drill_too() {
        enter("view p-r");
        enter("pad crank");
        hold("ADD", 500);
        double turned = practising.toolTurns(session.state()).orElseThrow();
        assertThat(turned).isPositive();

        hold("MINUS", 500);

        assertThat(practising.toolTurns(session.state())).contains(turned);
        assertThat(onPicture())
                .isEqualTo("at pad crank the shaft may be turned cw only, and this move is ccw: turn it the other way"
                        + " round, or name another pad");
        hold("ADD", 100);
        assertThat(onPicture()).startsWith("Ctrl+K");
    }

    /** What is written over the picture; how it is handled while nothing is. */
    private String onPicture() {
        return Offscreen.on(() -> screen.scope().getAccessibleContext().getAccessibleDescription());
    }

    @Test
    void what_was_before_the_tip_was_seated_was_not_in_sight() {
        for (int i = 0; i < 100; i++) {
            pass(250);
        }
        enter("view p-r");
        looksOnly();
        for (int i = 0; i < 4; i++) {
            pass(250);
        }
        for (int i = 0; i < 240 && !told("Gone by without a call"); i++) {
            practising.move(Motion.CLOCKWISE, 0.05);
            pass(250);
        }

        assertThat(texts(job.component()))
                .filteredOn(text -> text.contains("Gone by without a call"))
                .isNotEmpty()
                .allSatisfy(text -> assertThat(Double.parseDouble(text.replaceAll(".* for ([0-9.]+) s.*", "$1")))
                        .isLessThan(20));
    }

    /** The picture that was asked for never comes, so no other one is; what is in it is looked at all the same. */
    private void looksOnly() {
        draws = true;
    }

    private boolean told(String words) {
        return texts(job.component()).stream().anyMatch(text -> text.contains(words));
    }

    @Test
    void the_course_is_offered_with_what_each_drill_is_for() {
        List<String> begun = new ArrayList<>();
        CoursePanel course = Offscreen.on(() -> new CoursePanel(
                Words.of(Locale.ENGLISH), lesson -> begun.add(lesson.drill().title()), () -> {}));

        Offscreen.on(() -> {
            Offscreen.find(course.component(), JButton.class, "drill.course.begin")
                    .doClick();
            return null;
        });

        assertThat(begun).containsExactly("Turning and counting");
        assertThat(texts(course.component()))
                .filteredOn(text -> text.startsWith("Lesson"))
                .hasSize(12);
    }
}
