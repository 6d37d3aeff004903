package everyblade.core.move;

import java.util.BitSet;

/**
 * One seating of the scope tip: from where it begins, the shaft goes to the nearer end of a stretch and then, watching,
 * to the other one. Lengths in steps.
 *
 * @param view index of the view in its walk
 * @param down how far the stretch reaches below the reading at which it begins
 * @param up how far it reaches above
 * @param endsUp whether the upper end is the last; the lower one is the first then
 * @param served the needs of the walk that it serves for the first time
 */
record Stay(int view, long down, long up, boolean endsUp, BitSet served) {

    /** How far the shaft turns. */
    long turning() {
        return endsUp ? 2 * down + up : 2 * up + down;
    }

    /** Where the shaft stands after it, seen from where it began. */
    long end() {
        return endsUp ? up : -down;
    }

    /** The same stay with those of some needs that it serves. */
    Stay serving(Walk walk, BitSet open, long place, boolean unturned) {
        Rooms rooms = new Rooms(walk, open, view, place, unturned);
        BitSet own = new BitSet();
        rooms.visit((reach, ups) -> {
            for (int i = 0; i < ups.length; i++) {
                if (reach <= down && ups[i] <= up) {
                    own.set(rooms.needs()[i]);
                }
            }
        });
        return new Stay(view, down, up, endsUp, own);
    }
}
