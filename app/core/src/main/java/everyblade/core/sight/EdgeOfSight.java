package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.FacetSight.Shown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Judges facets patch by patch where an edge of sight crosses them. It does from a pose that shows a facet, or one beside it,
 * but not all of them; and where the surface ends or bends, if not every patch there is shown as the facet is. A facet of which
 * some pose shows nothing, nor of those beside it, is never surely seen and needs no closer look.
 *
 * <p>A pose that shows the middle of a facet and the patches at its corners shows all of it, and one that shows neither
 * nothing of it: an edge of sight is not looked for within that meets none of these. Past rows that may stand in several ways
 * each way is looked at by itself, as a pose is, and of several kinds of airfoils each.
 */
final class EdgeOfSight {

    private static final ArcSet NOTHING = ArcSet.empty(Circle.STANDARD);

    private final Grain grain;
    private final Standings standings;
    /** By kind, facet and standing. */
    private final ArcSet[][][] arcs;

    private final FacetSight[] sights;

    /** What is known of the patches of the facet under way, by patch and pose. */
    private final Known[] known;

    /** What a pose shows of a patch. */
    private static final class Known {
        /** Arcs of its facet, and what it shows while its facet shows these: alike in any way. */
        ArcSet asked;

        ArcSet told;
        /** All of its own arcs, by way; null until somebody asks. */
        List<ArcSet> own;
    }

    private EdgeOfSight(Grain grain, Standings standings, ArcSet[][][] arcs, FacetSight[] sights) {
        this.grain = grain;
        this.standings = standings;
        this.arcs = arcs;
        this.sights = sights;
        int most = IntStream.range(0, grain.patches().facetCount())
                .map(grain.patches()::count)
                .max()
                .orElse(0);
        this.known = new Known[most * sights.length];
    }

    /**
     * Of each kind of airfoils and each facet that is divided, by patch and standing the clock angles at which the patch is in
     * sight; null where it is as the facet is, and for facets that are not divided. Of a patch that some standing does not show,
     * all are empty.
     *
     * @param arcs by kind, facet and standing
     * @throws CancellationException if {@code progress} says so
     */
    static ArcSet[][][][] find(
            SightScene scene,
            Grain grain,
            Standings standings,
            Criteria criteria,
            ArcSet[][][] arcs,
            Progress progress) {
        int facets = scene.facets().count();
        int tasks = Math.min(facets, 4 * Runtime.getRuntime().availableProcessors());
        ArcSet[][][][] divided = new ArcSet[arcs.length][facets][][];
        IntStream.range(0, tasks).parallel().forEach(task -> {
            EdgeOfSight edge = new EdgeOfSight(grain, standings, arcs, standings.sights(scene, criteria));
            for (int facet = task; facet < facets; facet += tasks) {
                if (progress.cancelled()) {
                    throw new CancellationException("the computation of sight arcs was cancelled");
                }
                Arrays.fill(edge.known, null);
                for (int kind = 0; kind < arcs.length; kind++) {
                    divided[kind][facet] = edge.divided(kind, facet);
                }
            }
        });
        return divided;
    }

    private ArcSet[][] divided(int kind, int facet) {
        ArcSet[][] of = arcs[kind];
        List<Integer> order = new ArrayList<>();
        for (int standing = 0; standing < standings.size(); standing++) {
            boolean any = !of[facet][standing].isEmpty();
            for (int other : grain.around()[facet]) {
                any |= !of[other][standing].isEmpty();
            }
            if (!any) {
                return null;
            }
            // First those that show nothing of its middle, for they most likely show nothing of it at all.
            order.add(of[facet][standing].isEmpty() ? 0 : order.size(), standing);
        }
        ArcSet[][] found = new ArcSet[grain.patches().count(facet)][standings.size()];
        boolean divides = false;
        for (int standing : order) {
            ArcSet[] shown = shown(kind, facet, standing, found);
            if (shown == null) {
                continue;
            }
            divides = true;
            boolean none = true;
            for (int patch = 0; patch < found.length; patch++) {
                if (shown[patch].isEmpty()) {
                    Arrays.fill(found[patch], NOTHING);
                } else {
                    found[patch][standing] = shown[patch] == of[facet][standing] ? null : shown[patch];
                }
                none &= shown[patch].isEmpty();
            }
            if (none) {
                return found;
            }
        }
        return divides ? found : null;
    }

    /** What a standing shows of each patch that all before showed; null if it shows all as the facet. */
    private ArcSet[] shown(int kind, int facet, int standing, ArcSet[][] found) {
        ArcSet[][] of = arcs[kind];
        ArcSet[] shown = new ArcSet[found.length];
        boolean middle = !of[facet][standing].isEmpty();
        boolean all = middle;
        for (int other : grain.around()[facet]) {
            all &= !of[other][standing].isEmpty();
        }
        boolean alike = middle;
        boolean some = middle;
        for (int corner : all ? grain.rim()[facet] : grain.corners()[facet]) {
            shown[corner] = arcs(kind, facet, corner, standing);
            alike &= shown[corner] == of[facet][standing];
            some |= !shown[corner].isEmpty();
        }
        if (alike) {
            return null;
        }
        for (int patch = 0; patch < shown.length; patch++) {
            if (found[patch][standing] != null || !some) {
                shown[patch] = NOTHING;
            } else if (shown[patch] == null) {
                shown[patch] = arcs(kind, facet, patch, standing);
            }
        }
        return shown;
    }

    /** Those of the patch, or of its facet where they show it too. */
    private ArcSet arcs(int kind, int facet, int patch, int standing) {
        int pose = standings.pose(standing);
        int way = standings.way(kind, standing);
        ArcSet asked = arcs[kind][facet][standing];
        int at = patch * sights.length + pose;
        if (known[at] == null) {
            known[at] = new Known();
        }
        Known of = known[at];
        if (of.asked == asked) {
            return of.told;
        }
        int place = grain.patches().first(facet) + patch;
        boolean anyWay = true;
        ArcSet told = null;
        for (int i = 0; told == null && i < asked.size(); i++) {
            Arc arc = asked.arcs().get(i);
            Shown shown = sights[pose].shows(
                    grain.patches().facets(),
                    place,
                    facet,
                    arc.start() + arc.length() / 2,
                    StationSight.LEAST_ARC,
                    way);
            anyWay &= shown.anyWay();
            told = shown.shown() ? asked : null;
        }
        if (told == null) {
            if (of.own == null) {
                of.own = sights[pose].arcs(grain.patches().facets(), place, facet, null).stream()
                        .map(StationSight::counted)
                        .toList();
            }
            told = of.own.get(way);
            anyWay &= of.own.stream().distinct().count() == 1;
        }
        if (anyWay) {
            of.asked = asked;
            of.told = told;
        }
        return told;
    }
}
