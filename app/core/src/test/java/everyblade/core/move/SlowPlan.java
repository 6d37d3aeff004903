package everyblade.core.move;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The least time in which some cells can be shown, the slow way: mark by mark, whatever is in sight through the view in
 * use while watching is seen. A view that was left is not seated again, and once watched at it goes on one way. Knows
 * nothing of covers and courses. Time is counted in half seconds.
 */
final class SlowPlan {

    static final double PER_MINUTE = 120;
    /** As usual: 4 minutes for a watched turn of 24 marks, 1 for an unwatched one, 0.25 for a move, 2 for a view. */
    private static final int WATCHED = 20;

    private static final int UNWATCHED = 5;
    private static final int MOVE = 30;
    private static final int VIEW = 240;

    private static final int STILL = 0;
    private static final int FREE = 0;
    private static final int LOOKED = 3;

    /** What a view shows at each mark of the shaft, as bits of cells. */
    record SlowView(int[] shows) {}

    /**
     * Where one is.
     *
     * @param mode still, or watching (1 on, 2 back) or not (3 on, 4 back)
     * @param phase of the stay: free, going on, going back, or one look taken
     */
    private record State(int mark, int view, int used, int phase, int mode, int seen) {}

    private record Reached(State state, int time) {}

    private final int marks;
    private final List<SlowView> views;
    private final boolean rising;
    private final boolean falling;
    private final int cells;

    private SlowPlan(int marks, int cells, List<SlowView> views, boolean rising, boolean falling) {
        this.marks = marks;
        this.cells = cells;
        this.views = views;
        this.rising = rising;
        this.falling = falling;
    }

    /** Least time until all cells are seen, from mark 0, seated at this view. */
    static int of(int marks, int cells, List<SlowView> views, int seated, boolean rising, boolean falling) {
        return new SlowPlan(marks, cells, views, rising, falling).least(seated);
    }

    private int number(State state) {
        int number = state.mark();
        number = number * views.size() + state.view();
        number = (number << views.size()) + state.used();
        number = number * 4 + state.phase();
        number = number * 5 + state.mode();
        return (number << cells) + state.seen();
    }

    private int least(int seated) {
        int[] times = new int[marks * views.size() * (1 << views.size()) * 20 << cells];
        Arrays.fill(times, Integer.MAX_VALUE);
        PriorityQueue<Reached> queue = new PriorityQueue<>((a, b) -> Integer.compare(a.time(), b.time()));
        queue.add(new Reached(new State(0, seated, 1 << seated, FREE, STILL, 0), 0));
        while (!queue.isEmpty()) {
            Reached now = queue.remove();
            int number = number(now.state());
            if (now.time() >= times[number]) {
                continue;
            }
            times[number] = now.time();
            if (now.state().seen() == (1 << cells) - 1) {
                return now.time();
            }
            queue.addAll(next(now));
        }
        throw new AssertionError("not every cell can be seen");
    }

    private List<Reached> next(Reached now) {
        State at = now.state();
        List<Reached> next = new ArrayList<>();
        for (int other = 0; other < views.size(); other++) {
            if ((at.used() >> other & 1) == 0) {
                State there = new State(at.mark(), other, at.used() | 1 << other, FREE, STILL, at.seen());
                next.add(new Reached(there, now.time() + VIEW));
            }
        }
        int shown = at.seen() | views.get(at.view()).shows()[at.mark()];
        int looked = at.phase() == FREE ? LOOKED : at.phase();
        next.add(new Reached(new State(at.mark(), at.view(), at.used(), looked, STILL, shown), now.time() + MOVE));
        for (int way = 1; way <= 2; way++) {
            if (!(way == 1 ? rising : falling)) {
                continue;
            }
            boolean bound = at.phase() == 3 - way;
            int phase = at.phase() == FREE ? FREE : way;
            if (!bound) {
                next.add(new Reached(new State(at.mark(), at.view(), at.used(), way, way, shown), now.time() + MOVE));
                next.add(new Reached(
                        new State(at.mark(), at.view(), at.used(), phase, way + 2, at.seen()), now.time() + MOVE));
            }
            int mark = Math.floorMod(at.mark() + (way == 1 ? 1 : -1), marks);
            if (at.mode() == way) {
                int seen = at.seen() | views.get(at.view()).shows()[mark];
                next.add(new Reached(
                        new State(mark, at.view(), at.used(), at.phase(), way, seen), now.time() + WATCHED));
            }
            if (at.mode() == way + 2) {
                next.add(new Reached(
                        new State(mark, at.view(), at.used(), at.phase(), way + 2, at.seen()), now.time() + UNWATCHED));
            }
        }
        return next;
    }
}
