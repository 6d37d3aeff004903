package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.util.Arrays;
import java.util.List;

/**
 * By how much the sight arcs of a facet's middle may lie elsewhere at its borders: half of the most that they change to the
 * middle of a facet beside it. Each end by itself, for mostly one of them lies along the edge of the picture and hardly moves;
 * and how much shorter they may be, for where both ends move alike they are as long there as here.
 *
 * @param starts by facet and pose, ticks
 * @param ends the same
 * @param shorter the same
 */
record Slack(long[][] starts, long[][] ends, long[][] shorter) {

    /**
     * The slack of every facet, by kind.
     *
     * @param arcs by kind, facet and pose
     */
    static List<Slack> of(ArcSet[][][] arcs, Grain grain) {
        return Arrays.stream(arcs).map(kind -> of(kind, grain.smooth())).toList();
    }

    private static Slack of(ArcSet[][] arcs, int[][] smooth) {
        int poses = arcs[0].length;
        Slack slack =
                new Slack(new long[arcs.length][poses], new long[arcs.length][poses], new long[arcs.length][poses]);
        for (int pose = 0; pose < poses; pose++) {
            int at = pose;
            List<List<Arc>> each =
                    Arrays.stream(arcs).map(facet -> facet[at].arcs()).toList();
            for (int facet = 0; facet < arcs.length; facet++) {
                for (int other : smooth[facet]) {
                    slack.widen(facet, pose, each.get(facet), each.get(other));
                }
            }
        }
        return slack;
    }

    /** Takes in what changes from these arcs to the other's that meet them; those that meet none are left out. */
    private void widen(int facet, int pose, List<Arc> from, List<Arc> to) {
        for (Arc arc : from) {
            for (Arc other : to) {
                long start = Circle.STANDARD.apart(arc.start(), other.start());
                if (start < arc.length() && -start < other.length()) {
                    long longer = other.length() - arc.length();
                    starts[facet][pose] = Math.max(starts[facet][pose], Math.abs(start) / 2);
                    ends[facet][pose] = Math.max(ends[facet][pose], Math.abs(start + longer) / 2);
                    shorter[facet][pose] = Math.max(shorter[facet][pose], Math.abs(longer) / 2);
                }
            }
        }
    }
}
