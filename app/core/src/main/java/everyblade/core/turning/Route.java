package everyblade.core.turning;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The steps over which the place of a row at a stop is known: from its nearest identification on, or, where it was not
 * identified in this part of the track, by way of rows that were seen both here and where it was.
 *
 * <p>Searched breadth first over the parts of the track, so that as few rows as possible lie between.
 */
final class Route {

    /** A stop that was reached, and the steps that led there. */
    private record At(int stop, BitSet steps) {

        At to(int other) {
            BitSet longer = (BitSet) steps.clone();
            longer.set(Math.min(stop, other) + 1, Math.max(stop, other) + 1);
            return new At(other, longer);
        }
    }

    private Route() {}

    /** Steps, each by the stop at which it ended; none if the row is known by no way. */
    static BitSet of(Track track, String row, int stop) {
        List<Stop> stops = track.stops();
        Deque<At> waiting = new ArrayDeque<>(List.of(new At(stop, new BitSet())));
        Set<Integer> parts = new HashSet<>(Set.of(stops.get(stop).part()));
        while (!waiting.isEmpty()) {
            At at = waiting.remove();
            int part = stops.get(at.stop).part();
            Map<String, Sighting> here = new LinkedHashMap<>();
            for (int i = track.sightings().size() - 1; i >= 0 && !here.containsKey(row); i--) {
                Sighting sighting = track.sightings().get(i);
                if (!sighting.reads() && stops.get(sighting.stop()).part() == part) {
                    here.putIfAbsent(sighting.frame(), sighting);
                }
            }
            if (here.containsKey(row)) {
                return at.to(here.get(row).stop()).steps;
            }
            for (Sighting there : track.sightings()) {
                if (here.containsKey(there.frame())
                        && parts.add(stops.get(there.stop()).part())) {
                    waiting.add(
                            new At(there.stop(), at.to(here.get(there.frame()).stop()).steps));
                }
            }
        }
        return new BitSet();
    }
}
