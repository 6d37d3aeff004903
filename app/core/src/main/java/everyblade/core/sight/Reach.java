package everyblade.core.sight;

import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the views of an engine can show of a row, facet by facet: a facet is within reach if every pose of some station
 * shows it, of all airfoils.
 *
 * @param stations each station with its view, in the model's order
 * @param facets whether each facet is within reach of some station
 * @param why what keeps each facet out of reach at the station that comes nearest to showing it; empty if it is within reach
 */
public record Reach(List<FromStation> stations, boolean[] facets, List<Optional<Hindrance>> why) {

    /**
     * What one station shows.
     *
     * @param view id of its view
     * @param station its id
     * @param travels whether every airfoil can be brought before it
     * @param sight what it shows
     * @param anyDetail what it shows, however coarse the pixels are
     */
    public record FromStation(
            String view, String station, boolean travels, StationSight sight, StationSight anyDetail) {}

    /**
     * The reach of a row.
     *
     * @param vanes positions of movable vanes by row
     * @param proof the finest line seen on the day's target
     * @param used further stances, which a job has used
     */
    public static Reach of(
            Sights sights, Row row, Map<String, String> vanes, Optional<Stance.Proof> proof, Collection<Stance> used) {
        int count = sights.scene(row).facets().count();
        boolean[] facets = new boolean[count];
        Hindrance[] why = new Hindrance[count];
        List<Stance> stances = new ArrayList<>(sights.stances(row, vanes, proof));
        stances.addAll(used);
        List<FromStation> stations = new ArrayList<>();
        for (Stance stance : stances) {
            for (String id : stance.stations()) {
                sights.of(stance, id).ifPresent(sight -> {
                    StationSight anyDetail = sights.judgesDetail()
                            ? sights.ofAnyDetail(stance, id).orElse(sight)
                            : sight;
                    stations.add(new FromStation(stance.view(), id, sights.travels(stance.view()), sight, anyDetail));
                    for (int facet = 0; facet < count; facet++) {
                        facets[facet] |= sight.reaches(facet);
                        why[facet] = later(why[facet], sight.why(facet).orElse(null));
                    }
                });
            }
        }
        List<Optional<Hindrance>> reasons = new ArrayList<>();
        for (int facet = 0; facet < count; facet++) {
            reasons.add(facets[facet] ? Optional.empty() : Optional.ofNullable(why[facet]));
        }
        return new Reach(List.copyOf(stations), facets, List.copyOf(reasons));
    }

    /** The hindrance that is asked later lets more through before it. */
    private static Hindrance later(Hindrance a, Hindrance b) {
        return a == null || b != null && b.compareTo(a) > 0 ? b : a;
    }
}
