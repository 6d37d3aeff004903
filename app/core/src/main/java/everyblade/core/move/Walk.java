package everyblade.core.move;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;

/**
 * One shaft on the line of its readings, and what must be passed while which view is in use. For a row that stands still
 * it is the scope tip's way round, seen from the row.
 *
 * @param start reading now, steps
 * @param rising whether readings may rise
 * @param falling whether readings may fall
 * @param setBack whether each seating of the scope tip begins at the start, wherever the one before ended
 * @param seated the view in use, if it is one of these
 * @param views how many there are
 * @param needs what must be seen
 */
record Walk(
        long start, boolean rising, boolean falling, boolean setBack, OptionalInt seated, int views, List<Need> needs) {

    Walk {
        needs = List.copyOf(needs);
    }

    /** The needs that a view can serve. */
    BitSet servedThrough(int view) {
        BitSet served = new BitSet();
        for (int i = 0; i < needs.size(); i++) {
            served.set(i, needs.get(i).servedThrough(view));
        }
        return served;
    }
}
