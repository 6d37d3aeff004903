package everyblade.core.coverage;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Patches;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.function.IntPredicate;

/** What was seen of the surface of each cell of a row, added up over its facets, and where one crosses an edge of sight, its patches. */
final class SeenSurface {

    private final Row row;
    private final Zoning zoning;
    private final Patches patches;
    private final Within within;
    private final Within anyDetailWithin;
    private final FacetsSeen facets;

    /** By zone. */
    final Surface own;
    /** By cell. */
    final Surface reach;

    final Surface sure;
    final Surface placed;
    final Surface maybe;
    final Surface counted;
    final Surface unlost;
    final Surface brief;
    final Surface unwatched;
    /** Within reach, however coarse the pixels are. */
    final Surface anyDetail;

    /**
     * What was seen.
     *
     * @param within what views can show of the row
     * @param anyDetail the same however coarse the pixels are
     */
    SeenSurface(Row row, Zoning zoning, Patches patches, Within within, Within anyDetail, FacetsSeen facets) {
        this.row = row;
        this.zoning = zoning;
        this.patches = patches;
        this.within = within;
        this.anyDetailWithin = anyDetail;
        this.facets = facets;
        int cells = row.count() * zoning.size();
        own = Surface.none(zoning.size());
        reach = Surface.none(cells);
        sure = Surface.none(cells);
        placed = Surface.none(cells);
        maybe = Surface.none(cells);
        counted = Surface.none(cells);
        unlost = Surface.none(cells);
        brief = Surface.none(cells);
        unwatched = Surface.none(cells);
        this.anyDetail = Surface.none(cells);
        for (int facet = 0; facet < patches.facetCount(); facet++) {
            int first = patches.first(facet);
            int count = patches.count(facet);
            boolean whole = facets.sure().whole(facet) && within.whole(facet) && anyDetail.whole(facet);
            for (int patch = first; patch < first + count; patch += whole ? count : 1) {
                add(patch, whole ? count : 1);
            }
        }
    }

    /** Adds a patch with so many after it that are alike. */
    private void add(int patch, int alike) {
        double area = 0;
        double strip = 0;
        for (int i = patch; i < patch + alike; i++) {
            area += area(i);
            strip += strip(i);
        }
        own.add(patches.zone(patch), area, strip);
        for (int n = 1; n <= row.count(); n++) {
            add(n, patch, area, strip);
        }
    }

    private double area(int patch) {
        return patches.facets().area(patch);
    }

    private double strip(int patch) {
        return patches.atEdge(patch) && zoning.atEdge(patches.zone(patch)) ? area(patch) : 0;
    }

    private void add(int n, int patch, double area, double strip) {
        int facet = patches.facet(patch);
        int cell = (n - 1) * zoning.size() + patches.zone(patch);
        boolean isSure = isSure(n, patch);
        boolean may = isSure || facets.maybe().contains(n, facet);
        sure.addIf(isSure, cell, area, strip);
        boolean isReached = within.of(n, patch);
        reach.addIf(isSure || isReached, cell, area, strip);
        anyDetail.addIf(isReached || anyDetailWithin.of(n, patch), cell, area, strip);
        maybe.addIf(may, cell, area, strip);
        placed.addIf(isSure || facets.placed().contains(n, facet), cell, area, strip);
        boolean isLost = facets.lost().contains(n, facet);
        counted.addIf(isSure || facets.counted().contains(n, facet) && !isLost, cell, area, strip);
        unlost.addIf(isSure || may && !isLost, cell, area, strip);
        unwatched.addIf(may || facets.unwatched().contains(n, facet), cell, area, strip);
        brief.addIf(may || facets.brief().contains(n, facet), cell, area, strip);
    }

    /** What would be seen of a zone of airfoil n if these patches were seen too, mm²; of its edge alone if that is asked. */
    double with(int n, int zone, BitSet more, boolean ofEdge) {
        double sum = 0;
        for (int patch : patches.ofZone(zone)) {
            if (more.get(patch) || isSure(n, patch)) {
                sum += ofEdge ? strip(patch) : area(patch);
            }
        }
        return sum;
    }

    boolean isSure(int n, int patch) {
        int facet = patches.facet(patch);
        return facets.sure().contains(n, facet, patch - patches.first(facet));
    }

    /**
     * By how much less than what adds up may have been surely seen of a zone of airfoil n, mm²: the edge of sight runs
     * somewhere through the patches along it, so half of those that were seen.
     *
     * @param ofReach whether only what is within reach beyond that edge makes it one
     */
    double offAtEdge(int n, int zone, boolean ofReach) {
        return offAtEdge(n, zone, ofReach, new BitSet());
    }

    /** The same if these patches were surely seen too. */
    double offAtEdge(int n, int zone, boolean ofReach, BitSet more) {
        IntPredicate sees = patch -> more.get(patch) || isSure(n, patch);
        IntPredicate missed = beyond -> !sees.test(beyond) && (!ofReach || within.of(n, beyond));
        double off = 0;
        for (int patch : patches.ofZone(zone)) {
            if (sees.test(patch) && borders(patch, missed)) {
                off += area(patch) / 2;
            }
        }
        return off;
    }

    private boolean borders(int patch, IntPredicate missed) {
        for (int edge = 0; edge < patches.edges(patch); edge++) {
            int beyond = patches.beyond(patch, edge);
            if (beyond >= 0 && missed.test(beyond)) {
                return true;
            }
        }
        return false;
    }
}
