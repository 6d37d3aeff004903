package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Stations of the engine models that come with the program. */
final class Vantages {

    private Vantages() {}

    static EngineModel model(String id) {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        if (EngineJsonReader.read(file) instanceof Reading.Read read) {
            return read.model();
        }
        throw new AssertionError(file + " cannot be read");
    }

    /** A model with a piece of its file, which stands there once, put otherwise. */
    static EngineModel changed(String id, String piece, String other) {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        try {
            String text = Files.readString(file);
            assertThat(text.split(Pattern.quote(piece), -1)).as(piece).hasSize(2);
            byte[] bytes = text.replace(piece, other).getBytes(StandardCharsets.UTF_8);
            if (EngineJsonReader.read(file.toString(), bytes) instanceof Reading.Read read) {
                return read.model();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        throw new AssertionError(file + " cannot be read with " + other);
    }

    static Vantage of(String model, String view, String station, Criteria criteria) {
        return of(model(model), view, station, criteria);
    }

    static Vantage of(EngineModel engine, String view, String station, Criteria criteria) {
        View seen = engine.view(view).orElseThrow();
        Station from = seen.stations().stream()
                .filter(one -> one.id().equals(station))
                .findFirst()
                .orElseThrow();
        try {
            return Vantage.of(new ViewScene(engine, Map.of(), Map.of()), seen, from, criteria);
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    /** The same seen by a scope tip of fewer pixels, which is drawn sooner. */
    static Vantage coarse(Vantage vantage, int pixels) {
        Pose pose = vantage.pose();
        Pose coarse = new Pose(
                pose.x(),
                pose.r(),
                pose.clock(),
                pose.forward(),
                pose.up(),
                pose.cone(),
                pose.near(),
                pose.far(),
                pixels);
        return new Vantage(
                vantage.engine(),
                vantage.row(),
                vantage.view(),
                vantage.station(),
                coarse,
                vantage.setting(),
                vantage.criteria());
    }

    /** Every so many stations of a model from which something can be computed. */
    static List<Vantage> each(String model, int step) {
        EngineModel engine = model(model);
        List<Vantage> all = new ArrayList<>();
        int station = 0;
        for (View view : engine.views()) {
            if (engine.row(view.row()).orElseThrow().shape().isPresent()) {
                for (Station one : view.stations()) {
                    if (station++ % step == 0) {
                        all.add(of(engine, view.id(), one.id(), Criteria.USUAL));
                    }
                }
            }
        }
        return all;
    }
}
