package everyblade.core.move;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is still to come at the least. Two bounds, of which the larger holds:
 *
 * <ul>
 *   <li>stays do not overlap in time, so what each view alone can serve costs at least the shortest stretch that serves
 *       it, wherever that is, and the first of them must be reached from here;
 *   <li>whatever the views, every need must be passed: no course turns less than a single stay would if all views were
 *       in use at once.
 * </ul>
 */
final class Outlook {

    private final Walk walk;
    private final Stays stays;
    private final Map<Left, Rest> rests = new HashMap<>();
    private final Map<Doing, Prospect> prospects = new HashMap<>();

    private record Left(BitSet open, BitSet free) {}

    private record Doing(int view, BitSet own, BitSet must) {}

    Outlook(Walk walk) {
        this.walk = walk;
        this.stays = new Stays(walk);
    }

    /** What is left at first: everything. */
    Rest all() {
        BitSet open = new BitSet();
        open.set(0, walk.needs().size());
        BitSet free = new BitSet();
        free.set(0, walk.views());
        return rest(open, free);
    }

    /** What is left of a rest after a stay at a view. */
    Rest after(Rest rest, int view, BitSet served) {
        BitSet open = (BitSet) rest.open().clone();
        open.andNot(served);
        BitSet free = (BitSet) rest.free().clone();
        free.clear(view);
        return rest(open, free);
    }

    private Rest rest(BitSet open, BitSet free) {
        for (int view : free.stream().toArray()) {
            if (!stays.serves(view, open)) {
                free.clear(view);
            }
        }
        Left left = new Left(open, free);
        Rest known = rests.get(left);
        if (known == null) {
            known = Rest.of(rests.size(), open, free, prospects(open, free));
            rests.put(left, known);
        }
        return known;
    }

    private List<Prospect> prospects(BitSet open, BitSet free) {
        BitSet once = new BitSet();
        BitSet more = new BitSet();
        for (int view : free.stream().toArray()) {
            BitSet own = stays.servedThrough(view, open);
            BitSet again = (BitSet) own.clone();
            again.and(once);
            more.or(again);
            once.or(own);
        }
        return free.stream().mapToObj(view -> prospect(view, open, more)).toList();
    }

    private Prospect prospect(int view, BitSet open, BitSet more) {
        BitSet own = stays.servedThrough(view, open);
        BitSet must = (BitSet) own.clone();
        must.andNot(more);
        return prospects.computeIfAbsent(
                new Doing(view, own, must), doing -> new Prospect(walk, stays, view, own, must));
    }

    /** What the rest costs at least from wherever; a cost as of {@link Label}. */
    long somewhere(Rest rest) {
        return rest.stretches() * Label.PER_STEP + rest.seatings();
    }

    /** What the rest costs at least from a place, by the first bound. */
    long oneByOne(Rest rest, long place) {
        return somewhere(rest) + rest.approach(place) * Label.PER_STEP;
    }

    /** What the rest costs at least from a place, by the second bound, where that may be the larger one. */
    long allAtOnce(Rest rest, long place, boolean unturned) {
        if (walk.setBack() || !rest.shared()) {
            return 0;
        }
        long[] least = {Label.NEVER};
        new Rooms(walk, rest.open(), -1, place, unturned).visit((down, ups) -> {
            long up = Arrays.stream(ups).max().orElse(0);
            least[0] = Math.min(least[0], down + up + Math.min(down, up));
        });
        return least[0] * Label.PER_STEP;
    }
}
