package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Trail;
import java.util.ArrayList;
import java.util.List;

/**
 * Watching without a seam: legs that follow each other from one placement, with nothing unwatched between.
 *
 * @param zones that were watched all the while
 * @param legs in order, each from the stop at which the one before ended; at least one
 */
record Pass(ZoneSet zones, Trail<Leg> legs) {

    int from() {
        return legs.get(0).from();
    }

    int to() {
        return legs.last().to();
    }

    /** Number of the run that it belongs to. */
    int run() {
        return legs.get(0).run();
    }

    String view() {
        return legs.last().view();
    }

    /**
     * The passes that a new leg has ended, and those that the next one may continue.
     *
     * @param ended passes that can grow no more
     * @param open passes under way
     */
    record Sorted(List<Pass> ended, List<Pass> open) {

        /** With one more leg: each open pass goes on with the zones still watched, and ends for the others. */
        static Sorted after(List<Pass> open, Leg leg) {
            List<Pass> ended = new ArrayList<>();
            List<Pass> going = new ArrayList<>();
            ZoneSet fresh = leg.watched();
            for (Pass pass : open) {
                ZoneSet on = leg.continues(pass.legs.last()) ? pass.zones.intersection(leg.watched()) : ZoneSet.NONE;
                ZoneSet off = pass.zones.minus(on);
                if (!off.isEmpty()) {
                    ended.add(new Pass(off, pass.legs));
                }
                if (!on.isEmpty()) {
                    going.add(new Pass(on, pass.legs.with(leg)));
                    fresh = fresh.minus(on);
                }
            }
            if (!fresh.isEmpty()) {
                going.add(new Pass(fresh, Trail.<Leg>empty().with(leg)));
            }
            return new Sorted(List.copyOf(ended), List.copyOf(going));
        }
    }
}
