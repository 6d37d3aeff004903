package everyblade.core.turning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All sightings of a track told again from the first on, where a doubt has moved. */
final class Fixes {

    private Fixes() {}

    /**
     * What is known after each sighting. Where a part begins with a doubt, airfoils come before the reading, so that what
     * is known of them goes on; a reading of a part in which no airfoil was seen tells nothing.
     */
    static Trail<Fix> of(List<Stop> stops, List<Sighting> sightings) {
        Set<Integer> identified = new HashSet<>();
        for (Sighting sighting : sightings) {
            if (!sighting.reads()) {
                identified.add(stops.get(sighting.stop()).part());
            }
        }
        Trail<Fix> fixes = Trail.empty();
        List<Sighting> waiting = new ArrayList<>();
        for (int i = 0; i < sightings.size(); i++) {
            Sighting sighting = sightings.get(i);
            Stop stop = stops.get(sighting.stop());
            if (sighting.reads() && stop.doubtful()) {
                waiting.add(sighting);
            } else {
                fixes = fixes.with(Fix.after(fixes, stops, framed(sighting, stops)));
            }
            boolean last = i + 1 == sightings.size() || sightings.get(i + 1).stop() != sighting.stop();
            if (last && identified.contains(stop.part())) {
                for (Sighting reading : waiting) {
                    fixes = fixes.with(Fix.after(fixes, stops, framed(reading, stops)));
                }
            }
            if (last) {
                waiting.clear();
            }
        }
        return fixes;
    }

    /** A sighting with its frame named in full: the dial may have slipped on the shaft wherever one part ends. */
    static Sighting framed(Sighting sighting, List<Stop> stops) {
        return sighting.reads() ? sighting.in(readingFrame(sighting.frame(), stops.get(sighting.stop()))) : sighting;
    }

    /** The frame of a setting of the reading at a stop. */
    static String readingFrame(String setting, Stop stop) {
        return setting + "/" + stop.part();
    }
}
