package everyblade.cli;

import everyblade.core.entry.Zoning;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.sight.ToleranceCost;
import everyblade.core.turning.Stance;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What views can show of airfoils, as tables for people: shares of each zone's surface, rounded down.
 *
 * @param engine whose views they are
 * @param sights of its stations
 * @param words in which they are told
 */
record SightTables(EngineModel engine, Sights sights, Words words) {

    /** What each view can show of a row, and what none can. */
    List<String> row(Row row) {
        List<View> views = engine.views().stream()
                .filter(view -> view.row().equals(row.id()) && sights.computes(view))
                .filter(view -> !stations(view).isEmpty())
                .toList();
        String name = OneLine.of(row.name());
        if (views.isEmpty()) {
            return List.of(words.say("sights.nothing", name, row.id()), "");
        }
        SightScene scene = sights.scene(row);
        List<boolean[]> shown = views.stream().map(this::reached).toList();
        List<String> head = new ArrayList<>(List.of(words.say("sights.zone"), ""));
        views.forEach(view -> head.add(view.id()));
        head.addAll(List.of(words.say("sights.rowColumns").split("\\|")));
        Table table = new Table().row(head.toArray(String[]::new));
        for (Zone zone : zones(scene)) {
            List<String> line = new ArrayList<>(List.of(zone.name(), ""));
            shown.forEach(view -> line.add(percent(zone.share(scene, facet -> view[facet]))));
            IntPredicate any = facet -> shown.stream().anyMatch(view -> view[facet]);
            line.add(percent(zone.share(scene, any)));
            line.add(badPercent(zone.share(scene, any.negate())));
            line.add(mostly(scene, zone, views, any.negate()));
            table.row(line.toArray(String[]::new));
        }
        List<String> lines = new ArrayList<>();
        lines.add(words.say("sights.row", name, row.id()));
        lines.addAll(table.lines());
        lines.add("");
        return lines;
    }

    /** What one station of a view shows. */
    List<String> view(View view, Station station) {
        Row row = engine.row(view.row()).orElseThrow();
        StationSight sight = sight(view, station);
        SightScene scene = sights.scene(row);
        List<String> head = new ArrayList<>(List.of(words.say("sights.zone"), ""));
        head.addAll(List.of(words.say("sights.stationColumns").split("\\|")));
        Table table = new Table().row(head.toArray(String[]::new));
        for (Zone zone : zones(scene)) {
            table.row(
                    zone.name(),
                    "",
                    percent(zone.share(scene, sight::reaches)),
                    percent(zone.share(scene, facet -> !sight.arcs(0, facet).isEmpty())),
                    percent(zone.share(scene, facet -> any(sight, facet))),
                    dominant(scene, zone, facet -> sight.why(facet)));
        }
        List<String> lines = new ArrayList<>();
        lines.add(words.say("sights.station", view.id(), station.id(), OneLine.of(row.name()), row.id()));
        lines.addAll(table.lines());
        sights.cost(stance(view), station.id()).ifPresent(cost -> lines.add(told(station, cost)));
        return lines;
    }

    private String told(Station station, ToleranceCost cost) {
        return words.say(
                "sights.cost",
                number(station.within().mm()),
                number(station.within().deg()),
                percent(cost.sure()),
                percent(cost.nominal()),
                cost.most(),
                cost.most().map(way -> percent(cost.alone().get(way))));
    }

