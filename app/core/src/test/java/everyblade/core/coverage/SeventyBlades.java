package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.within;

import everyblade.core.ShapedEngine;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Reach;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Patches;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Cells of a row of more airfoils than a word has bits, judged by what somebody says was seen of its patches: a view reaches some of
 * them, and some only with finer pixels than it has.
 */
abstract class SeventyBlades {

    /** More than a word of bits, and the rest no multiple of anything. */
    static final int BLADES = 70;

    static final EngineModel MODEL = new ShapedEngine()
            .row("r", RowKind.ROTOR, BLADES, 35, 0)
            .view(
                    "v",
                    "r",
                    "wide120",
                    Optional.empty(),
                    ShapedEngine.station("near", -15, 125, new Heading(1, 0.3, -0.1), 0.2, 0.5))
            .model();
    static final Row ROW = MODEL.rows().get(0);
    static final Zoning ZONING = Zoning.of(ROW);
    static final Patches PATCHES = sights(Criteria.USUAL).grain(ROW).patches();
    static final Reach REACH = reach(Criteria.USUAL.withDetail(0.5));

    private static Sights sights(Criteria criteria) {
        return new Sights(new ViewScene(MODEL, Map.of(), Map.of()), "test", criteria, SightStore.NONE, Progress.NONE);
    }

    static Reach reach(Criteria criteria) {
        return Reach.of(sights(criteria), ROW, Map.of(), Optional.empty(), List.of());
    }

    ComputedCells cells(FacetsSeen seen, Judging judging) {
        return new ComputedCells(ROW, ZONING, PATCHES, Optional.empty(), REACH, seen, judging);
    }

    static Judging judging(double seen, double reach, double edge) {
        return new Judging(seen, reach, edge, OptionalDouble.empty());
    }

    FacetsSeen nothing() {
        return FacetsSeen.none(BLADES, PATCHES.facetCount());
    }

    interface Holds {
        boolean holds(int facet, int patch);
    }

    BitSet set(Holds which) {
        BitSet set = new BitSet();
        for (int patch = 0; patch < PATCHES.count(); patch++) {
            int facet = PATCHES.facet(patch);
            set.set(patch, which.holds(facet, patch - PATCHES.first(facet)));
        }
        return set;
    }

    static BitSet union(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.or(other);
        return both;
    }

    NaiveCells.Airfoil airfoil(FacetsSeen seen, int n) {
        BitSet sure = set((facet, patch) -> seen.sure().contains(n, facet, patch));
        BitSet within = set((facet, patch) -> REACH.stations().get(0).sight().reaches(0, facet, patch));
        return new NaiveCells.Airfoil(
                sure,
                set((facet, patch) -> seen.whole().contains(n, facet, patch)),
                union(sure, set((facet, patch) -> seen.maybe().contains(n, facet))),
                union(sure, within));
    }

    NaiveCells naive(NaiveCells.Airfoil airfoil, Judging judging) {
        return new NaiveCells(ZONING, PATCHES, judging, airfoil);
    }
}
