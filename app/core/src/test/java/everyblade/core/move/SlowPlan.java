package everyblade.core.move;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The least turning that shows some cells, the slow way: mark by mark, whatever is in sight through the view in use is
 * seen; a view that was left is not seated again. Knows nothing of stretches and courses.
 */
final class SlowPlan {

    /** A view of the slow plan: what it shows at each mark of the shaft, as bits of cells. */
    record SlowView(int[] shows) {}

    private final int marks;
    private final List<SlowView> views;
    private final boolean rising;
    private final boolean falling;
    private final int[] least;
    private final Deque<Integer> queue = new ArrayDeque<>();
    private final int cells;

    private SlowPlan(int marks, int cells, List<SlowView> views, boolean rising, boolean falling) {
        this.marks = marks;
        this.cells = cells;
        this.views = views;
        this.rising = rising;
        this.falling = falling;
        this.least = new int[marks * (views.size() + 1) << views.size() << cells];
    }

    /** Least turning in marks until all cells are seen. */
    static int of(int marks, int cells, List<SlowView> views, boolean rising, boolean falling) {
        return new SlowPlan(marks, cells, views, rising, falling).walked();
    }

    private int state(int mark, int view, int used, int seen) {
        return ((mark * (views.size() + 1) + view << views.size()) + used << cells) + seen;
    }

    private int walked() {
        Arrays.fill(least, Integer.MAX_VALUE);
        reach(0, views.size(), 0, 0, 0, false);
        while (!queue.isEmpty()) {
            int state = queue.removeFirst();
            int seen = state & (1 << cells) - 1;
            int used = state >> cells & (1 << views.size()) - 1;
            int view = (state >> cells >> views.size()) % (views.size() + 1);
            int mark = (state >> cells >> views.size()) / (views.size() + 1);
            int turned = least[state];
            if (seen == (1 << cells) - 1) {
                return turned;
            }
            for (int other = 0; other < views.size(); other++) {
                if ((used >> other & 1) == 0) {
                    reach(mark, other, used | 1 << other, seen, turned, false);
                }
            }
            if (rising) {
                reach((mark + 1) % marks, view, used, seen, turned + 1, true);
            }
            if (falling) {
                reach((mark + marks - 1) % marks, view, used, seen, turned + 1, true);
            }
        }
        throw new AssertionError("not every cell can be seen");
    }

    private void reach(int mark, int view, int used, int seen, int turned, boolean later) {
        int now = view == views.size() ? seen : seen | views.get(view).shows()[mark];
        int state = state(mark, view, used, now);
        if (turned < least[state]) {
            least[state] = turned;
            if (later) {
                queue.addLast(state);
            } else {
                queue.addFirst(state);
            }
        }
    }
}
