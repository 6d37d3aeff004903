package everyblade.core.coverage;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Patches;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What was seen of the surface of each cell of a row, added up over its facets, and where one crosses an edge of sight, its patches. */
final class SeenSurface {

    /** An edge of sight that is only known to run between the middles of two patches cuts off half of one at the most. */
    private static final double HALF = 0.5;

    private final Row row;
    private final Zoning zoning;
    private final Patches patches;
    private final Within within;
    private final Within anyDetailWithin;
    private final FacetsSeen facets;
    private final int[][] ofZone;
    /** By zone, whether it lies at the leading or trailing edge. */
    private final boolean[] atEdge;

    /** By zone. */
    final CoveredSurface own;
    /** By cell. */
    final CoveredSurface reach;

    final CoveredSurface sure;
    final CoveredSurface placed;
    final CoveredSurface maybe;
    final CoveredSurface counted;
    final CoveredSurface unlost;
    final CoveredSurface brief;
    final CoveredSurface unwatched;
    /** Within reach, however coarse the pixels are. */
    final CoveredSurface anyDetail;

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
        atEdge = new boolean[zoning.size()];
        for (int zone = 0; zone < atEdge.length; zone++) {
            atEdge[zone] = zoning.atEdge(zone);
        }
        int cells = row.count() * zoning.size();
        own = CoveredSurface.none(zoning.size());
        reach = CoveredSurface.none(cells);
        sure = CoveredSurface.none(cells);
        placed = CoveredSurface.none(cells);
        maybe = CoveredSurface.none(cells);
        counted = CoveredSurface.none(cells);
        unlost = CoveredSurface.none(cells);
        brief = CoveredSurface.none(cells);
        unwatched = CoveredSurface.none(cells);
        this.anyDetail = CoveredSurface.none(cells);
        this.ofZone =
                IntStream.range(0, zoning.size()).mapToObj(patches::ofZone).toArray(int[][]::new);
        for (int word = 0; word < CellBits.words(row.count()); word++) {
            add(word);
        }
    }

    /** Adds up what was seen of the airfoils of a word of {@link CellBits}, 64 at most. */
    private void add(int word) {
        Alike alike = new Alike(Math.min(row.count() - word * Long.SIZE, Long.SIZE));
        inRuns((patch, count) -> tellApart(alike, word, patch));
        long firsts = alike.firsts();
        inRuns((patch, count) -> {
            double area = 0;
            double strip = 0;
            for (int i = patch; i < patch + count; i++) {
                area += area(i);
                strip += strip(i);
            }
            if (word == 0) {
                own.add(patches.zone(patch), area, strip);
            }
            add(word, firsts, patch, area, strip);
        });
        int each = zoning.size();
        int start = word * Long.SIZE;
        alike.forEach(group -> {
            int first = start + Long.numberOfTrailingZeros(group);
            for (long rest = group & group - 1; rest != 0; rest &= rest - 1) {
                int other = start + Long.numberOfTrailingZeros(rest);
                for (CoveredSurface surface :
                        List.of(reach, sure, placed, maybe, counted, unlost, brief, unwatched, anyDetail)) {
                    surface.copy(first * each, other * each, each);
                }
            }
        });
    }

    /** Patches, those that follow each other and are alike together. */
    private void inRuns(PatchRun each) {
        for (int facet = 0; facet < patches.facetCount(); facet++) {
            int first = patches.first(facet);
            int count = patches.count(facet);
            int step = facets.sure().whole(facet) && within.whole(facet) && anyDetailWithin.whole(facet) ? count : 1;
            for (int patch = first; patch < first + count; patch += step) {
                each.accept(patch, step);
            }
        }
    }

    private interface PatchRun {
        void accept(int patch, int count);
    }

    private void tellApart(Alike alike, int word, int patch) {
        int facet = patches.facet(patch);
        alike.tellApart(sure(word, patch));
        alike.tellApart(within.ofWord(word, patch));
        alike.tellApart(anyDetailWithin.ofWord(word, patch));
        alike.tellApart(facets.maybe().word(word, facet));
        alike.tellApart(facets.placed().word(word, facet));
        alike.tellApart(facets.counted().word(word, facet));
        alike.tellApart(facets.lost().word(word, facet));
        alike.tellApart(facets.brief().word(word, facet));
        alike.tellApart(facets.unwatched().word(word, facet));
    }

    private double area(int patch) {
        return patches.facets().area(patch);
    }

    private double strip(int patch) {
        return patches.atEdge(patch) && atEdge[patches.zone(patch)] ? area(patch) : 0;
    }

    /** Adds a patch of some airfoils of a word. */
    private void add(int word, long some, int patch, double area, double strip) {
        int facet = patches.facet(patch);
        int first = word * Long.SIZE * zoning.size() + patches.zone(patch);
        long isSure = some & sure(word, patch);
        long isReached = some & within.ofWord(word, patch);
        long may = isSure | some & facets.maybe().word(word, facet);
        long notLost = some & ~facets.lost().word(word, facet);
        addTo(sure, isSure, first, area, strip);
        addTo(reach, isSure | isReached, first, area, strip);
        addTo(anyDetail, isReached | some & anyDetailWithin.ofWord(word, patch), first, area, strip);
        addTo(maybe, may, first, area, strip);
        addTo(placed, isSure | some & facets.placed().word(word, facet), first, area, strip);
        addTo(counted, isSure | notLost & facets.counted().word(word, facet), first, area, strip);
        addTo(unlost, isSure | may & notLost, first, area, strip);
        addTo(unwatched, may | some & facets.unwatched().word(word, facet), first, area, strip);
        addTo(brief, may | some & facets.brief().word(word, facet), first, area, strip);
    }

    private void addTo(CoveredSurface surface, long airfoils, int first, double area, double strip) {
        for (long rest = airfoils; rest != 0; rest &= rest - 1) {
            surface.add(first + Long.numberOfTrailingZeros(rest) * zoning.size(), area, strip);
        }
    }

    private long sure(int word, int patch) {
        int facet = patches.facet(patch);
        return facets.sure().word(word, facet, patch - patches.first(facet));
    }

    /** The patches of airfoil n that were surely seen. */
    BitSet surely(int n) {
        return ofAirfoil(facets.sure(), n);
    }

    /** Of these, patches along an edge of sight that were surely seen as a whole. */
    BitSet wholly(int n) {
        return ofAirfoil(facets.whole(), n);
    }

    private BitSet ofAirfoil(PatchBits bits, int n) {
        BitSet patchesSeen = new BitSet(patches.count());
        for (int facet = 0; facet < patches.facetCount(); facet++) {
            int first = patches.first(facet);
            if (bits.whole(facet)) {
                patchesSeen.set(first, first + patches.count(facet), bits.contains(n, facet, 0));
            } else {
                for (int patch = 0; patch < patches.count(facet); patch++) {
                    if (bits.contains(n, facet, patch)) {
                        patchesSeen.set(first + patch);
                    }
                }
            }
        }
        return patchesSeen;
    }

    /**
     * By how much less than what adds up may have been surely seen of a zone, mm², by airfoil from 0: the edge of sight runs
     * somewhere through the patches along it, so half of those that were seen; of those seen as a whole, what lies beyond the place
     * at which that is judged.
     *
     * @param ofReach whether only what is within reach beyond that edge makes it one
     */
    CoveredSurface offAtEdge(int zone, boolean ofReach) {
        CoveredSurface off = CoveredSurface.none(row.count());
        for (int word = 0; word < CellBits.words(row.count()); word++) {
            for (int patch : ofZone[zone]) {
                long sure = sure(word, patch);
                long bordering = sure == 0 ? 0 : sure & missedBeyond(word, patch, ofReach);
                long whole = bordering == 0 ? 0 : whole(word, patch);
                for (long rest = bordering; rest != 0; rest &= rest - 1) {
                    int index = Long.numberOfTrailingZeros(rest);
                    double cut = cut((whole >>> index & 1) != 0);
                    off.add(word * Long.SIZE + index, cut * area(patch), cut * strip(patch));
                }
            }
        }
        return off;
    }

    private long whole(int word, int patch) {
        int facet = patches.facet(patch);
        return facets.whole().word(word, facet, patch - patches.first(facet));
    }

    private long missedBeyond(int word, int patch, boolean ofReach) {
        long missed = 0;
        for (int edge = 0; edge < patches.edges(patch); edge++) {
            int beyond = patches.beyond(patch, edge);
            if (beyond >= 0) {
                missed |= ~sure(word, beyond) & (ofReach ? within.ofWord(word, beyond) : -1L);
            }
        }
        return missed;
    }

    /** The surface of these patches of a zone, as the first cell. */
    CoveredSurface of(int zone, BitSet parts) {
        CoveredSurface sum = CoveredSurface.none(1);
        for (int patch : ofZone[zone]) {
            if (parts.get(patch)) {
                sum.add(0, area(patch), strip(patch));
            }
        }
        return sum;
    }

    /**
     * The same as {@link #offAtEdge(int, boolean)} of airfoil n alone, if these patches and no others were surely seen: as the
     * first cell, and as the second if only what is within reach beyond an edge makes it one.
     *
     * @param asWhole of these, patches that would be seen as a whole
     */
    CoveredSurface offAtEdge(int n, int zone, BitSet parts, BitSet asWhole) {
        CoveredSurface off = CoveredSurface.none(2);
        for (int patch : ofZone[zone]) {
            if (parts.get(patch) && borders(patch, beyond -> !parts.get(beyond))) {
                double cut = cut(asWhole.get(patch));
                off.add(0, cut * area(patch), cut * strip(patch));
                if (borders(patch, beyond -> !parts.get(beyond) && within.of(n, beyond))) {
                    off.add(1, cut * area(patch), cut * strip(patch));
                }
            }
        }
        return off;
    }

    /** The share of a patch along an edge of sight that may be cut off by it. */
    private static double cut(boolean whole) {
        return whole ? Patches.BEYOND : HALF;
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
