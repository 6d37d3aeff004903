package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.MapFacts;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/** A job in a test: one of the engine models that come with the program, and entries as lines of text. */
final class Jobs {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

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

    /** Half done: rows seen, a row maybe, findings. */
    static Jobs larkspur() {
        return on("larkspur-4")
                .enter(
                        "heat 24 C",
                        "view in-c1",
                        "datum c1 1 at 0",
                        "round 1 in 180s",
                        "dent 7 tip/suction/leading length 2.4 depth 0.6 ± 0.2 mm",
                        "view p1-s1",
                        "datum s1 1",
                        "draw 200",
                        "view p2-c3",
                        "datum c3 1",
                        "turn on 60 in 45s",
                        "turn on 60 in 45s",
                        "recheck 12 trailing again",
                        "view p5-gt",
                        "watch root",
                        "datum gt 1",
                        "turn on 200 in 200s",
                        "saw tip/pressure 5-9 photo tip.jpg");
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
                throw new AssertionError(line + ": column " + refused.column() + ": " + refused.getMessage());
            }
        }
        return this;
    }

    Coverage coverage() {
        return Coverage.of(fold.situation(), OptionalDouble.empty());
    }

    MapFacts facts() {
        return new MapFacts(
                fold.situation().engine().model().name(), Optional.of("invented"), "S-1", "a task", "9f3ac01d77b2e4");
    }
}
