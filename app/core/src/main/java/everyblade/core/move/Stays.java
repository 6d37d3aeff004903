package everyblade.core.move;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * All stays at one view that a least course may need, from one place: those that cannot be shortened at either end
 * without losing a need. A longer one turns no less than the next stay would for going on from where this one ended.
 */
final class Stays {

    private final Walk walk;
    private final List<BitSet> servedThrough;

    /**
     * Stays that serve the same needs.
     *
     * @param needs which
     * @param stays at least one, by rising turning
     */
    record Served(BitSet needs, List<Stay> stays) {}

    Stays(Walk walk) {
        this.walk = walk;
        this.servedThrough =
                IntStream.range(0, walk.views()).mapToObj(walk::servedThrough).toList();
    }

    /** Whether a view can serve one of some needs. */
    boolean serves(int view, BitSet needs) {
        return servedThrough.get(view).intersects(needs);
    }

    /** Those of some needs that a view can serve. */
    BitSet servedThrough(int view, BitSet needs) {
        BitSet own = (BitSet) servedThrough.get(view).clone();
        own.and(needs);
        return own;
    }

    /**
     * The stays at a view, together where they serve the same needs.
     *
     * @param place where the shaft stands, steps
     * @param unturned whether nothing was turned before
     * @param own open needs that the view can serve
     * @param must those of them that no later view can serve
     */
    List<Served> at(int view, long place, boolean unturned, BitSet own, BitSet must) {
        Rooms rooms = new Rooms(walk, own, view, place, unturned);
        int[] needs = rooms.needs();
        boolean choice = !own.equals(must);
        Map<BitSet, List<Stay>> stays = new LinkedHashMap<>();
        Map<BitSet, Long> leastUp = new HashMap<>();
        rooms.visit((down, ups) -> {
            long least = least(needs, ups, must);
            for (long up : choice ? reaches(needs, ups, must, least) : List.of(least)) {
                BitSet served = choice ? served(needs, ups, up) : own;
                if (up < Rooms.NEVER && !served.isEmpty() && up < leastUp.getOrDefault(served, Rooms.NEVER)) {
                    leastUp.put(served, up);
                    add(stays.computeIfAbsent(served, key -> new ArrayList<>()), view, down, up, served);
                }
            }
        });
        return stays.entrySet().stream()
                .map(same -> new Served(same.getKey(), sorted(same.getValue())))
                .toList();
    }

    private static List<Stay> sorted(List<Stay> stays) {
        return stays.stream().sorted(Comparator.comparingLong(Stay::turning)).toList();
    }

    /** What must be reached above. */
    private static long least(int[] needs, long[] ups, BitSet must) {
        long least = 0;
        for (int i = 0; i < needs.length; i++) {
            if (must.get(needs[i])) {
                least = Math.max(least, ups[i]);
            }
        }
        return least;
    }

    /** What is worth reaching above: all that must be served, and then each further need. */
    private static Iterable<Long> reaches(int[] needs, long[] ups, BitSet must, long least) {
        TreeSet<Long> reaches = new TreeSet<>(List.of(least));
        for (int i = 0; i < needs.length; i++) {
            if (!must.get(needs[i]) && ups[i] > least) {
                reaches.add(ups[i]);
            }
        }
        return reaches;
    }

    private static BitSet served(int[] needs, long[] ups, long up) {
        BitSet served = new BitSet();
        for (int i = 0; i < needs.length; i++) {
            served.set(needs[i], ups[i] <= up);
        }
        return served;
    }

    /** Adds the stays on a stretch: the nearer end first, or the farther one. */
    static void add(List<Stay> stays, int view, long down, long up, BitSet served) {
        if (up > 0 || down == 0) {
            stays.add(new Stay(view, down, up, true, served));
        }
        if (down > 0) {
            stays.add(new Stay(view, down, up, false, served));
        }
    }
}
