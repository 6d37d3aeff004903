package everyblade.picture;

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
import everyblade.picture.scene.Scene;
import everyblade.picture.svg.SvgWriter;
import everyblade.spi.EngineModel;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** A job in a test: an engine, and entries as lines of text. */
final class Job {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** What stations show takes seconds to compute and is the same in every test. */
    private static final Map<String, Sights> SIGHTS = new ConcurrentHashMap<>();

    private final EngineModel model;
    private Fold fold;
    private final Map<String, BigDecimal> settings = new HashMap<>();

    Job(EngineModel model) {
        this.model = model;
        this.fold = Fold.start(Engine.of(model));
    }

    /** On one of the engine models that come with the program. */
    static Job on(String model) {
        Path file = Path.of("..", "..", "engine-models", model, EngineJsonReader.FILE);
        if (EngineJsonReader.read(file) instanceof Reading.Read read) {
            return new Job(read.model());
        }
        throw new AssertionError(file + " cannot be read");
    }

    Job leastView(double seconds) {
        return set("least-view", String.valueOf(seconds));
    }

    /** With another value of a setting. */
    Job set(String name, String value) {
        settings.put(name, new BigDecimal(value));
        return this;
    }

    /** Enters lines that must be kept. */
    Job enter(String... lines) {
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

    Fold fold() {
        return fold;
    }

    Coverage coverage() {
        Settings all = Settings.of(settings);
        Sights sights = SIGHTS.computeIfAbsent(
                model.id() + " " + Criteria.of(all),
                key -> new Sights(
                        new ViewScene(model, Map.of(), Map.of()),
                        model.id(),
                        Criteria.of(all),
                        SightStore.NONE,
                        Progress.NONE));
        return Coverage.of(fold.situation(), all, sights);
    }

    MapFacts facts() {
        return new MapFacts(
                model.name(),
                model.notice(),
                "LK4-0117",
                "Bird strike, left engine",
                "9f3ac01d77b2e4",
                MapWords.of(Locale.ENGLISH));
    }

    String svg(Optional<String> row, MapStyle style) {
        return SvgWriter.write(scene(row, style), style.theme());
    }

    Scene scene(Optional<String> row, MapStyle style) {
        return MapScene.of(coverage(), facts(), row, style);
    }
}
