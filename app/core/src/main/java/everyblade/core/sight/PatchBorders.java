package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Patches;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Finds which patches along an edge of sight are in sight as a whole. That edge runs somewhere between the middle of a patch
 * that every pose shows and the middle of one beside it that some pose does not; where every pose shows a place just short of the border between
 * them, too, it runs beyond that.
 */
final class PatchBorders {

    private static final ArcSet NOTHING = ArcSet.empty(Circle.STANDARD);

    private final StationSight sight;
    private final Patches patches;
    private final Standings standings;
    private final FacetSight[] sights;
    /** The standing that last did not show a border: it most likely does not show the next one either. */
    private int failing;

    private PatchBorders(StationSight sight, Patches patches, Standings standings, FacetSight[] sights) {
        this.sight = sight;
        this.patches = patches;
        this.standings = standings;
        this.sights = sights;
    }

    /**
     * By kind, facet, patch and standing clock angles at which the patch is in sight as a whole, no more than are needed; none for
     * patches that are not so from every one, and for those that lie along no edge of sight; null for facets without others.
     *
     * @param sight what the poses show
     * @throws CancellationException if {@code progress} says so
     */
    static ArcSet[][][][] find(
            SightScene scene,
            Grain grain,
            Standings standings,
            Criteria criteria,
            StationSight sight,
            Progress progress) {
        Patches patches = grain.patches();
        int tasks = Math.min(patches.facetCount(), 4 * Runtime.getRuntime().availableProcessors());
        ArcSet[][][][] whole = new ArcSet[sight.kinds()][patches.facetCount()][][];
        IntStream.range(0, tasks).parallel().forEach(task -> {
            PatchBorders borders = new PatchBorders(sight, patches, standings, standings.sights(scene, criteria));
            for (int facet = task; facet < patches.facetCount(); facet += tasks) {
                if (progress.cancelled()) {
                    throw new CancellationException("the computation of sight arcs was cancelled");
                }
                for (int kind = 0; kind < whole.length; kind++) {
                    whole[kind][facet] = borders.whole(kind, facet);
                }
            }
        });
        return whole;
    }

    private ArcSet[][] whole(int kind, int facet) {
        ArcSet[][] whole = new ArcSet[patches.count(facet)][standings.size()];
        boolean any = false;
        for (int patch = 0; patch < whole.length; patch++) {
            List<Facets> borders =
                    sight.reaches(kind, facet, patch) ? borders(kind, patches.first(facet) + patch) : List.<Facets>of();
            if (!borders.isEmpty() && find(kind, facet, patch, borders, whole[patch])) {
                any = true;
            } else {
                Arrays.fill(whole[patch], NOTHING);
            }
        }
        return any ? whole : null;
    }

    /** Those with patches that some pose does not show. */
    private List<Facets> borders(int kind, int place) {
        List<Facets> borders = new ArrayList<>();
        for (int edge = 0; edge < patches.edges(place); edge++) {
            int beyond = patches.beyond(place, edge);
            if (beyond >= 0) {
                int facet = patches.facet(beyond);
                if (!sight.reaches(kind, facet, beyond - patches.first(facet))) {
                    borders.add(patches.border(place, edge));
                }
            }
        }
        return borders;
    }

    /** Whether every standing shows all these borders of a patch together, and when. */
    private boolean find(int kind, int facet, int patch, List<Facets> borders, ArcSet[] found) {
        int first = failing;
        for (int i = 0; i < found.length; i++) {
            int standing = (first + i) % found.length;
            found[standing] = together(kind, facet, patch, standing, borders);
            if (found[standing].isEmpty()) {
                failing = standing;
                return false;
            }
        }
        return true;
    }

    /** In the middle of one of the patch's arcs, or else wherever they are. */
    private ArcSet together(int kind, int facet, int patch, int standing, List<Facets> borders) {
        FacetSight from = sights[standings.pose(standing)];
        int way = standings.way(kind, standing);
        for (Arc arc : sight.arcs(kind, standing, facet, patch).arcs()) {
            long middle = arc.start() + arc.length() / 2;
            if (borders.stream()
                    .allMatch(border -> from.shows(border, 0, facet, middle, StationSight.LEAST_ARC, way)
                            .shown())) {
                long start = middle - StationSight.LEAST_ARC / 2;
                return ArcSet.of(new Arc(Circle.STANDARD, Circle.STANDARD.wrap(start), StationSight.LEAST_ARC));
            }
        }
        return borders.stream()
                .map(border -> from.arcs(border, 0, facet, null).get(way))
                .reduce(ArcSet::intersection)
                .map(StationSight::counted)
                .orElse(NOTHING);
    }
}
