package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.sight.Environment.Way;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Patches;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/**
 * Finds which patches along an edge of sight are in sight as a whole. That edge runs somewhere between the middle of a patch
 * that every pose shows and the middle of one beside it that some pose does not; where every pose shows the border between
 * them, too, it runs beyond that.
 */
final class PatchBorders {

    private final StationSight sight;
    private final Patches patches;
    private final FacetSight[] sights;

    private PatchBorders(StationSight sight, Patches patches, FacetSight[] sights) {
        this.sight = sight;
        this.patches = patches;
        this.sights = sights;
    }

    /**
     * By facet, patch and pose the number of the patch's arc at whose middle it is in sight as a whole; null for patches that
     * are not, and for those that lie along no edge of sight.
     *
     * @param ways for each pose the one in which rows may stand round the airfoil
     * @param swept all that those rows may hide
     * @param sight what the poses show, of one kind and in one way
     * @throws CancellationException if {@code progress} says so
     */
    static byte[][][] find(
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
        byte[][][] whole = new byte[patches.facetCount()][][];
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

    private byte[][] whole(int facet) {
        byte[][] whole = new byte[patches.count(facet)][];
        boolean any = false;
        for (int patch = 0; patch < whole.length; patch++) {
            whole[patch] = sight.reaches(0, facet, patch) ? whole(facet, patch) : null;
            any |= whole[patch] != null;
        }
        return any ? whole : null;
    }

    private byte[] whole(int facet, int patch) {
        List<Facets> borders = borders(patches.first(facet) + patch);
        if (borders.isEmpty()) {
            return null;
        }
        byte[] whole = new byte[sights.length];
        for (int pose = sights.length - 1; pose >= 0; pose--) {
            int arc = arc(facet, patch, pose, borders);
            if (arc < 0) {
                return null;
            }
            whole[pose] = (byte) arc;
        }
        return whole;
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

    private int arc(int facet, int patch, int pose, List<Facets> borders) {
        List<Arc> arcs = sight.arcs(0, pose, facet, patch).arcs();
        for (int i = 0; i < Math.min(arcs.size(), Byte.MAX_VALUE); i++) {
            Arc arc = arcs.get(i);
            if (borders.stream()
                    .allMatch(border -> sights[pose].shows(border, 0, facet, arc, StationSight.LEAST_ARC))) {
                return i;
            }
        }
        return -1;
    }
}
