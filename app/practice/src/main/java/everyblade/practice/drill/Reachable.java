package everyblade.practice.drill;

import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Setting;
import everyblade.core.sight.SightArcs;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What some views can show from their stations: damage that nobody can see teaches nothing. */
public final class Reachable {

    private Reachable() {}

    /** The views of these rows through which a drill can be done: those with a station and a scope tip. */
    public static List<View> views(EngineModel engine, List<String> rows) {
        return engine.views().stream()
                .filter(view -> !view.stations().isEmpty() && view.scopeTip().isPresent() && rows.contains(view.row()))
                .toList();
    }

    /**
     * The faces of each row that are properly in sight of some station at some clock angle.
     *
     * @param views ids of views
     * @throws UnusableShape if a shape gives no surface
     */
    public static Map<String, BitSet> faces(ViewScene engine, List<String> views) throws UnusableShape {
        Map<String, BitSet> faces = new HashMap<>();
        for (Row row : engine.model().rows()) {
            Optional<SightScene> ring = engine.ring(row);
            for (View view : views(engine.model(), List.of(row.id()))) {
                if (ring.isPresent() && views.contains(view.id())) {
                    for (Station station : view.stations()) {
                        faces.computeIfAbsent(row.id(), key -> new BitSet())
                                .or(faces(engine, row, ring.get(), view, station));
                    }
                }
            }
        }
        return faces;
    }

    private static BitSet faces(ViewScene engine, Row row, SightScene ring, View view, Station station)
            throws UnusableShape {
        ScopeTip tip = engine.model().scopeTip(view.scopeTip().orElseThrow()).orElseThrow();
        Pose pose = Pose.of(station, tip);
        double reach = station.within().mm();
        SightScene scene =
                Setting.of(engine, ring, row, pose, reach, tip.diameter() / 2).scene();
        SightArcs arcs = SightArcs.compute(scene, pose, Criteria.USUAL, Progress.NONE);
        BitSet shown = new BitSet();
        for (int face = 0; face < arcs.facetCount(); face++) {
            shown.set(face, !arcs.arcs(face).isEmpty());
        }
        return shown;
    }
}
