package everyblade.core.sight;

import everyblade.core.surface.Facets;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the tolerance of a station takes from what it shows, as shares of an airfoil's surface from 0 to 1.
 *
 * @param nominal in sight if the scope tip stands exactly
 * @param sure in sight wherever within the tolerance it stands
 * @param alone in sight wherever it stands that is off only in one way
 */
public record ToleranceCost(double nominal, double sure, Map<Way, Double> alone) {

    /** In which way a scope tip is off. */
    public enum Way {
        AXIALLY,
        ROUND,
        OUTWARD,
        TILTED
    }

    public ToleranceCost {
        alone = Map.copyOf(alone);
    }

    /** The way that takes most; empty if none takes anything. */
    public Optional<Way> most() {
        return alone.entrySet().stream()
                .filter(way -> way.getValue() < nominal)
                .min(Map.Entry.<Way, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
    }

    /**
     * What it takes.
     *
     * @param sight what the station shows
     */
    static ToleranceCost of(
            Setting setting, Pose pose, Tolerance within, StationSight sight, Criteria criteria, Progress progress) {
        Facets facets = setting.scene().facets();
        Map<Way, List<Pose>> ways = PoseFamily.oneWay(pose, within);
        List<Pose> all = new ArrayList<>();
        ways.values().forEach(all::addAll);
        List<List<SightArcs>> arcs =
                SightArcs.compute(setting.scene(), Standings.of(all, setting.others()), criteria, progress);
        Map<Way, Double> alone = new EnumMap<>(Way.class);
        int from = 0;
        for (Map.Entry<Way, List<Pose>> way : ways.entrySet()) {
            List<List<SightArcs>> own = arcs.subList(from, from + way.getValue().size());
            from += own.size();
            alone.put(
                    way.getKey(),
                    share(
                            facets,
                            facet -> !sight.arcs(0, facet).isEmpty()
                                    && own.stream()
                                            .flatMap(List::stream)
                                            .noneMatch(one -> StationSight.counted(one.arcs(facet))
                                                    .isEmpty())));
        }
        return new ToleranceCost(
                share(facets, facet -> !sight.arcs(0, facet).isEmpty()),
                share(facets, sight::reaches),
                Collections.unmodifiableMap(alone));
    }

    private static double share(Facets facets, java.util.function.IntPredicate shown) {
        double sum = 0;
        for (int facet = 0; facet < facets.count(); facet++) {
            sum += shown.test(facet) ? facets.area(facet) : 0;
        }
        return sum / facets.area();
    }
}
