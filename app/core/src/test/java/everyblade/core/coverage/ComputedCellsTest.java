package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Cells of a row of more airfoils than a word has bits, of which PATCHES drawn by lot were seen, against plain sets of PATCHES. */
class ComputedCellsTest extends SeventyBlades {

    private static final int[] SOME = {1, 2, 63, 64, 65, 70};

    /** So little of a cell's share decides. */
    private static final double HAIR = 1e-7;

    /** Most facets of most airfoils, patch by patch where it is drawn so. */
    private FacetsSeen drawn(SplittableRandom random) {
        FacetsSeen seen = nothing();
        double share = random.nextDouble();
        for (int facet = 0; facet < PATCHES.facetCount(); facet++) {
            int count = PATCHES.count(facet);
            if (random.nextDouble() < share) {
                seen.sure().add(run(random), facet, 0, 1);
            }
            if (random.nextInt(4) == 0) {
                for (int patch = 0; patch < count; patch++) {
                    IndexRun run = run(random);
                    seen.sure().add(run, facet, patch, count);
                    if (random.nextBoolean()) {
                        seen.whole().add(run, facet, patch, count);
                    }
                }
            }
            if (random.nextInt(6) == 0) {
                IndexRun run = run(random);
                seen.sure().add(run, facet, 0, 1);
                seen.whole().add(run, facet, 0, 1);
            }
            for (CellBits bits :
                    List.of(seen.maybe(), seen.placed(), seen.counted(), seen.lost(), seen.brief(), seen.unwatched())) {
                if (random.nextInt(3) > 0) {
                    bits.add(run(random), facet);
                }
            }
        }
        return seen;
    }

    private static IndexRun run(SplittableRandom random) {
        int first = random.nextInt(BLADES);
        return new IndexRun(first, random.nextInt(8) == 0 ? 1 : random.nextInt(BLADES / 2, BLADES + 1));
    }

    private BitSet everything() {
        return set((facet, patch) -> true);
    }

    /** Bounds that a cell just meets, with what its edges cut off and without, and bounds a hair to either side. */
    private List<Judging> round(double seen, double edge, double butForEdges) {
        return List.of(
                judging(butForEdges, 0.05, 0),
                judging(seen, 0.05, 0),
                judging(seen, 0.05, edge + HAIR),
                judging(Math.max(0, seen - HAIR), 0.05, Math.max(0, edge - HAIR)),
                judging(seen + HAIR, 0.05, Math.max(0, edge - HAIR)),
                judging(Math.max(0, seen - HAIR), 0.05, edge + HAIR));
    }

    /** The bounds of what is enough of some patches of a cell. */
    private List<Judging> bounds(NaiveCells cells, int zone, BitSet of, BitSet sure) {
        NaiveCells.Amount all = cells.amount(zone, of);
        NaiveCells.Amount seen = cells.surely(zone, of);
        return round(
                all.all() > 0 ? seen.all() / all.all() : 0.5,
                all.strip() > 0 && seen.strip() > 0 ? seen.strip() / all.strip() : 0,
                all.all() > 0 ? cells.amount(zone, sure).all() / all.all() : 0.5);
    }

