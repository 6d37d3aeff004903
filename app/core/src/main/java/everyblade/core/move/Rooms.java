package everyblade.core.move;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How far a stretch must reach below and above one place to serve each of some needs: the more below, the less above.
 */
final class Rooms {

    /** More than any stretch reaches. */
    static final long NEVER = Label.NEVER;

    /** A move by so little asks only that the shaft's reading be read anew. */
    private static final long LEAST = 1_000;

    /** A stretch that serves a need, by its index among those asked for. */
    private record Room(int index, long down, long up) {}

    /** Is told, for every reach below that matters, by rising reach, what each need then asks for above. */
    interface Visitor {

        /**
         * @param down reach below, steps
         * @param ups reach above that each need asks for, {@link #NEVER} where none helps; not to be kept
         */
        void visit(long down, long[] ups);
    }

    private final Walk walk;
    private final int[] needs;
    private final List<Room> rooms = new ArrayList<>();

    /**
     * @param served needs of the walk
     * @param view through which they are to be served; any if it is negative
     * @param place where the shaft stands, steps
     * @param unturned whether nothing was turned before
     */
    Rooms(Walk walk, BitSet served, int view, long place, boolean unturned) {
        this.walk = walk;
        this.needs = served.stream().toArray();
        for (int i = 0; i < needs.length; i++) {
            for (Chance chance : walk.needs().get(needs[i]).chances()) {
                if (view < 0 || chance.view() == view) {
                    add(i, chance, place, unturned);
                }
            }
        }
        rooms.sort(Comparator.comparingLong(Room::down));
    }

    /** The needs that were asked for, in their order in the walk. */
    int[] needs() {
        return needs;
    }

    void visit(Visitor visitor) {
        long[] ups = new long[needs.length];
        Arrays.fill(ups, NEVER);
        long down = 0;
        for (Room room : rooms) {
            if (room.down() > down) {
                visitor.visit(down, ups);
                down = room.down();
            }
            ups[room.index()] = Math.min(ups[room.index()], room.up());
        }
        visitor.visit(down, ups);
    }

    private void add(int index, Chance chance, long place, boolean unturned) {
        long turns = Math.floorDiv(place - chance.low(), Steps.TURN);
        long down;
        do {
            long high = chance.high() + turns * Steps.TURN;
            long low = chance.low() + turns * Steps.TURN;
            down = Math.max(0, place - high);
            long up = Math.max(0, low - place);
            if (unturned && down == 0 && up == 0 && !chance.atStart()) {
                // The shaft's angle is not known well enough until its reading is read anew.
                add(index, 0, Math.min(LEAST, Math.max(1, high - place)));
                add(index, Math.min(LEAST, Math.max(1, place - low)), 0);
            } else {
                add(index, down, up);
            }
            turns++;
        } while (down > 0);
    }

    private void add(int index, long down, long up) {
        if ((down == 0 || walk.falling()) && (up == 0 || walk.rising())) {
            rooms.add(new Room(index, down, up));
        }
    }
}
