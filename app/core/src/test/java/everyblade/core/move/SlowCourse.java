package everyblade.core.move;

import java.util.Arrays;

/**
 * The least course of a small walk, the slow way: from every place, with every set of views used and needs served, every
 * stretch of whole marks is tried, and a need is served if the stretch meets it at any turn.
 */
final class SlowCourse {

    private final Walk walk;
    private final int marks;
    private final long mark;
    /** Least turning in marks, times 100, plus seatings. */
    private final int[][][] cost;

    private SlowCourse(Walk walk, int marks) {
        this.walk = walk;
        this.marks = marks;
        this.mark = Steps.TURN / marks;
        this.cost = new int[1 << walk.views()][1 << walk.needs().size()][marks];
    }

    /** Turning in marks, times 100, plus seatings of the scope tip. All angles of the walk stand at marks. */
    static int of(Walk walk, int marks) {
        return new SlowCourse(walk, marks).least();
    }

    private int least() {
        for (int[][] byNeeds : cost) {
            for (int[] byPlace : byNeeds) {
                Arrays.fill(byPlace, Integer.MAX_VALUE);
            }
        }
        int start = (int) Math.floorMod(walk.start() / mark, (long) marks);
        cost[0][0][start] = 0;
        int least = Integer.MAX_VALUE;
        for (int used = 0; used < cost.length; used++) {
            for (int served = 0; served < cost[used].length; served++) {
                for (int place = 0; place < marks; place++) {
                    if (cost[used][served][place] < Integer.MAX_VALUE) {
                        goOn(used, served, place);
                        least = served == cost[used].length - 1 ? Math.min(least, cost[used][served][place]) : least;
                    }
                }
            }
        }
        return least;
    }

    private void goOn(int used, int served, int place) {
        for (int view = 0; view < walk.views(); view++) {
            if ((used >> view & 1) != 0) {
                continue;
            }
            boolean sits = used == 0
                    && !walk.setBack()
                    && walk.seated().isPresent()
                    && walk.seated().getAsInt() == view;
            for (int down = 0; down <= (walk.falling() ? 2 * marks : 0); down++) {
                for (int up = 0; up <= (walk.rising() ? 2 * marks : 0); up++) {
                    int after = served | served(view, place, down, up);
                    int seating = sits ? 0 : 1;
                    if (down == 0 || walk.rising()) {
                        reach(used | 1 << view, after, place + up, cost[used][served][place], 2 * down + up, seating);
                    }
                    if (up == 0 || walk.falling()) {
                        reach(used | 1 << view, after, place - down, cost[used][served][place], 2 * up + down, seating);
                    }
                    if (up == 0) {
                        reach(used | 1 << view, after, place - down, cost[used][served][place], down, seating);
                    }
                }
            }
        }
    }

    private void reach(int used, int served, int place, int before, int turned, int seating) {
        int at = walk.setBack() ? (int) Math.floorMod(walk.start() / mark, (long) marks) : Math.floorMod(place, marks);
        int[] known = cost[used][served];
        known[at] = Math.min(known[at], before + 100 * turned + seating);
    }

    private int served(int view, int place, int down, int up) {
        int served = 0;
        for (int i = 0; i < walk.needs().size(); i++) {
            for (Chance chance : walk.needs().get(i).chances()) {
                for (int turn = -5; turn <= 5; turn++) {
                    long shift = turn * Steps.TURN;
                    boolean meets = (place - down) * mark <= chance.high() + shift
                            && (place + up) * mark >= chance.low() + shift;
                    served |= chance.view() == view && meets ? 1 << i : 0;
                }
            }
        }
        return served;
    }
}
