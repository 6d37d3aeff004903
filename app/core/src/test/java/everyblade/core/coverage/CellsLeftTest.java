package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What becomes of a cell of which single PATCHES were seen, or none, and why it is left. */
class CellsLeftTest extends SeventyBlades {

    /** An airfoil of the second word of bits. */
    private static final int ONE = 66;

    private static final IndexRun ITSELF = new IndexRun(ONE - 1, 1);

    private IntStream facets(int zone) {
        return IntStream.range(0, PATCHES.facetCount()).filter(facet -> PATCHES.zone(PATCHES.first(facet)) == zone);
    }

    /** A zone so and so much of which views can show. */
    private int zone(DoublePredicate reached) {
        ComputedCells cells = cells(nothing(), judging(1, 1, 1));
        return IntStream.range(0, ZONING.size())
                .filter(zone ->
                        reached.test(cells.areas(ONE, new ZoneSet(1L << zone)).reach()))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class OfWhichAllIsAsked {

        private final Judging all = judging(1, 1, 1);

        @Test
        void areSeenWhereAllOfThemIs() {
            for (int zone = 0; zone < ZONING.size(); zone++) {
                FacetsSeen seen = nothing();
                facets(zone).forEach(facet -> seen.sure().add(ITSELF, facet, 0, 1));
                ComputedCells cells = cells(seen, all);
                assertThat(cells.state(ONE, zone)).as("zone %d", zone).isEqualTo(State.SEEN);
                assertThat(cells.why(ONE, zone)).isEmpty();
                assertThat(cells.lacksEdgeAlone(ONE, zone)).isFalse();
                assertThat(cells.doneBy(ONE, zone, cells.surely(ONE), new BitSet()))
                        .as("by the same again")
                        .isTrue();
                assertThat(cells.state(ONE - 1, zone)).isEqualTo(State.UNSEEN);
            }
        }

        @Test
        void areSeenInPartWhereAllIsThatViewsCanShow() {
            int zone = zone(reached -> reached > 0.05 && reached < 0.95);
            Judging little = judging(1, 0.05, 1);
            FacetsSeen seen = nothing();
            BitSet within = airfoil(seen, ONE).reach();
            facets(zone)
                    .forEach(facet -> IntStream.range(0, PATCHES.count(facet))
                            .filter(patch -> within.get(PATCHES.first(facet) + patch))
                            .forEach(patch -> seen.sure().add(ITSELF, facet, patch, PATCHES.count(facet))));
            ComputedCells cells = cells(seen, little);
            assertThat(cells.state(ONE, zone)).isEqualTo(State.PART);
            assertThat(cells.doneBy(ONE, zone, cells.surely(ONE), new BitSet())).isTrue();
            assertThat(cells(seen, all).state(ONE, zone))
                    .as("not all of it is within reach")
                    .isEqualTo(State.UNSEEN);
        }

        @Test
        void areMaybeSeenWhereAllMayHaveBeen() {
            int zone = zone(reached -> reached == 0);
            FacetsSeen seen = nothing();
            facets(zone).forEach(facet -> seen.maybe().add(ITSELF, facet));
            assertThat(cells(seen, all).state(ONE, zone)).isEqualTo(State.MAYBE);
        }
    }

    @Test
    void areWithinReachWhereViewsShowJustAsMuchAsIsAsked() {
        int zone = zone(reached -> reached > 0.05 && reached < 0.95);
        double share = cells(nothing(), judging(1, 1, 1))
                .areas(ONE, new ZoneSet(1L << zone))
                .reach();
        ComputedCells cells = cells(nothing(), judging(0.95, share, 0.95));
        assertThat(cells.why(ONE, zone)).contains(Why.SKIPPED);
        assertThat(cells(nothing(), judging(0.95, share + 1e-6, 0.95)).why(ONE, zone))
                .isNotEqualTo(Optional.of(Why.SKIPPED));
        assertThat(cells.basis()).isEqualTo(Basis.COMPUTED);
    }

    @Test
    void ofWhichViewsShowNothingNoShareIsEnough() {
        int zone = zone(reached -> reached == 0);
        ComputedCells cells = cells(nothing(), judging(0.95, 0, 0.95));
        assertThat(cells.state(ONE, zone)).isEqualTo(State.UNSEEN);
        assertThat(cells.doneBy(ONE, zone, new BitSet(), new BitSet())).isFalse();
    }

    /** The very first of an airfoil's patches is one like any other. */
    @Test
    void loseHalfOfThePatchesBesideOneThatWasMissed() {
        int zone = PATCHES.zone(0);
        FacetsSeen seen = nothing();
        IntStream.range(0, PATCHES.facetCount())
                .forEach(facet -> IntStream.range(facet == 0 ? 1 : 0, PATCHES.count(facet))
                        .forEach(patch -> seen.sure().add(ITSELF, facet, patch, PATCHES.count(facet))));
        NaiveCells naive = naive(airfoil(seen, ONE), judging(1, 1, 1));
        BitSet everything = set((facet, patch) -> true);
        double share = naive.surely(zone, everything).all() / naive.own(zone);
        double missed = PATCHES.facets().area(0) / naive.own(zone);
        assertThat(share).isBetween(1 - 4 * missed, 1 - 1.5 * missed);
        for (double hair : new double[] {-1e-7, 1e-7}) {
            ComputedCells cells = cells(seen, judging(share + hair, 1, 0));
            assertThat(cells.state(ONE, zone) == State.SEEN).isEqualTo(hair < 0);
            assertThat(cells.doneBy(ONE, zone, cells.surely(ONE), new BitSet())).isEqualTo(hair < 0);
        }
    }

    @Nested
    class AtTheLeadingOrTrailingEdge {

        private final int zone = IntStream.range(0, ZONING.size())
                .filter(ZONING::atEdge)
                .filter(at -> facets(at).anyMatch(facet -> strip(facet).isEmpty()))
                .findFirst()
                .orElseThrow();

        private BitSet strip(int facet) {
            BitSet strip = new BitSet();
            IntStream.range(0, PATCHES.count(facet))
                    .filter(patch -> PATCHES.atEdge(PATCHES.first(facet) + patch))
                    .forEach(strip::set);
            return strip;
        }

        /** All but the outermost strip. */
        private FacetsSeen seen(boolean whole) {
            FacetsSeen seen = nothing();
            facets(zone)
                    .forEach(facet -> IntStream.range(0, PATCHES.count(facet))
                            .filter(patch -> !strip(facet).get(patch))
                            .forEach(patch -> {
                                seen.sure().add(ITSELF, facet, patch, PATCHES.count(facet));
                                if (whole) {
                                    seen.whole().add(ITSELF, facet, patch, PATCHES.count(facet));
                                }
                            }));
            return seen;
        }

        @Test
        void lackTheEdgeAloneWhereAllElseWasSeen() {
            ComputedCells cells = cells(seen(true), judging(0.8, 0.05, 0.95));
            assertThat(cells.state(ONE, zone)).isNotEqualTo(State.SEEN);
            assertThat(cells.lacksEdgeAlone(ONE, zone)).isTrue();
            assertThat(cells(seen(true), judging(0.8, 0.05, 0)).state(ONE, zone))
                    .isEqualTo(State.SEEN);
            assertThat(cells(seen(true), judging(0.99, 0.05, 0.95)).lacksEdgeAlone(ONE, zone))
                    .as("more is wanting")
                    .isFalse();
        }

        @Test
        void areLeftForTheEdgeWhereViewsCanShowIt() {
            int shown = IntStream.range(0, ZONING.size())
                    .filter(ZONING::atEdge)
                    .filter(at -> cells(nothing(), judging(0.8, 0.05, 0.95))
                            .why(ONE, at)
                            .equals(Optional.of(Why.SKIPPED)))
                    .findFirst()
                    .orElseThrow();
            FacetsSeen seen = nothing();
            facets(shown)
                    .forEach(facet -> IntStream.range(0, PATCHES.count(facet))
                            .filter(patch -> !strip(facet).get(patch))
                            .forEach(patch -> {
                                seen.sure().add(ITSELF, facet, patch, PATCHES.count(facet));
                                seen.whole().add(ITSELF, facet, patch, PATCHES.count(facet));
                            }));
            ComputedCells cells = cells(seen, judging(0.8, 0.05, 0.95));
            assertThat(cells.why(ONE, shown)).contains(Why.EDGE);
            assertThat(cells.why(ONE - 1, shown)).contains(Why.SKIPPED);
        }
    }

    @Nested
    class Left {

        private final int zone = zone(reached -> reached > 0.05);

        private Optional<Why> why(Consumer<FacetsSeen> said) {
            FacetsSeen seen = nothing();
            said.accept(seen);
            return cells(seen, judging(0.95, 0.05, 0.95)).why(ONE, zone);
        }

        private void all(CellBits bits) {
            facets(zone).forEach(facet -> bits.add(ITSELF, facet));
        }

        @Test
        void areSoBecauseTheyPassedTooFastOrUnwatchedOrNotAtAll() {
            assertThat(why(seen -> {})).contains(Why.SKIPPED);
            assertThat(why(seen -> all(seen.unwatched()))).contains(Why.NOT_WATCHED);
            assertThat(why(seen -> all(seen.brief()))).contains(Why.FAST);
            assertThat(why(seen -> {
                        all(seen.brief());
                        all(seen.unwatched());
                    }))
                    .contains(Why.FAST);
        }

        @Test
        void areInDoubtForThePlaceOfTheTipOrTheRowOrASlipOrALoss() {
            assertThat(why(seen -> all(seen.maybe()))).contains(Why.SLIP);
            assertThat(why(seen -> {
                        all(seen.maybe());
                        all(seen.counted());
                    }))
                    .contains(Why.PLAY);
            assertThat(why(seen -> {
                        all(seen.maybe());
                        all(seen.counted());
                        all(seen.placed());
                    }))
                    .contains(Why.PLACEMENT);
            assertThat(why(seen -> {
                        all(seen.maybe());
                        all(seen.lost());
                    }))
                    .contains(Why.COUNT_LOST);
            assertThat(why(seen -> {
                        all(seen.maybe());
                        all(seen.counted());
                        all(seen.lost());
                    }))
                    .as("what was counted and lost after")
                    .contains(Why.COUNT_LOST);
        }

        /** Two blades of which one thing is so that is not of their neighbours, which are alike else. */
        @Test
        void areToldApartByEachThingThatIsKnownOfThem() {
            IndexRun both = new IndexRun(ONE - 1, 2);
            FacetsSeen seen = nothing();
            facets(zone).forEach(facet -> seen.maybe().add(new IndexRun(0, BLADES), facet));
            assertTellsApart(seen, seen.counted(), both, Why.SLIP, Why.PLAY);
            facets(zone).forEach(facet -> seen.counted().add(new IndexRun(0, BLADES), facet));
            assertTellsApart(seen, seen.placed(), both, Why.PLAY, Why.PLACEMENT);
            FacetsSeen lost = nothing();
            facets(zone).forEach(facet -> lost.maybe().add(new IndexRun(0, BLADES), facet));
            assertTellsApart(lost, lost.lost(), both, Why.SLIP, Why.COUNT_LOST);
        }

        private void assertTellsApart(FacetsSeen seen, CellBits by, IndexRun some, Why others, Why ofThem) {
            facets(zone).forEach(facet -> by.add(some, facet));
            ComputedCells cells = cells(seen, judging(0.95, 0.05, 0.95));
            for (int n = 1; n <= BLADES; n++) {
                boolean one = n - 1 >= some.first() && n - 1 < some.first() + some.length();
                assertThat(cells.why(n, zone)).as("blade %d", n).contains(one ? ofThem : others);
            }
        }

        @Test
        void areTooCoarseWhereFinerPixelsWouldReachThem() {
            Reach anyDetail = reach(Criteria.USUAL);
            NaiveCells.Airfoil coarse = airfoil(nothing(), ONE);
            NaiveCells.Airfoil fine = new NaiveCells.Airfoil(
                    new BitSet(),
                    new BitSet(),
                    new BitSet(),
                    set((facet, patch) -> anyDetail.stations().get(0).sight().reaches(0, facet, patch)));
            Judging judging = judging(0.95, 0.05, 0.95);
            ComputedCells cells = cells(nothing(), judging);
            int[] told = new int[Why.values().length];
            for (int at = 0; at < ZONING.size(); at++) {
                Why why = naive(coarse, judging).within(at, coarse.reach())
                        ? Why.SKIPPED
                        : naive(fine, judging).within(at, fine.reach()) ? Why.COARSE : Why.NO_ACCESS;
                assertThat(cells.why(ONE, at)).as("zone %d", at).contains(why);
                told[why.ordinal()]++;
            }
            assertThat(told[Why.SKIPPED.ordinal()]).isPositive();
            assertThat(told[Why.COARSE.ordinal()]).isPositive();
            assertThat(told[Why.NO_ACCESS.ordinal()]).isPositive();
        }
    }

    @Test
    void areHiddenByWhatHidesMostOfThem() {
        List<Optional<Hindrance>> told = new ArrayList<>();
        for (Reach reach : List.of(REACH, reach(Criteria.USUAL))) {
            ComputedCells cells = new ComputedCells(
                    ROW, ZONING, PATCHES, Optional.empty(), reach, nothing(), judging(0.95, 0.05, 0.95));
            for (int zone = 0; zone < ZONING.size(); zone++) {
                double[] areas = new double[Hindrance.values().length];
                for (int patch = 0; patch < PATCHES.count(); patch++) {
                    if (PATCHES.zone(patch) == zone) {
                        double area = PATCHES.facets().area(patch);
                        reach.why()
                                .get(PATCHES.facet(patch))
                                .ifPresent(hindrance -> areas[hindrance.ordinal()] += area);
                    }
                }
                double most = Arrays.stream(areas).max().orElseThrow();
                Optional<Hindrance> hiding = cells.hindrance(ONE, zone);
                assertThat(hiding.isPresent()).as("zone %d", zone).isEqualTo(most > 0);
                hiding.ifPresent(
                        hindrance -> assertThat(areas[hindrance.ordinal()]).isEqualTo(most));
                told.add(hiding);
            }
        }
        assertThat(told.stream().distinct())
                .as("not the same of all, and nothing of some")
                .contains(Optional.empty())
                .hasSizeGreaterThan(2);
    }
}
