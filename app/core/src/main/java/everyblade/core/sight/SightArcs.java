package everyblade.core.sight;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Of each facet of an airfoil, all clock angles of the airfoil at which the facet is properly in sight from one pose of a
 * scope tip, as closed forms and bracketed roots give them: no angle is stepped through. Ends are good to rounding, far within
 * 0.01°; arcs under 0.01° are left out. Never changes, and does not depend on how many threads computed it.
 *
 * <p>All airfoils of a row are alike, so this holds for each. A scope tip elsewhere round the axis, at the same
 * headings, sees the same arcs shifted by its clock, as long as nothing stands still between.
 */
public final class SightArcs {

    private static final int FACETS_A_TASK = 16;
    private static final int HINDRANCES = Hindrance.values().length;

    private final ArcSet[] arcs;
    private final double[] left;

    private SightArcs(int facets) {
        arcs = new ArcSet[facets];
        left = new double[HINDRANCES * facets];
    }

    /**
     * The sight arcs from one pose, on all processors.
     *
     * @throws CancellationException if {@code progress} says so
     */
    public static SightArcs compute(SightScene scene, Pose pose, Criteria criteria, Progress progress) {
        return compute(scene, List.of(pose), criteria, progress).get(0);
    }

    /**
     * The sight arcs from each of these poses, on all processors.
     *
     * @throws CancellationException if {@code progress} says so
     */
    public static List<SightArcs> compute(SightScene scene, List<Pose> poses, Criteria criteria, Progress progress) {
        return compute(scene, Standings.alone(poses), criteria, progress).stream()
                .map(ways -> ways.get(0))
                .toList();
    }

    /** The sight arcs from each of these poses, in each way in which further rows may stand. */
    static List<List<SightArcs>> compute(SightScene scene, Standings standings, Criteria criteria, Progress progress) {
        List<Pose> poses = standings.poses();
        int facets = scene.facets().count();
        int tasks = (facets + FACETS_A_TASK - 1) / FACETS_A_TASK;
        List<List<SightArcs>> results = IntStream.range(0, poses.size())
                .mapToObj(pose -> standings.ways(pose).stream()
                        .map(way -> new SightArcs(facets))
                        .toList())
                .toList();
        AtomicInteger done = new AtomicInteger();
        IntStream.range(0, poses.size() * tasks).parallel().forEach(task -> {
            if (progress.cancelled()) {
                throw new CancellationException("the computation of sight arcs was cancelled");
            }
            int pose = task / tasks;
            fill(results.get(pose), standings.sight(scene, criteria, pose), task % tasks, tasks);
            progress.done(done.incrementAndGet(), poses.size() * tasks);
        });
        return results;
    }

    /** A facet, and each a step after it, so that each thread has its share of those that are seen, which cost most. */
    private static void fill(List<SightArcs> ways, FacetSight sight, int from, int step) {
        double[] rest = new double[HINDRANCES];
        for (int facet = from; facet < ways.get(0).facetCount(); facet += step) {
            List<ArcSet> found = sight.arcs(facet, rest);
            for (int way = 0; way < ways.size(); way++) {
                ways.get(way).put(facet, found.get(way), rest);
            }
        }
    }

    private void put(int facet, ArcSet found, double[] rest) {
        arcs[facet] = found;
        System.arraycopy(rest, 0, left, HINDRANCES * facet, HINDRANCES);
        left[HINDRANCES * facet + Hindrance.HIDDEN.ordinal()] = (double) found.measure() / Circle.STANDARD.ticks();
    }

    /** How many facets the airfoil has. */
    public int facetCount() {
        return arcs.length;
    }

    /** The clock angles of the airfoil at which a facet is in sight, each arc at least 0.01° long. */
    public ArcSet arcs(int facet) {
        return arcs[facet];
    }

    /** The share of the turn at which neither this hindrance nor one before it keeps a facet out of sight, 0 to 1. */
    double left(int facet, Hindrance hindrance) {
        return left[HINDRANCES * facet + hindrance.ordinal()];
    }

    /** What takes away the last of what the hindrances before it left of a facet that is never in sight; empty if it is at some time. */
    public Optional<Hindrance> why(int facet) {
        if (!arcs[facet].isEmpty()) {
            return Optional.empty();
        }
        for (Hindrance hindrance : Hindrance.values()) {
            if (left(facet, hindrance) == 0) {
                return Optional.of(hindrance);
            }
        }
        throw new IllegalStateException("facet " + facet + " is out of sight for no reason");
    }
}