    private static boolean any(StationSight sight, int facet) {
        for (int pose = 0; pose < sight.poses(); pose++) {
            if (!sight.arcs(pose, facet).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Two ways in side by side. */
    List<String> compared(View one, View other) {
        if (!one.row().equals(other.row())) {
            throw Failure.of(
                    "stopped.sightTables.theyLookAtDifferentRows", one.id(), other.id(), one.row(), other.row());
        }
        Row row = engine.row(one.row()).orElseThrow();
        List.of(one, other).forEach(view -> sight(view, stationOf(view)));
        SightScene scene = sights.scene(row);
        boolean[] a = reached(one);
        boolean[] b = reached(other);
        Table table = new Table()
                .row(
                        words.say("sights.zone"),
                        "",
                        words.say("sights.only", one.id()),
                        words.say("sights.only", other.id()),
                        words.say("sights.both"),
                        words.say("sights.neither"));
        List<Zone> zones = new ArrayList<>(zones(scene));
        zones.add(new Zone(words.say("sights.all"), facet -> true));
        for (Zone zone : zones) {
            table.row(
                    zone.name(),
                    "",
                    percent(zone.share(scene, facet -> a[facet] && !b[facet])),
                    percent(zone.share(scene, facet -> b[facet] && !a[facet])),
                    percent(zone.share(scene, facet -> a[facet] && b[facet])),
                    badPercent(zone.share(scene, facet -> !a[facet] && !b[facet])));
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.add(cost(one));
        lines.add(cost(other));
        return lines;
    }

    private static Station stationOf(View view) {
        return view.stations().stream()
                .findFirst()
                .orElseThrow(() -> Failure.of("stopped.sightTables.viewHasNoStationOnly", view.id()));
    }

    private String cost(View view) {
        Optional<Port> port = view.port()
                .flatMap(id -> engine.ports().stream()
                        .filter(one -> one.id().equals(id))
                        .findFirst());
        if (port.isEmpty()) {
            return words.say("sights.noPort", view.id());
        }
        List<String> openings = port.get().through().stream()
                .map(opening -> OneLine.of(opening.what()) + " (" + number(opening.diameter()) + " mm)")
                .toList();
        return words.say(
                "sights.port",
                view.id(),
                OneLine.of(port.get().name()),
                port.get().id(),
                openings);
    }

    private static String number(double millimetres) {
        return java.math.BigDecimal.valueOf(millimetres).stripTrailingZeros().toPlainString();
    }

    /** Facets that some station of a view surely shows. */
    private boolean[] reached(View view) {
        boolean[] facets = new boolean
                [sights.scene(engine.row(view.row()).orElseThrow()).facets().count()];
        for (StationSight sight : stations(view)) {
            for (int facet = 0; facet < facets.length; facet++) {
                facets[facet] |= sight.reaches(facet);
            }
        }
        return facets;
    }

    private List<StationSight> stations(View view) {
        return view.stations().stream()
                .flatMap(station -> sights.of(stance(view), station.id()).stream())
                .toList();
    }

    private StationSight sight(View view, Station station) {
        if (!sights.computes(view)) {
            throw MeshCommand.noShape(engine.row(view.row()).orElseThrow());
        }
        return sights.of(stance(view), station.id())
                .orElseThrow(() -> Failure.of("stopped.sightTables.viewNamesNoScopeTip", view.id()));
    }

    private static Stance stance(View view) {
        return new Stance(
                view.id(),
                view.stations().stream().map(Station::id).toList(),
                false,
                view.scopeTip(),
                Map.of(),
                Optional.empty());
    }

    /** A zone, or all of an airfoil: which facets belong to it. */
    private record Zone(String name, IntPredicate holds) {

        double share(SightScene scene, IntPredicate wanted) {
            double all = 0;
            double sum = 0;
            for (int facet = 0; facet < scene.facets().count(); facet++) {
                if (holds.test(facet)) {
                    all += scene.facets().area(facet);
                    sum += wanted.test(facet) ? scene.facets().area(facet) : 0;
                }
            }
            return all > 0 ? sum / all : 0;
        }
    }

    private static List<Zone> zones(SightScene scene) {
        Zoning zoning = scene.zoning();
        List<Zone> zones = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            int index = zone;
            zones.add(new Zone(
                    zoning.names().get(zone), facet -> scene.row().airfoil().zone(facet) == index));
        }
        return zones;
    }

    /** What keeps out of sight what no view shows, at the station that comes nearest to showing it. */
    private String mostly(SightScene scene, Zone zone, List<View> views, IntPredicate none) {
        List<StationSight> all =
                views.stream().flatMap(view -> stations(view).stream()).toList();
        return dominant(
                scene,
                zone,
                facet -> none.test(facet)
                        ? all.stream()
                                .flatMap(sight -> sight.why(facet).stream())
                                .max(Comparator.naturalOrder())
                        : Optional.empty());
    }

    private String dominant(SightScene scene, Zone zone, java.util.function.IntFunction<Optional<Hindrance>> why) {
        return Arrays.stream(Hindrance.values())
                .filter(hindrance -> zone.share(scene, facet -> why.apply(facet).equals(Optional.of(hindrance))) > 0)
                .max(Comparator.comparingDouble(
                        hindrance -> zone.share(scene, facet -> why.apply(facet).equals(Optional.of(hindrance)))))
                .map(words::say)
                .orElse("");
    }

    private String badPercent(double share) {
        return ShareFigures.badPercent(share, MapWords.of(words));
    }

    private String percent(double share) {
        return percent(share, words);
    }

    /** A share of something good, from 0 to 1, as these tables tell it. */
    static String percent(double share, Words words) {
        return ShareFigures.percent(share, MapWords.of(words));
    }
}
