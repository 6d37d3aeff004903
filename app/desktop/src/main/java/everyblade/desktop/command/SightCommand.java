package everyblade.desktop.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Scene;
import everyblade.core.sight.SightArcs;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says at which clock positions each facet of an airfoil is in sight of a view. */
@Command(
        name = "sight",
        description = "What one view shows of an airfoil as it goes round: zone by zone, or facet by facet as JSON.")
final class SightCommand implements Callable<Integer> {

    /** Shorter arcs are marginal and are not listed, degrees. */
    private static final double LEAST_ARC = 0.01;

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "M", description = "an engine model: an id, a folder or a jar")
    private String model;

    @Option(names = "--view", required = true, paramLabel = "ID", description = "the view")
    private String view;

    @Option(names = "--station", paramLabel = "S", description = "the station; the view's first unless given")
    private String station;

    @Option(names = "--detail", paramLabel = "MM", description = "the finest detail that must show")
    private String detail;

    @Option(names = "--json", description = "prints JSON")
    private boolean json;

    SightCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        EngineModel engine = everyblade.shelf().choose(model).model();
        View seen = engine.view(view)
                .orElseThrow(() -> new Failure("--view " + view + ": this engine has no such view; it has "
                        + engine.views().stream().map(View::id).collect(Collectors.joining(", "))));
        Row row = engine.row(seen.row()).orElseThrow();
        Station from = station(seen);
        ScopeTip tip = seen.scopeTip()
                .flatMap(engine::scopeTip)
                .orElseThrow(() -> new Failure("view " + view + " names no scope tip, so its cone is not known; name"
                        + " one in engine.json"));
        Criteria criteria = detail == null
                ? Criteria.USUAL
                : Criteria.USUAL.withDetail(
                        Given.number("--detail", detail, "mm").doubleValue());
        try {
            Scene scene = ViewScene.of(engine, row).orElseThrow(() -> MeshCommand.noShape(row));
            SightArcs arcs = SightArcs.compute(scene, Pose.of(from, tip), criteria, Progress.NONE);
            if (json) {
                around.out().println(JsonText.of(told(engine, seen, from, row, scene, arcs)));
            } else {
                byZone(row, scene, arcs);
            }
            return Commands.FINE;
        } catch (UnusableShape unusable) {
            throw new Failure(model + ": " + unusable.getMessage());
        }
    }

    private Station station(View seen) {
        if (seen.stations().isEmpty()) {
            throw new Failure("view " + view + " has no station, only a stated window, so nothing can be computed; give"
                    + " it a station in engine.json");
        }
        return station == null
                ? seen.stations().get(0)
                : seen.stations().stream()
                        .filter(one -> one.id().equals(station))
                        .findFirst()
                        .orElseThrow(() -> new Failure("--station " + station + ": view " + view + " has "
                                + seen.stations().stream().map(Station::id).collect(Collectors.joining(", "))));
    }

    private static ObjectNode told(
            EngineModel engine, View view, Station station, Row row, Scene scene, SightArcs arcs) {
        Facets facets = scene.facets();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("model", engine.id());
        json.put("view", view.id());
        json.put("station", station.id());
        json.put("row", row.id());
        json.put("airfoils", row.count());
        json.put("reference", view.reference());
        ArrayNode list = json.putArray("facets");
        List<String> zones = Zoning.of(row).names();
        for (int facet = 0; facet < arcs.facetCount(); facet++) {
            int id = facet;
            ObjectNode one = list.addObject();
            one.put("id", id);
            one.put("zone", zones.get(scene.row().airfoil().zone(id)));
            one.put("area", facets.area(id));
            vector(one.putArray("centroid"), axis -> facets.centroid(id, axis));
            vector(one.putArray("normal"), axis -> facets.normal(id, axis));
            ArrayNode shown = one.putArray("arcs");
            for (Arc arc : arcs.arcs(id).arcs()) {
                double from = (double) arc.start() / Circle.TICKS_PER_DEGREE;
                double length = (double) arc.length() / Circle.TICKS_PER_DEGREE;
                if (length >= LEAST_ARC) {
                    shown.addArray().add(from).add(from + length);
                }
            }
        }
        return json;
    }

    private static void vector(ArrayNode array, IntToDoubleFunction along) {
        for (int axis = 0; axis < 3; axis++) {
            array.add(along.applyAsDouble(axis));
        }
    }

    /** The share of each zone's surface that comes into sight at all. */
    private void byZone(Row row, Scene scene, SightArcs arcs) {
        Facets facets = scene.facets();
        List<String> zones = scene.zoning().names();
        around.out()
                .println("view " + view + ", " + row.name() + " (" + row.id() + "): of the surface of each zone in"
                        + " sight at some time of a turn");
        for (int zone = 0; zone < zones.size(); zone++) {
            double area = 0;
            double shown = 0;
            for (int facet = 0; facet < arcs.facetCount(); facet++) {
                if (scene.row().airfoil().zone(facet) == zone) {
                    area += facets.area(facet);
                    shown += arcs.arcs(facet).isEmpty() ? 0 : facets.area(facet);
                }
            }
            around.out()
                    .println(String.format(
                            Locale.ROOT, "%-24s%5.1f %%", zones.get(zone), area > 0 ? 100 * shown / area : 0));
        }
    }
}
