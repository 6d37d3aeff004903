package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.Environment.Way;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Judges facets patch by patch where an edge of sight crosses them. It does from a pose that shows a facet, or one beside it,
 * but not all of them; and where the surface ends, if not every patch there is shown. A facet of which some pose shows nothing,
 * nor of those beside it, is never surely seen and needs no closer look.
 *
 * <p>A pose that shows the middle of a facet and the patches at its corners shows all of it, and one that shows neither
 * nothing of it: an edge of sight is not looked for within that meets none of these.
 */
final class EdgeOfSight {

    private static final ArcSet NOTHING = ArcSet.empty(Circle.STANDARD);

    private final Grain grain;
    private final ArcSet[][] arcs;
    private final FacetSight[] sights;

    private EdgeOfSight(Grain grain, ArcSet[][] arcs, FacetSight[] sights) {
        this.grain = grain;
        this.arcs = arcs;
        this.sights = sights;
    }

    /**
     * Of each facet that is divided, by patch and pose the clock angles at which the patch is in sight; null where it is as the
     * facet is, and for facets that are not divided. Of a patch that some pose does not show, all are empty.
     *
     * @param ways for each pose the one in which rows may stand round the airfoil
     * @param swept all that those rows may hide
     * @param arcs by facet and pose
     * @throws CancellationException if {@code progress} says so
     */
    static ArcSet[][][] find(
            SightScene scene,
            Grain grain,
            List<Pose> poses,
            List<Way> ways,
            Revolved swept,
            Criteria criteria,
            ArcSet[][] arcs,
            Progress progress) {
        int facets = scene.facets().count();
        int tasks = Math.min(facets, 4 * Runtime.getRuntime().availableProcessors());
        ArcSet[][][] divided = new ArcSet[facets][][];
        IntStream.range(0, tasks).parallel().forEach(task -> {
            FacetSight[] sights = IntStream.range(0, poses.size())
                    .mapToObj(i -> new FacetSight(scene, poses.get(i), criteria, List.of(ways.get(i)), swept))
                    .toArray(FacetSight[]::new);
            EdgeOfSight edge = new EdgeOfSight(grain, arcs, sights);
            for (int facet = task; facet < facets; facet += tasks) {
                if (progress.cancelled()) {
                    throw new CancellationException("the computation of sight arcs was cancelled");
                }
                divided[facet] = edge.divided(facet);
            }
        });
        return divided;
    }

    private ArcSet[][] divided(int facet) {
        List<Integer> crossed = new ArrayList<>();
        for (int pose = 0; pose < sights.length; pose++) {
            boolean any = !arcs[facet][pose].isEmpty();
            boolean all = any;
            for (int other : grain.around()[facet]) {
                any |= !arcs[other][pose].isEmpty();
                all &= !arcs[other][pose].isEmpty();
            }
            if (!any) {
                return null;
            }
            if (!all || grain.rim()[facet].length > 0) {
                // First those that show nothing of its middle, for they most likely show nothing of it at all.
                crossed.add(arcs[facet][pose].isEmpty() ? 0 : crossed.size(), pose);
            }
        }
        ArcSet[][] found = new ArcSet[grain.patches().count(facet)][sights.length];
        boolean divides = false;
        for (int pose : crossed) {
            ArcSet[] shown = shown(facet, pose, found);
            if (shown == null) {
                continue;
            }
            divides = true;
            boolean none = true;
            for (int patch = 0; patch < found.length; patch++) {
                if (shown[patch].isEmpty()) {
                    Arrays.fill(found[patch], NOTHING);
                } else {
                    found[patch][pose] = shown[patch] == arcs[facet][pose] ? null : shown[patch];
                }
                none &= shown[patch].isEmpty();
            }
            if (none) {
                return found;
            }
        }
        return divides ? found : null;
    }

    /** What a pose shows of each patch that all poses before showed; null if it shows all as the facet. */
    private ArcSet[] shown(int facet, int pose, ArcSet[][] found) {
        ArcSet[] shown = new ArcSet[found.length];
        int asked = 0;
        int seen = 0;
        boolean middle = !arcs[facet][pose].isEmpty();
        boolean all = middle;
        for (int other : grain.around()[facet]) {
            all &= !arcs[other][pose].isEmpty();
        }
        for (int corner : all ? grain.rim()[facet] : grain.corners()[facet]) {
            shown[corner] = arcs(facet, corner, pose);
            asked++;
            seen += shown[corner].isEmpty() ? 0 : 1;
        }
        if (middle && seen == asked) {
            return null;
        }
        for (int patch = 0; patch < shown.length; patch++) {
            boolean out = found[patch][pose] != null || !middle && seen == 0;
            if (out) {
                shown[patch] = NOTHING;
            } else if (shown[patch] == null) {
                shown[patch] = arcs(facet, patch, pose);
            }
        }
        return shown;
    }

    /** Those of the patch, or of its facet where they show it too. */
    private ArcSet arcs(int facet, int patch, int pose) {
        int place = grain.patches().first(facet) + patch;
        for (Arc arc : arcs[facet][pose].arcs()) {
            if (sights[pose].shows(grain.patches().facets(), place, facet, arc, StationSight.LEAST_ARC)) {
                return arcs[facet][pose];
            }
        }
        return StationSight.counted(
                sights[pose].arcs(grain.patches().facets(), place, facet, null).get(0));
    }
}
