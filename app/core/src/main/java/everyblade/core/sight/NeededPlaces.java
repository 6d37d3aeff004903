package everyblade.core.sight;

import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Of which rows that stand still a journal must tell the place, for what a view shows hangs on it: those between its stations
 * and its row, and the row itself if it stands still. Found once for each view; the same for every thread.
 */
final class NeededPlaces {

    private final Rings rings;
    private final Map<String, Set<String>> rows = new ConcurrentHashMap<>();

    NeededPlaces(Rings rings) {
        this.rings = rings;
    }

    /** Those of the places known in an engine that a view of it needs, by row. */
    Map<String, Place> of(ViewScene engine, View view) {
        if (engine.places().isEmpty()) {
            return Map.of();
        }
        Map<String, Place> used = new TreeMap<>();
        for (String row : needed(engine, view)) {
            Optional.ofNullable(engine.places().get(row)).ifPresent(place -> used.put(row, place));
        }
        return used;
    }

    /** The rows of which neither maker nor journal says where they stand, though what a view shows hangs on it. */
    List<Row> unknown(ViewScene engine, View view) {
        List<Row> unknown = needed(engine, view).stream()
                .map(id -> engine.model().row(id).orElseThrow())
                .filter(row -> row.phase().isEmpty() && !engine.places().containsKey(row.id()))
                .toList();
        return unknown.isEmpty() || view.stations().stream().noneMatch(station -> hangs(engine, view, station))
                ? List.of()
                : unknown;
    }

    /** Whether rows that stand still nobody knows where hide anything from a station. */
    private boolean hangs(ViewScene engine, View view, Station station) {
        Row row = engine.model().row(view.row()).orElseThrow();
        ScopeTip tip = view.scopeTip().flatMap(engine.model()::scopeTip).orElseThrow();
        Pose pose = Pose.of(station, tip);
        return rings.setting(engine, row, pose, station.within().mm(), tip.diameter() / 2)
                .hidesSomewhere(pose, Criteria.USUAL);
    }

    private Set<String> needed(ViewScene engine, View view) {
        return rows.computeIfAbsent(view.id(), id -> found(engine, view));
    }

    private Set<String> found(ViewScene engine, View view) {
        EngineModel model = engine.model();
        Row row = model.row(view.row()).orElseThrow();
        Optional<ScopeTip> tip = view.scopeTip()
                .flatMap(model::scopeTip)
                .or(() -> model.scopeTips().stream().findFirst());
        Set<String> needed = new TreeSet<>();
        for (Station station : view.stations()) {
            tip.ifPresent(any -> rings
                    .between(
                            engine, row, Pose.of(station, any), station.within().mm())
                    .stream()
                    .map(Neighbour::row)
                    .filter(other -> other.kind() == RowKind.STATOR)
                    .forEach(other -> needed.addAll(
                            row.kind() == RowKind.ROTOR ? List.of(other.id()) : List.of(other.id(), row.id()))));
        }
        return needed;
    }
}
