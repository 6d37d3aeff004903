package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.InTheWay;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightArcs;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what views of an engine can show, zone by zone, or at which clock positions each facet is in sight of one of them. */
@Command(name = "sight", description = "${bundle:help.sight}")
final class SightCommand implements Callable<Integer> {

    /** Shorter arcs are marginal and are not listed, degrees. */
    private static final double LEAST_ARC = 0.01;

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "M", description = "${bundle:help.model}")
    private String model;

    @Option(names = "--row", paramLabel = "ID", description = "${bundle:help.sight.row}")
    private String row;

    @Option(names = "--view", paramLabel = "ID", description = "${bundle:help.sight.view}")
    private String view;

    @Option(names = "--station", paramLabel = "S", description = "${bundle:help.station}")
    private String station;

    @Option(names = "--compare", arity = "2", paramLabel = "V", description = "${bundle:help.sight.compare}")
    private List<String> compare = List.of();

    @Option(names = "--detail", paramLabel = "MM", description = "${bundle:help.detail}")
    private String detail;

    @Option(names = "--json", description = "${bundle:help.sight.json}")
    private boolean json;

    SightCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Shelf.Chosen chosen = everyblade.shelf().choose(model);
        EngineModel engine = chosen.model();
        Criteria criteria = detail == null
                ? Criteria.USUAL
                : Criteria.USUAL.withDetail(
                        Given.number("--detail", detail, "mm").doubleValue());
        ViewScene scene = chosen.scene();
        if (json) {
            if (view == null || !compare.isEmpty()) {
                throw Failure.of("stopped.sight.listsSightArcsOneView");
            }
            around.out().println(JsonText.of(arcs(engine, scene, criteria)));
            return Commands.FINE;
        }
        SightTables tables = new SightTables(
                engine, new Sights(scene, engine.id(), criteria, SightStore.NONE, Progress.NONE), around.words());
        if (!compare.isEmpty()) {
            tables.compared(view(engine, "--compare", compare.get(0)), view(engine, "--compare", compare.get(1)))
                    .forEach(around.out()::println);
        } else if (view != null) {
            View seen = view(engine, "--view", view);
            tables.view(seen, station(seen)).forEach(around.out()::println);
        } else {
            rows(engine).forEach(each -> tables.row(each).forEach(around.out()::println));
        }
        return Commands.FINE;
    }

    private List<Row> rows(EngineModel engine) {
        return row == null ? engine.rows() : List.of(MeshCommand.row(engine, row));
    }

    private static View view(EngineModel engine, String option, String id) {
        return engine.view(id)
                .orElseThrow(() -> Failure.of(
                        "stopped.sight.engineHasNoSuchView",
                        option,
                        id,
                        engine.views().stream().map(View::id).collect(Collectors.joining(", "))));
    }

    private ObjectNode arcs(EngineModel engine, ViewScene engineScene, Criteria criteria) {
        View seen = view(engine, "--view", view);
        Row of = engine.row(seen.row()).orElseThrow();
        Station from = station(seen);
        ScopeTip tip = seen.scopeTip()
                .flatMap(engine::scopeTip)
                .orElseThrow(() -> Failure.of("stopped.sight.viewNamesNoScopeTip", view));
        try {
            SightScene scene = engineScene.ring(of).orElseThrow(() -> MeshCommand.noShape(of));
            Pose pose = Pose.of(from, tip);
            SightArcs arcs = SightArcs.compute(scene, pose, criteria, Progress.NONE);
            InTheWay between = InTheWay.of(engineScene, scene, arcs, of, pose, tip.diameter() / 2, criteria);
            warn(scene, arcs, between);
            return told(engine, seen, from, of, scene, arcs, between);
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.noSurface", model, unusable.told());
        }
    }

    /** Arcs are those among the row's own ring and the walls, so nobody may take them for what is seen past rows between. */
    private void warn(SightScene scene, SightArcs arcs, InTheWay between) {
        double all = 0;
        double alone = 0;
        double left = 0;
        boolean takes = false;
        for (int facet = 0; facet < arcs.facetCount(); facet++) {
            double area = scene.facets().area(facet);
            all += area;
            alone += arcs.arcs(facet).isEmpty() ? 0 : area;
            left += between.left().get(facet).isEmpty() ? 0 : area;
            takes |= !between.left().get(facet).equals(arcs.arcs(facet));
        }
        if (takes) {
            around.err()
                    .println(around.words()
                            .say(
                                    "sights.between",
                                    view,
                                    between.rows().stream().map(Row::id).collect(Collectors.joining(", ")),
                                    SightTables.percent(alone / all, around.words()),
                                    SightTables.percent(left / all, around.words())));
        }
    }

    private Station station(View seen) {
        if (seen.stations().isEmpty()) {
            throw Failure.of("stopped.sight.viewHasNoStationOnly", view);
        }
        return station == null
                ? seen.stations().get(0)
                : seen.stations().stream()
                        .filter(one -> one.id().equals(station))
                        .findFirst()
                        .orElseThrow(() -> Failure.of(
                                "stopped.sight.viewHas",
                                station,
                                view,
                                seen.stations().stream().map(Station::id).collect(Collectors.joining(", "))));
    }

    private static ObjectNode told(
            EngineModel engine,
            View view,
            Station station,
            Row row,
            SightScene scene,
            SightArcs arcs,
            InTheWay between) {
        Facets facets = scene.facets();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("model", engine.id());
        json.put("view", view.id());
        json.put("station", station.id());
        json.put("row", row.id());
        json.put("airfoils", row.count());
        json.put("reference", view.reference());
        ArrayNode rows = json.putArray("between");
        between.rows().forEach(other -> rows.add(other.id()));
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
            list(one.putArray("arcs"), arcs.arcs(id));
            list(
                    one.putArray("between"),
                    arcs.arcs(id).difference(between.left().get(id)));
        }
        return json;
    }

    private static void list(ArrayNode array, ArcSet arcs) {
        for (Arc arc : arcs.arcs()) {
            double from = (double) arc.start() / Circle.TICKS_PER_DEGREE;
            double length = (double) arc.length() / Circle.TICKS_PER_DEGREE;
            if (length >= LEAST_ARC) {
                array.addArray().add(from).add(from + length);
            }
        }
    }

    private static void vector(ArrayNode array, IntToDoubleFunction along) {
        for (int axis = 0; axis < 3; axis++) {
            array.add(along.applyAsDouble(axis));
        }
    }
}
