package everyblade.core.turning;

import java.util.BitSet;
import java.util.List;

/**
 * What all checks of a track together say of its steps, each step by the stop at which it ended. Never changes.
 *
 * @param cleared on which nothing was lost, by those that agree
 * @param suspected on which something may have been lost, by those that do not
 * @param judged how many stops there were at the last check
 */
record Suspicion(BitSet cleared, BitSet suspected, int judged) {

    /** Before the first check. */
    static Suspicion none() {
        return new Suspicion(new BitSet(), new BitSet(), 1);
    }

    /** With one more check, made when there were so many stops. */
    Suspicion with(Check check, int stops) {
        return check.lost()
                ? new Suspicion(cleared, union(suspected, check.steps()), stops)
                : new Suspicion(union(cleared, check.steps()), suspected, stops);
    }

    private static BitSet union(BitSet some, BitSet others) {
        BitSet all = (BitSet) some.clone();
        all.or(others);
        return all;
    }

    /**
     * From which stop on a check may change what is doubtful: from its first step, or the first that is not judged yet.
     *
     * @param settings the stops at which the shaft's reading was set, the first stop among them
     */
    int changing(Check check, List<Stop> stops, BitSet settings) {
        int step = check.steps().nextSetBit(0);
        int from = step < 0 ? judged : Math.min(step, judged);
        int end = from;
        while (end < stops.size() && stops.get(end).way() == Stop.Way.COUNTED) {
            end++;
        }
        return end < stops.size() && stops.get(end).way() == Stop.Way.READ ? firstCounted(stops, settings, from) : from;
    }

    /**
     * The first of the counted steps that lead to a stop without another between, but none before the dial was set: what was
     * lost before that no reading can have made good.
     */
    private static int firstCounted(List<Stop> stops, BitSet settings, int stop) {
        int first = stop;
        while (stops.get(first - 1).way() == Stop.Way.COUNTED && !settings.get(first - 1)) {
            first--;
        }
        return first;
    }

    /**
     * The steps from one on that may hold a loss. A reading and the counted moves before it may have made each other good,
     * so that they are suspected together. Of earlier steps it tells nothing.
     *
     * @param settings the stops at which the shaft's reading was set, the first stop among them
     * @param from a stop that {@link #changing} gave
     */
    BitSet doubtful(List<Stop> stops, BitSet settings, int from) {
        BitSet doubtful = (BitSet) suspected.clone();
        doubtful.andNot(cleared);
        for (int stop = from; stop < stops.size(); stop++) {
            if (stops.get(stop).way() == Stop.Way.READ) {
                int first = firstCounted(stops, settings, stop);
                int suspect = doubtful.nextSetBit(first);
                if (suspect >= 0 && suspect <= stop) {
                    doubtful.set(first, stop + 1);
                }
            }
        }
        doubtful.andNot(cleared);
        return doubtful;
    }
}
