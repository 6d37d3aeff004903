package everyblade.window.map;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.MapFacts;
import everyblade.spi.EngineModel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** A job in a test: one of the engine models that come with the program, and entries as lines of text. */
final class Jobs {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private static final String SMALL = """
            {"schema": "everyblade/engine-model/1", "id": "small", "name": "Small engine", "notice": "invented for tests",
             "spools": [{"id": "shaft", "name": "shaft", "normal": "cw",
               "pads": [{"id": "pad", "name": "pad", "ratio": "-2/3", "directions": ["cw", "ccw"], "play": 1}]}],
             "rows": [
               {"id": "r1", "name": "rotor 1", "kind": "rotor", "count": 11, "spanBands": 2, "sides": true,
                "chordBands": ["leading", "middle", "trailing"], "landmarks": [{"airfoil": 1, "what": "notch"}]},
               {"id": "v1", "name": "vanes 1", "kind": "stator", "count": 7, "numbering": "ccw", "spanBands": 1},
               {"id": "r2", "name": "rotor 2", "kind": "rotor", "count": 9, "numbering": "ccw", "spanBands": 3,
                "sides": true},
               {"id": "l1", "name": "liner", "kind": "liner", "count": 5, "spanBands": 2}],
             "views": [
               {"id": "v-r1", "row": "r1", "reference": 40, "window": {"halfWidth": 20, "shows": ["tip"]}},
               {"id": "v-v1", "row": "v1", "reference": 200, "travels": true,
                "window": {"halfWidth": 10, "shows": ["all"]}},
               {"id": "v-r2", "row": "r2", "reference": 300, "window": {"halfWidth": 15, "shows": ["pressure"]}}]}
            """;

    /** What stations show takes seconds to compute and is the same in every test. */
    private static final Map<String, Sights> SIGHTS = new ConcurrentHashMap<>();

    private Fold fold;

    private Jobs(Fold fold) {
        this.fold = fold;
    }

    static Jobs on(String model) {
        Path file = Path.of("..", "..", "engine-models", model, EngineJsonReader.FILE);
        if (EngineJsonReader.read(file) instanceof Reading.Read read) {
            return new Jobs(Fold.start(Engine.of(read.model())));
        }
        throw new AssertionError(file + " cannot be read");
    }

    /** A small engine of which only counts and windows are known; nothing entered yet. */
    static Jobs small() {
        if (EngineJsonReader.read("small", SMALL.getBytes(StandardCharsets.UTF_8)) instanceof Reading.Read read) {
            return new Jobs(Fold.start(Engine.of(read.model())));
        }
        throw new AssertionError("the small engine cannot be read");
    }

    /** The small engine, half done. */
    static Jobs begun() {
        return small().enter(
                        "view v-r1",
                        "datum r1 1",
                        "turn 100",
                        "dent 10 tip/suction/leading 1.2",
                        "recheck 7 root look again",
                        "view v-v1",
                        "datum v1 2",
                        "draw 140",
                        "view v-r2",
                        "datum r2 3",
                        "turn 60 ± 3");
    }

    /** The largest engine, some rows begun. */
    static Jobs corncrake() {
        return on("corncrake-12")
                .enter(
                        "heat 24 C",
                        "view p11-c11",
                        "datum c11 1",
                        "turn on 200",
                        "view p3-c3",
                        "datum c3 1",
                        "turn on 300",
                        "view n5-t1",
                        "datum t1 1",
                        "turn on 120",
                        "view p9-s9",
                        "datum s9 1",
                        "draw 180",
                        "view in-igv-face",
                        "datum igv 1",
                        "draw 360",
                        "view p12-c12",
                        "datum c12 1",
                        "turn on 210");
    }

    /** Enters lines that must be kept. */
    Jobs enter(String... lines) {
        for (String line : lines) {
            int number = fold.entries().size() + 1;
            try {
                fold = fold.with(new Logged(
                        number, START.plusSeconds(30L * number), "Test", false, line, EntryParser.parse(line)));
            } catch (Refusal refused) {
                throw new AssertionError(line + ": column " + refused.column() + ": " + refused.why());
            }
        }
        return this;
    }

    Coverage coverage() {
        Settings usual = Settings.of(Map.of());
        EngineModel model = fold.situation().engine().model();
        Sights sights = SIGHTS.computeIfAbsent(
                model.id(),
                id -> new Sights(
                        new ViewScene(model, Map.of(), Map.of()),
                        id,
                        Criteria.of(usual),
                        SightStore.NONE,
                        Progress.NONE));
        return Coverage.of(fold.situation(), usual, sights);
    }

    MapFacts facts() {
        return new MapFacts(
                fold.situation().engine().model().name(),
                Optional.of("invented"),
                "S-1",
                "a task",
                "9f3ac01d77b2e4",
                everyblade.picture.MapWords.of(java.util.Locale.ENGLISH));
    }
}
