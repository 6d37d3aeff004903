package everyblade.core.turning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The sightings of a track told again, where a doubt has moved. */
final class Fixes {

    private Fixes() {}

    /**
     * What is known after each sighting, going on from what was known before as far as that still holds.
     *
     * @param before what was known with the stops as they were
     * @param moved the first stop that is not as it was
     */
    static Trail<KalmanUpdate> of(List<Stop> stops, List<Sighting> sightings, Trail<KalmanUpdate> before, int moved) {
        List<Sighting> told = told(stops, sightings);
        int same = 0;
        while (same < Math.min(before.size(), told.size())
                && told.get(same).stop() < moved
                && told.get(same).equals(before.get(same).sighting())) {
            same++;
        }
        Trail<KalmanUpdate> fixes = before.first(same);
        for (Sighting sighting : told.subList(same, told.size())) {
            fixes = fixes.with(KalmanUpdate.after(fixes, stops, sighting));
        }
        return fixes;
    }

    /**
     * The sightings that tell something, in the order in which they do. Where a part begins with a doubt, airfoils come
     * before the reading, so that what is known of them goes on; in one in which no airfoil was seen such a reading tells
     * nothing.
     */
    private static List<Sighting> told(List<Stop> stops, List<Sighting> sightings) {
        BitSet identified = new BitSet();
        for (Sighting sighting : sightings) {
            if (!sighting.reads()) {
                identified.set(stops.get(sighting.stop()).part());
            }
        }
        List<Sighting> told = new ArrayList<>();
        List<Sighting> waiting = new ArrayList<>();
        for (int i = 0; i < sightings.size(); i++) {
            Sighting sighting = sightings.get(i);
            Stop stop = stops.get(sighting.stop());
            (sighting.reads() && stop.doubtful() ? waiting : told).add(framed(sighting, stops));
            if (i + 1 == sightings.size() || sightings.get(i + 1).stop() != sighting.stop()) {
                told.addAll(identified.get(stop.part()) ? waiting : List.of());
                waiting.clear();
            }
        }
        return told;
    }

    /** A sighting with its frame named in full: the dial may have slipped on the shaft wherever one part ends. */
    static Sighting framed(Sighting sighting, List<Stop> stops) {
        return sighting.reads() ? sighting.in(readingFrame(sighting.frame(), stops.get(sighting.stop()))) : sighting;
    }

    /** Whether a frame is a setting of the reading; no row's id has a slash. */
    static boolean ofReading(String frame) {
        return frame.indexOf('/') >= 0;
    }

    /** The frame of a setting of the reading at a stop. */
    static String readingFrame(String setting, Stop stop) {
        return setting + "/" + stop.part();
    }
}
