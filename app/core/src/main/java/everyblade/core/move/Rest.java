package everyblade.core.move;

import java.util.BitSet;
import java.util.List;

/**
 * What is left of a walk.
 *
 * @param number of these open needs and free views in their search
 * @param open needs not served yet
 * @param free views not used yet that can serve one of them
 * @param prospects of these views
 * @param stretches sum of what each view alone can do, steps
 * @param seatings how many views are needed at least
 */
record Rest(int number, BitSet open, BitSet free, List<Prospect> prospects, long stretches, int seatings) {

    static Rest of(int number, BitSet open, BitSet free, List<Prospect> prospects) {
        long stretches = prospects.stream().mapToLong(Prospect::stretch).sum();
        int needed = (int) prospects.stream().filter(Prospect::needed).count();
        int seatings = open.isEmpty() ? 0 : Math.max(1, needed);
        return new Rest(number, open, free, List.copyOf(prospects), stretches, seatings);
    }

    /** Whether some need can be served through more than one view. */
    boolean shared() {
        return prospects.stream().anyMatch(Prospect::shares);
    }

    /** What the first stay costs at least, from this place, beyond the shortest stretch of its view; steps. */
    long approach(long place) {
        long least = prospects.isEmpty() ? 0 : Long.MAX_VALUE;
        for (Prospect prospect : prospects) {
            least = Math.min(least, prospect.approach(place));
            if (least == 0) {
                return 0;
            }
        }
        return least;
    }
}
