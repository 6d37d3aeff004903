package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.sight.Environment.Way;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Patches;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Finds which patches along an edge of sight are in sight as a whole. That edge runs somewhere between the middle of a patch
 * that every pose shows and the middle of one beside it that some pose does not; where every pose shows the border between
 * them, too, it runs beyond that.
 */
final class PatchBorders {

    private static final ArcSet NOTHING = ArcSet.empty(Circle.STANDARD);

    private final StationSight sight;
    private final Patches patches;
    private final FacetSight[] sights;
    /** The pose that last did not show a border: it most likely does not show the next one either. */
    private int failing;

    private PatchBorders(StationSight sight, Patches patches, FacetSight[] sights) {
        this.sight = sight;
        this.patches = patches;
        this.sights = sights;
    }

    /**
     * By facet, patch and pose clock angles at which the patch is in sight as a whole, no more than are needed; none for patches
     * that are not so from every pose, and for those that lie along no edge of sight; null for facets without others.
     *
     * @param ways for each pose the one in which rows may stand round the airfoil
     * @param swept all that those rows may hide
     * @param sight what the poses show, of one kind and in one way
     * @throws CancellationException if {@code progress} says so
     */
    static ArcSet[][][] find(
            SightScene scene,
            Grain grain,
            List<Pose> poses,
            List<Way> ways,
            Revolved swept,
            Criteria criteria,
            StationSight sight,
            Progress progress) {
        Patches patches = grain.patches();
        int tasks = Math.min(patches.facetCount(), 4 * Runtime.getRuntime().availableProcessors());
        ArcSet[][][] whole = new ArcSet[patches.facetCount()][][];
        IntStream.range(0, tasks).parallel().forEach(task -> {
            FacetSight[] sights = IntStream.range(0, poses.size())
                    .mapToObj(i -> new FacetSight(scene, poses.get(i), criteria, List.of(ways.get(i)), swept))
                    .toArray(FacetSight[]::new);
            PatchBorders borders = new PatchBorders(sight, patches, sights);
            for (int facet = task; facet < patches.facetCount(); facet += tasks) {
                if (progress.cancelled()) {
                    throw new CancellationException("the computation of sight arcs was cancelled");
                }
                whole[facet] = borders.whole(facet);
            }
        });
        return whole;
    }

    private ArcSet[][] whole(int facet) {
        ArcSet[][] whole = new ArcSet[patches.count(facet)][sights.length];
        boolean any = false;
        for (int patch = 0; patch < whole.length; patch++) {
            List<Facets> borders =
                    sight.reaches(0, facet, patch) ? borders(patches.first(facet) + patch) : List.<Facets>of();
            if (!borders.isEmpty() && find(facet, patch, borders, whole[patch])) {
                any = true;
            } else {
                Arrays.fill(whole[patch], NOTHING);
            }
        }
        return any ? whole : null;
    }

    /** Those with patches that some pose does not show. */
    private List<Facets> borders(int place) {
        List<Facets> borders = new ArrayList<>();
        for (int edge = 0; edge < patches.edges(place); edge++) {
            int beyond = patches.beyond(place, edge);
            if (beyond >= 0) {
                int facet = patches.facet(beyond);
                if (!sight.reaches(0, facet, beyond - patches.first(facet))) {
                    borders.add(patches.border(place, edge));
                }
            }
        }
        return borders;
    }

    /** Whether every pose shows all these borders of a patch together, and when. */
    private boolean find(int facet, int patch, List<Facets> borders, ArcSet[] found) {
        int first = failing;
        for (int i = 0; i < sights.length; i++) {
            int pose = (first + i) % sights.length;
            found[pose] = together(facet, patch, pose, borders);
            if (found[pose].isEmpty()) {
                failing = pose;
                return false;
            }
        }
        return true;
    }

    /** In the middle of one of the patch's arcs, or else wherever they are. */
    private ArcSet together(int facet, int patch, int pose, List<Facets> borders) {
        FacetSight from = sights[pose];
        for (Arc arc : sight.arcs(0, pose, facet, patch).arcs()) {
            if (borders.stream().allMatch(border -> from.shows(border, 0, facet, arc, StationSight.LEAST_ARC))) {
                long start = arc.start() + (arc.length() - StationSight.LEAST_ARC) / 2;
                return ArcSet.of(new Arc(Circle.STANDARD, Circle.STANDARD.wrap(start), StationSight.LEAST_ARC));
            }
        }
        return borders.stream()
                .map(border -> from.arcs(border, 0, facet, null).get(0))
                .reduce(ArcSet::intersection)
                .map(StationSight::counted)
                .orElse(NOTHING);
    }
}
