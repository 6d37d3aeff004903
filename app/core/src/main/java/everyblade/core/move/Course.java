package everyblade.core.move;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Stays that serve all needs of a walk, one after the other.
 *
 * @param stays in order
 * @param turning how far the shaft turns in all, steps
 * @param bound what every course turns at least, steps; at most {@code turning}
 */
record Course(List<Stay> stays, long turning, long bound) {

    Course {
        stays = List.copyOf(stays);
    }

    /** The same course, each need counted to the first stay that serves it. */
    Course serving(Walk walk) {
        BitSet open = new BitSet();
        open.set(0, walk.needs().size());
        long place = walk.start();
        List<Stay> all = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            Stay stay = stays.get(i).serving(walk, open, place, i == 0 || walk.setBack());
            open.andNot(stay.served());
            place = walk.setBack() ? place : place + stay.end();
            all.add(stay);
        }
        return new Course(all, turning, bound);
    }

    /** Whether no course turns less. */
    boolean proved() {
        return bound == turning;
    }
}
