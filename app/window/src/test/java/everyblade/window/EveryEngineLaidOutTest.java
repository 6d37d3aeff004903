package everyblade.window;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * The whole window with a job under way on each engine that comes with the program, bar and banners and all: at the sizes and
 * letters that are promised, in both languages and both looks, nothing is cut off, slides out or lies over something else.
 */
class EveryEngineLaidOutTest {

    /** Counts lost, findings, rows of every kind begun: as much as a window has to tell at once. */
    private static List<String> entries(String engine) {
        return switch (engine) {
            case "larkspur-4" ->
                List.of(
                        "heat 24 C",
                        "view in-c1",
                        "datum c1 11",
                        "round 1",
                        "view p1-s1",
                        "datum s1 1",
                        "draw 200",
                        "view p1-c2",
                        "datum c2 1",
                        "turn on 90",
                        "view in-c1",
                        "datum c1 14",
                        "dent 14 tip/pressure/leading length 2 depth 0.5 ± 0.1",
                        "nick 8 tip/suction/leading 0.8",
                        "recheck 12 trailing light streak on the trailing edge",
                        "open p1");
            case "corncrake-12" ->
                List.of(
                        "heat 24 C",
                        "view p12-c12",
                        "datum c12 1",
                        "turn on 210",
                        "here 40",
                        "view in-igv-face",
                        "datum igv 1",
                        "draw 200",
                        "nick 5 root 0.4");
            case "tansy-a1" ->
                List.of(
                        "heat 24 C",
                        "view in-iv",
                        "datum iv 1",
                        "draw 360",
                        "view ex-t",
                        "datum t 1",
                        "round 1",
                        "burn 9 tip/suction/trailing 2",
                        "turn on 45",
                        "here 20");
            default -> throw new AssertionError(engine);
        };
    }

    /** Plans once for each language: every way of looking at the job shows the same plan. */
    private static final class PlansOnce implements Door {

        private final DirectDoor door = new DirectDoor();
        private final Map<String, Object> planned = new HashMap<>();

        @Override
        public <T> void run(String what, Callable<T> work, Consumer<T> then) {
            door.run(what, work, then);
        }

        @Override
        public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
            door.latest(kind, work, then);
        }

        @Override
        public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
            door.aside(what, work, then);
        }

        @Override
        @SuppressWarnings("unchecked")
        public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
            if (!planned.containsKey(what)) {
                door.watched(what, work, done -> planned.put(what, done.orElseThrow()));
            }
            then.accept(Optional.of((T) planned.get(what)));
            return () -> {};
        }

        @Override
        public void fault(Throwable fault) {
            throw new AssertionError(fault);
        }

        @Override
        public void close() {}
    }

    /** Nobody presses anything. */
    private static final class Idle implements TopBar.Doing {

        @Override
        public void change(Choices other) {}

        @Override
        public void start() {}

        @Override
        public void watchFolder() {}

        @Override
        public void report() {}

        @Override
        public void handover() {}

        @Override
        public void saveElsewhere() {}

        @Override
        public void fleet() {}

        @Override
        public void keys() {}
    }

    /** One way in which the window is looked at; sizes are those of what a platform leaves of the screen. */
    private record Way(int width, int height, Choices choices) {

        static Way of(int width, int height, Locale language, int text) {
            return new Way(width, height, Choices.first(language).text(text));
        }

        Way with(Choices other) {
            return new Way(width, height, other);
        }

        Way dark() {
            return with(choices.dark(true));
        }

        Way strips() {
            return with(choices.strips(true));
        }

        Way bareHands() {
            return with(choices.gloves(false));
        }
    }

    private static final List<Way> WAYS = List.of(
            Way.of(1280, 770, Locale.ENGLISH, 100),
            Way.of(1280, 770, Locale.GERMAN, 100).dark().strips().bareHands(),
            Way.of(1280, 770, Locale.ENGLISH, 150).dark().strips(),
            Way.of(1280, 770, Locale.GERMAN, 150).bareHands(),
            Way.of(1920, 1050, Locale.GERMAN, 100),
            Way.of(1920, 1050, Locale.GERMAN, 200).dark());

    private static final List<String> ENGINES = List.of("larkspur-4", "corncrake-12", "tansy-a1");

    /** In a campaign each engine in every way, else each way on one engine. */
    private static List<Way> ways(String engine) {
        return IntStream.range(0, WAYS.size())
                .filter(way ->
                        Boolean.getBoolean("everyblade.campaign") || way % ENGINES.size() == ENGINES.indexOf(engine))
                .mapToObj(WAYS::get)
                .toList();
    }

    @ParameterizedTest
    @FieldSource("ENGINES")
    void standsWholeAtEverySizeThatIsPromised(String engine, @TempDir Path folder) throws IOException {
        String model = Files.readString(Path.of("..", "..", "engine-models", engine, "engine.json"))
                .replace("\"id\": \"" + engine + "\"", "\"id\": \"ring\"");
        Workshop workshop = Workshop.of(folder, model, "INVENTED-0999", "routine look, all rows", "A. Technician");
        try (Session session = workshop.open()) {
            for (String entry : entries(engine)) {
                session.enter(entry, true, Workshop.ENGLISH);
            }
            Door door = new PlansOnce();
            for (Way way : ways(engine)) {
                Offscreen screen = Offscreen.of(session, door, way.choices());
                Offscreen.on(() -> {
                    JPanel window = new JPanel(new BorderLayout());
                    TopBar bar = new TopBar(
                            screen.screen().words(), way.choices(), Optional.of(screen.screen()), new Idle());
                    window.add(bar.component(), BorderLayout.NORTH);
                    window.add(screen.screen().component(), BorderLayout.CENTER);
                    Laid laid = Laid.out(window, new Dimension(way.width(), way.height()));
                    laid.reachesNowhereBeyond();
                    laid.overlapsNowhere();
                    laid.cutsNoWords();
                    laid.cutsNoLine("rows");
                    laid.shows("kept 0", "kept 1", "kept 2", "map", "wheel", "rows", "left", "entry");
                    return true;
                });
            }
        }
    }
}
