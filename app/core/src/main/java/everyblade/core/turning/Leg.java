package everyblade.core.turning;

import everyblade.core.entry.ZoneSet;
import java.util.OptionalDouble;

/**
 * A stretch of watching one row from one placement of the scope tip: from one stop of its track to the next, or at rest.
 *
 * @param entry the entry that says so
 * @param stance from where, and with what
 * @param placement number of the seating of the scope tip
 * @param watched the zones that were being watched
 * @param from index of the first stop
 * @param to index of the last stop, the same if at rest
 * @param run number of the run of watching without a seam that it belongs to, among those of all rows
 * @param seconds how long it took at most, where that is known
 */
public record Leg(
        int entry, Stance stance, int placement, ZoneSet watched, int from, int to, int run, OptionalDouble seconds) {

    /** Whether this one goes on where the other ended, with nothing unwatched between. */
    public boolean continues(Leg before) {
        return placement == before.placement && from == before.to && stance.equals(before.stance);
    }

    Leg inRun(int number) {
        return new Leg(entry, stance, placement, watched, from, to, number, seconds);
    }

    /** Through which view. */
    public String view() {
        return stance.view();
    }
}
