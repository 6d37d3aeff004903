package everyblade.core.move;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * All stays at one view that a least course may need, from one place: those that cannot be shortened at either end
 * without losing a need. A longer one turns no less later on than the next stay would for going on from where this ended.
 *
 * <p>Cost: the square of the number of needs that the view can serve.
 */
final class Stays {

    /** A move by so little asks only that the shaft's reading be read anew. */
    private static final long LEAST = 1_000;

    private final Walk walk;
    private final List<BitSet> servedThrough;

    Stays(Walk walk) {
        this.walk = walk;
        this.servedThrough =
                IntStream.range(0, walk.views()).mapToObj(walk::servedThrough).toList();
    }

    /**
     * How far a stretch must reach below and above a place to serve a need.
     *
     * @param down steps, not negative
     * @param up steps, not negative
     */
    record Room(long down, long up) {}

    /**
     * The stays at a view, by rising reach below.
     *
     * @param place where the shaft stands, steps
     * @param first whether nothing was turned yet
     * @param open needs not served yet
     * @param must those of them that no later view can serve
     */
    List<Stay> at(int view, long place, boolean first, BitSet open, BitSet must) {
        BitSet own = servedThrough(view, open);
        List<List<Room>> rooms = new ArrayList<>();
        TreeSet<Long> downs = new TreeSet<>(List.of(0L));
        int[] needs = own.stream().toArray();
        for (int need : needs) {
            List<Room> all = rooms(walk.needs().get(need), view, place, first);
            rooms.add(all);
            all.forEach(room -> downs.add(room.down()));
        }
        List<Stay> stays = new ArrayList<>();
        Map<BitSet, Long> leastUp = new HashMap<>();
        for (long down : downs) {
            long[] ups = rooms.stream().mapToLong(all -> up(all, down)).toArray();
            for (long up : reaches(needs, ups, must)) {
                BitSet served = new BitSet();
                for (int i = 0; i < needs.length; i++) {
                    served.set(needs[i], ups[i] <= up);
                }
                if (!served.isEmpty() && up < leastUp.getOrDefault(served, Long.MAX_VALUE)) {
                    leastUp.put(served, up);
                    add(stays, view, down, up, served);
                }
            }
        }
        return stays;
    }

    /** Those of some needs that a view can serve. */
    BitSet servedThrough(int view, BitSet needs) {
        BitSet own = (BitSet) servedThrough.get(view).clone();
        own.and(needs);
        return own;
    }

    private static void add(List<Stay> stays, int view, long down, long up, BitSet served) {
        if (up > 0 || down == 0) {
            stays.add(new Stay(view, down, up, true, served));
        }
        if (down > 0) {
            stays.add(new Stay(view, down, up, false, served));
        }
    }

    /** What is worth reaching above: all that must be served, and then each further need. */
    private static TreeSet<Long> reaches(int[] needs, long[] ups, BitSet must) {
        long least = 0;
        for (int i = 0; i < needs.length; i++) {
            if (must.get(needs[i])) {
                least = Math.max(least, ups[i]);
            }
        }
        TreeSet<Long> reaches = new TreeSet<>();
        if (least == Long.MAX_VALUE) {
            return reaches;
        }
        reaches.add(least);
        for (int i = 0; i < needs.length; i++) {
            if (!must.get(needs[i]) && ups[i] > least && ups[i] < Long.MAX_VALUE) {
                reaches.add(ups[i]);
            }
        }
        return reaches;
    }

    /** The least reach above that serves, with this reach below; the greatest number if none does. */
    static long up(List<Room> rooms, long down) {
        return rooms.stream()
                .filter(room -> room.down() <= down)
                .mapToLong(Room::up)
                .min()
                .orElse(Long.MAX_VALUE);
    }

    /** Every least stretch round a place that serves a need through a view; through any if it is negative. */
    List<Room> rooms(Need need, int view, long place, boolean first) {
        List<Room> rooms = new ArrayList<>();
        for (Chance chance : need.chances()) {
            if (view < 0 || chance.view() == view) {
                addRooms(rooms, chance, place, first);
            }
        }
        return rooms;
    }

    private void addRooms(List<Room> rooms, Chance chance, long place, boolean first) {
        long turns = Math.floorDiv(place - chance.low(), Steps.TURN);
        long down;
        do {
            Chance here = chance.moved(turns * Steps.TURN);
            down = Math.max(0, place - here.high());
            long up = Math.max(0, here.low() - place);
            if (first && down == 0 && up == 0 && !chance.atStart()) {
                addReadAnew(rooms, here, place);
            } else {
                add(rooms, down, up);
            }
            turns++;
        } while (down > 0);
    }

    /** The chance is here, but the shaft's angle is not known well enough for it until its reading is read anew. */
    private void addReadAnew(List<Room> rooms, Chance here, long place) {
        add(rooms, 0, Math.min(LEAST, Math.max(1, here.high() - place)));
        add(rooms, Math.min(LEAST, Math.max(1, place - here.low())), 0);
    }

    private void add(List<Room> rooms, long down, long up) {
        if ((down == 0 || walk.falling()) && (up == 0 || walk.rising())) {
            rooms.add(new Room(down, up));
        }
    }
}
