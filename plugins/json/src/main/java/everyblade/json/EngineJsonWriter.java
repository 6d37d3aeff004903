package everyblade.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import everyblade.spi.EngineModel;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.TaskCard;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.TreeMap;

/**
 * Writes an engine model as canonical {@code engine.json}: one text for each model, the same bytes in UTF-8 on every
 * machine and in every locale, and reading it back gives an equal model.
 *
 * <p>Keys stand in a fixed order, every default is written out, what is not stated is null; numbers are the shortest
 * that read back as the same double; lines end with a line feed. Of models that {@link EngineJsonReader} would refuse
 * nothing is promised but a text that it refuses too.
 */
public final class EngineJsonWriter {

    private final CanonicalJson json;

    private EngineJsonWriter(CanonicalJson json) {
        this.json = json;
    }

    /** The text of {@code engine.json}. */
    public static String write(EngineModel model) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            generator.setPrettyPrinter(CanonicalJson.layout());
            new EngineJsonWriter(new CanonicalJson(generator)).model(model);
        } catch (IOException e) {
            throw new UncheckedIOException("a StringWriter failed", e);
        }
        return text.append('\n').toString();
    }

    private void model(EngineModel model) throws IOException {
        json.begin();
        json.text("schema", EngineJsonReader.SCHEMA);
        json.text("id", model.id());
        json.text("name", model.name());
        json.text("notice", model.notice());
        json.objects("spools", model.spools(), this::spool);
        json.objects("walls", model.walls(), this::wall);
        json.objects("rows", model.rows(), this::row);
        json.objects("scopeTips", model.scopeTips(), this::scopeTip);
        json.objects("ports", model.ports(), this::port);
        json.objects("views", model.views(), this::view);
        // Left out where there are none: a model from before there were any keeps its bytes.
        if (!model.taskCards().isEmpty()) {
            json.objects("taskCards", model.taskCards(), this::taskCard);
        }
        json.end();
    }

    private void spool(Spool spool) throws IOException {
        json.text("id", spool.id());
        json.text("name", spool.name());
        json.text("normal", spool.normal().word());
        json.objects("pads", spool.pads(), this::pad);
    }

    private void pad(Pad pad) throws IOException {
        json.text("id", pad.id());
        json.text("name", pad.name());
        json.text("ratio", pad.ratio().toString());
        json.texts(
                "directions",
                pad.directions().stream().sorted().map(one -> one.word()).toList());
        json.number("play", pad.play());
        json.number("backlash", pad.backlash());
        json.number("drift", pad.drift());
    }

    private void wall(Wall wall) throws IOException {
        json.text("id", wall.id());
        json.text("spool", wall.spool());
        json.curve("curve", wall.curve());
    }

    private void row(Row row) throws IOException {
        json.text("id", row.id());
        json.text("name", row.name());
        json.text("kind", row.kind().word());
        json.text("spool", row.spool());
        json.number("count", row.count());
        json.text("numbering", row.numbering().word());
        json.number("rock", row.rock());
        json.number("spanBands", row.spanBands());
        json.texts(
                "chordBands", row.chordBands().stream().map(one -> one.word()).toList());
        json.flag("sides", row.sides());
        json.objects("landmarks", row.landmarks(), landmark -> {
            json.number("airfoil", landmark.airfoil());
            json.text("what", landmark.what());
        });
        json.text("ring", row.ring());
        json.number("ringOffset", row.ringOffset());
        json.number("phase", row.phase());
        if (row.shape().isEmpty()) {
            json.nothing("shape");
        } else {
            json.object("shape", () -> ShapeWriter.write(json, row.shape().get()));
        }
        json.object("positions", () -> {
            // By name, since the map of the record has no order of its own.
            for (var position : new TreeMap<>(row.positions()).entrySet()) {
                json.object(
                        position.getKey(),
                        () -> json.number("stagger", position.getValue().stagger()));
            }
        });
        json.text("source", row.source().map(one -> one.word()));
    }

    private void scopeTip(ScopeTip tip) throws IOException {
        json.text("id", tip.id());
        json.number("cone", tip.cone());
        json.number("lookAngle", tip.lookAngle());
        json.number("near", tip.near());
        json.number("far", tip.far());
        json.number("pixels", tip.pixels());
        json.number("diameter", tip.diameter());
        json.number("hottest", tip.hottest());
    }

    private void port(Port port) throws IOException {
        json.text("id", port.id());
        json.text("name", port.name());
        json.text("kind", port.kind().word());
        json.number("clock", port.clock());
        json.number("x", port.x());
        json.objects("through", port.through(), opening -> {
            json.text("what", opening.what());
            json.number("diameter", opening.diameter());
        });
    }

    private void view(View view) throws IOException {
        json.text("id", view.id());
        json.text("port", view.port());
        json.text("row", view.row());
        json.text("scopeTip", view.scopeTip());
        json.number("reference", view.reference());
        json.number("aim", view.aim());
        if (view.window().isEmpty()) {
            json.nothing("window");
        } else {
            json.object("window", () -> {
                json.number("halfWidth", view.window().get().halfWidth());
                json.texts("shows", view.window().get().shows());
            });
        }
        json.objects("stations", view.stations(), this::station);
        json.flag("travels", view.travels());
    }

    private void taskCard(TaskCard card) throws IOException {
        json.text("id", card.id());
        json.text("name", card.name());
        json.objects("asks", card.asks(), asked -> {
            json.text("row", asked.row());
            json.texts("parts", asked.parts());
        });
    }

    private void station(Station station) throws IOException {
        json.text("id", station.id());
        json.number("x", station.x());
        json.number("r", station.r());
        json.number("clock", station.clock());
        json.heading("forward", station.forward());
        json.heading("up", station.up());
        json.object("within", () -> {
            json.number("mm", station.within().mm());
            json.number("deg", station.within().deg());
        });
        if (station.forClock().isEmpty()) {
            json.nothing("forClock");
        } else {
            json.numbers(
                    "forClock",
                    station.forClock().get().from(),
                    station.forClock().get().to());
        }
    }
}