    @Test
    void areInTheStateThatTheirPatchesGiveThem() {
        int[] states = new int[State.values().length];
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 12; round++) {
            FacetsSeen seen = drawn(random);
            int n = SOME[random.nextInt(SOME.length)];
            int drawnZone = random.nextInt(ZONING.size());
            NaiveCells.Airfoil airfoil = airfoil(seen, n);
            for (BitSet of : List.of(everything(), airfoil.reach())) {
                for (Judging judging : bounds(naive(airfoil, judging(1, 1, 1)), drawnZone, of, airfoil.sure())) {
                    ComputedCells cells = cells(seen, judging);
                    for (int zone = 0; zone < ZONING.size(); zone++) {
                        State expected = naive(airfoil, judging).state(zone);
                        states[expected.ordinal()]++;
                        assertThat(cells.state(n, zone))
                                .as("round %d, airfoil %d, zone %d, %s", round, n, zone, judging)
                                .isEqualTo(expected);
                        assertThat(cells.lacksEdgeAlone(n, zone))
                                .as("edge of zone %d, %s", zone, judging)
                                .isEqualTo(expected != State.SEEN && isEnoughButForItsEdge(airfoil, judging, zone));
                        assertThat(cells.doneBy(n, zone, airfoil.sure(), airfoil.whole()))
                                .as("by what was seen")
                                .isEqualTo(expected.isDone());
                    }
                }
            }
        }
        assertThat(states).as("each comes about").doesNotContain(0);
    }

    private boolean isEnoughButForItsEdge(NaiveCells.Airfoil airfoil, Judging judging, int zone) {
        Judging noEdge = judging(judging.seen(), judging.reach(), 0);
        return naive(airfoil, noEdge).state(zone) == State.SEEN;
    }

    @Test
    void wouldBeDoneByWhatIsEnoughOfThem() {
        int done = 0;
        int left = 0;
        SplittableRandom random = new SplittableRandom(4);
        for (int round = 0; round < 12; round++) {
            FacetsSeen seen = nothing();
            int n = SOME[random.nextInt(SOME.length)];
            NaiveCells.Airfoil own = airfoil(seen, n);
            double share = random.nextDouble();
            BitSet parts = set((facet, patch) -> random.nextDouble() < share);
            BitSet whole = set((facet, patch) -> random.nextBoolean());
            NaiveCells.Airfoil airfoil = own.seeing(parts, whole);
            for (BitSet of : List.of(everything(), airfoil.reach())) {
                for (Judging judging : bounds(naive(airfoil, judging(1, 1, 1)), round, of, parts)) {
                    ComputedCells cells = cells(seen, judging);
                    for (int zone = 0; zone < ZONING.size(); zone++) {
                        boolean enough =
                                naive(airfoil, judging).done(zone, parts, true).isPresent();
                        assertThat(cells.doneBy(n, zone, parts, whole))
                                .as("round %d, airfoil %d, zone %d, %s", round, n, zone, judging)
                                .isEqualTo(enough);
                        done += enough ? 1 : 0;
                        left += enough ? 0 : 1;
                    }
                }
            }
        }
        assertThat(done).isGreaterThan(50);
        assertThat(left).isGreaterThan(50);
    }

    @Test
    void tellWhichPatchesWereSeen() {
        FacetsSeen seen = drawn(new SplittableRandom(5));
        ComputedCells cells = cells(seen, judging(0.95, 0.05, 0.95));
        for (int n : SOME) {
            assertThat(cells.surely(n)).isEqualTo(airfoil(seen, n).sure());
            assertThat(cells.wholly(n)).isEqualTo(airfoil(seen, n).whole());
            assertThat(cells.surely(n).cardinality()).isBetween(1, PATCHES.count() - 1);
        }
    }

    @Test
    void haveSharesOfTheirSurface() {
        FacetsSeen seen = drawn(new SplittableRandom(6));
        ComputedCells cells = cells(seen, judging(0.95, 0.05, 0.95));
        for (int n : SOME) {
            NaiveCells naive = naive(airfoil(seen, n), judging(0.95, 0.05, 0.95));
            NaiveCells.Airfoil airfoil = airfoil(seen, n);
            for (int zone = 0; zone < ZONING.size(); zone++) {
                double own = naive.own(zone);
                Areas areas = cells.areas(n, new ZoneSet(1L << zone));
                assertThat(areas.seen())
                        .isCloseTo(naive.amount(zone, airfoil.sure()).all() / own, within(1e-9));
                assertThat(areas.maybe())
                        .isCloseTo(naive.amount(zone, airfoil.maybe()).all() / own, within(1e-9));
                assertThat(areas.reach())
                        .isCloseTo(naive.amount(zone, airfoil.reach()).all() / own, within(1e-9));
                assertThat(cells.surface(new ZoneSet(1L << zone))).isCloseTo(own, within(1e-6));
            }
        }
        assertThat(cells.areas(1, ZoneSet.NONE)).isEqualTo(new Areas(0, 0, 0));
    }
}
