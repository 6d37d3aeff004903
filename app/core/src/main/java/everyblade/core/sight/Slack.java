package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.util.Arrays;
import java.util.List;

/**
 * By how much the sight arcs of a facet's middle may lie elsewhere at its borders: half of the most that an end of one of
 * them changes to the middle of a facet beside it.
 */
final class Slack {

    private Slack() {}

    /**
     * The slack of every facet, ticks.
     *
     * @param arcs by facet and pose
     * @param smooth of each facet those beside it on which the surface goes on
     */
    static long[][] of(ArcSet[][] arcs, int[][] smooth) {
        long[][] slack = new long[arcs.length][arcs[0].length];
        for (int pose = 0; pose < arcs[0].length; pose++) {
            int at = pose;
            List<List<Arc>> each =
                    Arrays.stream(arcs).map(facet -> facet[at].arcs()).toList();
            for (int facet = 0; facet < arcs.length; facet++) {
                for (int other : smooth[facet]) {
                    slack[facet][pose] = Math.max(slack[facet][pose], change(each.get(facet), each.get(other)) / 2);
                }
            }
        }
        return slack;
    }

    /** The most that an end of one of these arcs changes to the other's that meets it; those that meet none are left out. */
    private static long change(List<Arc> from, List<Arc> to) {
        long most = 0;
        for (Arc arc : from) {
            for (Arc other : to) {
                long starts = Circle.STANDARD.apart(arc.start(), other.start());
                long ends = starts + other.length() - arc.length();
                if (starts < arc.length() && -starts < other.length()) {
                    most = Math.max(most, Math.max(Math.abs(starts), Math.abs(ends)));
                }
            }
        }
        return most;
    }
}
