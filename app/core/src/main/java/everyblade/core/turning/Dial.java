package everyblade.core.turning;

import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * How a dial that was set goes on from what it showed: with the rotor, as far as sightings tell how that turned, and
 * otherwise as counted. Corrections of two eras say nothing of each other, so over a change of era it goes on from what it
 * shows.
 *
 * @param fixes what was known when
 * @param correction of the counted angle at each of them, degrees
 */
record Dial(List<KalmanUpdate> fixes, IntToDoubleFunction correction) {

    /**
     * By how much it turned further than was counted since it was set, degrees.
     *
     * @param set index of the last fix when it was set
     * @param last index of the last fix at or before the stop that is asked about, at least that
     * @param here correction of the counted angle at that stop, degrees
     */
    double beyondCounted(int set, int last, double here) {
        double beyond = 0;
        double end = here;
        int fix = last;
        while (era(fix) != era(set)) {
            int era = era(fix);
            while (era(fix - 1) == era) {
                fix--;
            }
            beyond += end - correction.applyAsDouble(fix);
            fix--;
            end = correction.applyAsDouble(fix);
        }
        return beyond + end - correction.applyAsDouble(set);
    }

    private int era(int fix) {
        return fixes.get(fix).era();
    }
}
