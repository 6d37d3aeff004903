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
     * @param set index of the last fix when it was set, −1 before the first
     * @param last index of the last fix before the stop that is asked about, −1 before the first
     * @param here correction of the counted angle at that stop, degrees
     */
    double beyondCounted(int set, int last, double here) {
        double beyond = 0;
        double end = here;
        int fix = last;
        while (fix >= 0) {
            int era = fixes.get(fix).era();
            if (set >= 0 && fixes.get(set).era() == era) {
                return beyond + end - correction.applyAsDouble(set);
            }
            while (fix > 0 && fixes.get(fix - 1).era() == era) {
                fix--;
            }
            beyond += end - correction.applyAsDouble(fix);
            fix--;
            end = fix < 0 ? 0 : correction.applyAsDouble(fix);
        }
        return beyond;
    }
}
