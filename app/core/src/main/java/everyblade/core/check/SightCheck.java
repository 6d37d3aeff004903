package everyblade.core.check;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightArcs;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds views and stations that show nothing of their row by the usual criteria, whatever its airfoils' clock, and views
 * that show nothing of an airfoil at their reference. What stands between the scope tip and the row's ring is not asked,
 * so that a view found blind is blind indeed. Views without a scope tip or of a row without a surface are left out.
 *
 * <p>Costs a few milliseconds a station.
 */
public final class SightCheck {

    private final EngineModel model;
    private final ViewScene surroundings;
    private final Map<String, Optional<SightScene>> scenes = new HashMap<>();

    private SightCheck(EngineModel model, Map<String, byte[]> files) {
        this.model = model;
        this.surroundings = new ViewScene(model, files, Map.of());
    }

    /**
     * The flaws of a model's views, in their order.
     *
     * @param files the contents of its mesh files, by name
     * @throws java.util.concurrent.CancellationException if {@code progress} says so
     */
    public static List<Flaw> of(EngineModel model, Map<String, byte[]> files, Progress progress) {
        SightCheck check = new SightCheck(model, files);
        List<Flaw> flaws = new ArrayList<>();
        for (int v = 0; v < model.views().size(); v++) {
            check.view(v, progress, flaws);
        }
        return List.copyOf(flaws);
    }

    private void view(int index, Progress progress, List<Flaw> flaws) {
        View view = model.views().get(index);
        Row row = model.row(view.row()).orElseThrow();
        Optional<ScopeTip> tip = view.scopeTip().flatMap(model::scopeTip);
        Optional<SightScene> scene = scenes.computeIfAbsent(row.id(), id -> scene(row));
        if (tip.isEmpty() || scene.isEmpty() || view.stations().isEmpty()) {
            return;
        }
        List<Pose> poses = view.stations().stream()
                .map(station -> Pose.of(station, tip.get()))
                .toList();
        List<SightArcs> sights = SightArcs.compute(scene.get(), poses, Criteria.USUAL, progress);
        List<Integer> blind = IntStream.range(0, sights.size())
                .filter(station -> seesNothing(sights.get(station)))
                .boxed()
                .toList();
        if (blind.size() == sights.size()) {
            flaws.add(new Flaw(
                    Flaw.Kind.SEES_NOTHING,
                    new CheckedPart.ViewAt(index),
                    new Wrong.SeesNothing(view.id(), row.id()),
                    Wrong.Because.NOTHING_PROPER,
                    Wrong.Mend.CORRECT_STATIONS));
            return;
        }
        for (int station : blind) {
            flaws.add(new Flaw(
                    Flaw.Kind.STATION_SEES_NOTHING,
                    new CheckedPart.StationAt(index, station),
                    new Wrong.StationSeesNothing(view.stations().get(station).id(), view.id(), row.id()),
                    Wrong.Because.NOTHING_PROPER,
                    Wrong.Mend.CORRECT_STATION));
        }
        if (sights.stream().noneMatch(arcs -> sees(arcs, view.reference(), 180.0 / row.count()))) {
            flaws.add(new Flaw(
                    Flaw.Kind.REFERENCE_UNSEEN,
                    new CheckedPart.ViewAt(index),
                    new Wrong.ReferenceUnseen(view.id(), view.reference()),
                    Wrong.Because.NOT_LOOKED_AT,
                    Wrong.Mend.CORRECT_REFERENCE));
        }
    }

    /** Whether anything of an airfoil is in sight that stands as near to a clock angle as this. */
    private static boolean sees(SightArcs arcs, double clock, double near) {
        long from = Circle.STANDARD.wrap(Turn.ofDegrees(clock - near).floorTicks());
        ArcSet there = ArcSet.of(
                new Arc(Circle.STANDARD, from, Turn.ofDegrees(2 * near).ceilTicks()));
        return IntStream.range(0, arcs.facetCount())
                .anyMatch(facet -> !arcs.arcs(facet).intersection(there).isEmpty());
    }

    private static boolean seesNothing(SightArcs arcs) {
        return IntStream.range(0, arcs.facetCount())
                .allMatch(facet -> arcs.arcs(facet).isEmpty());
    }

    private Optional<SightScene> scene(Row row) {
        try {
            return surroundings.ring(row);
        } catch (UnusableShape toldElsewhere) {
            return Optional.empty();
        }
    }
}
