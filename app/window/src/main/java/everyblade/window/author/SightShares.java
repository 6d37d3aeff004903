package everyblade.window.author;

import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.sight.ToleranceCost;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * How much of each zone of an airfoil a station shows at some time of a turn, by the usual criteria; shares of the zone's
 * surface, from 0 to 1.
 *
 * @param row that is looked at
 * @param positions in how many places within the station's tolerance the scope tip was thought to stand
 * @param zones the whole airfoil first, then its zones as the row numbers them
 * @param cost what the station's tolerance takes; empty if it is exact
 */
public record SightShares(Row row, int positions, List<Zone> zones, Optional<ToleranceCost> cost) {

    public SightShares {
        zones = List.copyOf(zones);
    }

    /**
     * One zone.
     *
     * @param name as files write it, {@code all} for the whole airfoil
     * @param every what every position shows
     * @param mean what a position shows, on average
     * @param none what no position shows
     * @param why what keeps most of the rest of {@code every} out of sight; empty if every position shows it all
     */
    public record Zone(String name, double every, double mean, double none, Optional<Hindrance> why) {}

    /**
     * Computes them.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says so
     * @throws IllegalStateException if a shape gives no surface, which the check tells
     */
    public static SightShares of(ReadModel read, Standpoint from, Progress progress) {
        View view = from.view(read.model());
        Row row = read.model().row(view.row()).orElseThrow();
        Sights sights = new Sights(read.scene(), read.model().id(), Criteria.USUAL, SightStore.NONE, progress);
        String station = from.station().orElseThrow();
        Stance stance = new Stance(view.id(), List.of(station), false, view.scopeTip(), Map.of(), Optional.empty());
        StationSight sight = sights.of(stance, station).orElseThrow();
        return new Measuring(sights.scene(row), sight).shares(row, sights.cost(stance, station));
    }

    /** What is measured, and on which facets. */
    private record Measuring(SightScene scene, StationSight sight) {

        SightShares shares(Row row, Optional<ToleranceCost> cost) {
            Zoning zoning = scene.zoning();
            List<Zone> zones = new ArrayList<>();
            zones.add(zone("all", facet -> true));
            for (int zone = 0; zone < zoning.size(); zone++) {
                int index = zone;
                zones.add(zone(
                        zoning.names().get(zone), facet -> scene.row().airfoil().zone(facet) == index));
            }
            return new SightShares(row, sight.poses(), zones, cost);
        }

        private Zone zone(String name, IntPredicate within) {
            return new Zone(
                    name,
                    share(within, facet -> sight.reaches(facet) ? 1 : 0),
                    share(within, facet -> (double) showing(facet) / sight.poses()),
                    share(within, facet -> showing(facet) == 0 ? 1 : 0),
                    why(within));
        }

        private int showing(int facet) {
            int showing = 0;
            for (int pose = 0; pose < sight.poses(); pose++) {
                showing += sight.arcs(pose, facet).isEmpty() ? 0 : 1;
            }
            return showing;
        }

        private double share(IntPredicate within, IntToDoubleFunction part) {
            double all = 0;
            double sum = 0;
            for (int facet = 0; facet < sight.facets(); facet++) {
                if (within.test(facet)) {
                    all += scene.facets().area(facet);
                    sum += part.applyAsDouble(facet) * scene.facets().area(facet);
                }
            }
            return all > 0 ? sum / all : 0;
        }

        private Optional<Hindrance> why(IntPredicate within) {
            return Arrays.stream(Hindrance.values())
                    .filter(one -> share(within, one) > 0)
                    .max(Comparator.comparingDouble(one -> share(within, one)));
        }

        private double share(IntPredicate within, Hindrance one) {
            return share(within, facet -> sight.why(facet).equals(Optional.of(one)) ? 1 : 0);
        }
    }
}
