package everyblade.core.move;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Where a search stands: some stays are made, some needs and views are left.
 *
 * <p>Costs count turning first and seatings of the scope tip second, in one number: {@link #PER_STEP} for each step and
 * one for each seating.
 *
 * @param before the label before the last stay; null at the start
 * @param stay the last one; null at the start
 * @param place where the shaft stands, steps from 0 to a turn
 * @param rest what is left
 * @param cost of the stays made
 * @param least cost of any course that goes on from here
 */
record Label(Label before, Stay stay, long place, Rest rest, long cost, long least) {

    static final long PER_STEP = 1L << 10;

    /** More steps than any course has, and few enough to be added up as a cost. */
    static final long NEVER = Long.MAX_VALUE / PER_STEP / 8;

    boolean first() {
        return before == null;
    }

    boolean done() {
        return rest.open().isEmpty();
    }

    Label atLeast(long raised) {
        return new Label(before, stay, place, rest, cost, raised);
    }

    List<Stay> stays() {
        Deque<Stay> stays = new ArrayDeque<>();
        for (Label label = this; !label.first(); label = label.before) {
            stays.addFirst(label.stay);
        }
        return List.copyOf(stays);
    }
}
