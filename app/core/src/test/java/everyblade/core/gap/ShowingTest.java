package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.sight.Reach;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The range that shows some facets is as short as one found by trying every beginning, with nothing put together before. */
class ShowingTest {

    private static final long MARGIN = Circle.TICKS_PER_DEGREE;

    private final Station near = ShapedEngine.station("near", -15, 138, new Heading(1, 0.3, -0.4), 1, 3);
    private final Station still = ShapedEngine.station("still", -14, 116, new Heading(1, 0.4, -0.2), 0, 0);
    private final Coverage coverage = new Job(new ShapedEngine()
                    .row("r", RowKind.ROTOR, 20, 35, 0)
                    .view("front", "r", near, still)
                    .built())
            .enter("view front", "datum r 1")
            .coverage();

    private List<StationSight> sights() {
        return coverage.row("r").reach().orElseThrow().stations().stream()
                .map(Reach.FromStation::sight)
                .toList();
    }

    /** One range of clock angles of an airfoil, to be passed from at most its low to at least its high, ticks. */
    private record Pass(long low, long high) {}

    /** For each pose of each patch that is shown, the passes of which one will do. */
    private static List<List<Pass>> passes(StationSight sight, int facet, BitSet parts) {
        List<List<Pass>> all = new ArrayList<>();
        for (int patch = 0; patch < sight.patches(facet); patch++) {
            if (parts.get(patch) && sight.reaches(0, facet, patch)) {
                for (int pose = 0; pose < sight.poses(); pose++) {
                    List<Pass> passes = new ArrayList<>();
                    for (Arc arc : sight.arcs(0, pose, facet, patch).arcs()) {
                        passes.add(new Pass(
                                arc.start() + arc.length() - 1 - sight.endSlack(0, pose, facet, patch),
                                arc.start() + sight.startSlack(0, pose, facet, patch)));
                    }
                    if (!passes.isEmpty()) {
                        all.add(passes);
                    }
                }
            }
        }
        return all;
    }

    private static long shortest(List<List<Pass>> all) {
        long shortest = Circle.STANDARD.ticks();
        for (List<Pass> beginnings : all) {
            for (Pass beginning : beginnings) {
                long furthest = 0;
                for (List<Pass> passes : all) {
                    long nearest = Long.MAX_VALUE;
                    for (Pass pass : passes) {
                        long on = Math.floorMod(pass.low() - beginning.low(), Circle.STANDARD.ticks());
                        nearest = Math.min(nearest, on + pass.high() - pass.low());
                    }
                    furthest = Math.max(furthest, nearest);
                }
                shortest = Math.min(shortest, furthest);
            }
        }
        return Math.min(Circle.STANDARD.ticks(), shortest + 2 * MARGIN);
    }

    private static BitSet everyPatch(StationSight sight, int facet) {
        BitSet all = new BitSet();
        all.set(0, sight.patches(facet));
        return all;
    }

    /** Whoever passes from a low to a high has met every other one that lies between them. */
    @Test
    void ofRangesThatWillDoNoneGoesFurtherThanAnother() {
        int pairs = 0;
        for (StationSight sight : sights()) {
            for (int facet = 0; facet < sight.facets(); facet++) {
                List<Need> needs = Need.of(sight, facet, patch -> true);
                for (Need need : needs) {
                    for (Need other : needs) {
                        long on = Circle.STANDARD.wrap(other.low() - need.low());
                        assertThat(need == other || on + other.high() - other.low() > need.high() - need.low())
                                .as("facet %d: %s beside %s", facet, need, other)
                                .isTrue();
                        pairs += need == other ? 0 : 1;
                    }
                }
            }
        }
        assertThat(pairs).isPositive();
    }

    @Test
    void ofOneFacetAsOfAllItsPatchesAndPoses() {
        int shown = 0;
        for (StationSight sight : sights()) {
            for (int facet = 0; facet < sight.facets(); facet++) {
                List<List<Pass>> passes = passes(sight, facet, everyPatch(sight, facet));
                if (!passes.isEmpty()) {
                    BitSet one = new BitSet();
                    one.set(facet);
                    assertThat(Showing.of(sight, one).width()).isEqualTo(Turn.ofTicks(shortest(passes)));
                    shown++;
                }
            }
        }
        assertThat(shown).isGreaterThan(100);
    }

    @Test
    void ofSeveralFacetsAsOfEachOfThem() {
        SplittableRandom random = new SplittableRandom(20);
        for (StationSight sight : sights()) {
            for (int round = 0; round < 40; round++) {
                BitSet facets = new BitSet();
                List<List<Pass>> passes = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    int facet = random.nextInt(sight.facets());
                    facets.set(facet);
                }
                facets.stream().forEach(facet -> passes.addAll(passes(sight, facet, everyPatch(sight, facet))));
                if (!passes.isEmpty()) {
                    assertThat(Showing.of(sight, facets).width().ceilTicks())
                            .as("facets %s", facets)
                            .isEqualTo(shortest(passes));
                }
            }
        }
    }

    @Test
    void ofSomePatchesAsOfThoseAlone() {
        SplittableRandom random = new SplittableRandom(5);
        Patches patches = coverage.sights().grain(coverage.row("r").row()).patches();
        int divided = 0;
        for (StationSight sight : sights()) {
            for (int facet = 0; facet < sight.facets(); facet++) {
                BitSet parts = new BitSet();
                BitSet ofFacet = new BitSet();
                for (int patch = 0; patch < sight.patches(facet); patch++) {
                    if (random.nextBoolean()) {
                        parts.set(patches.first(facet) + patch);
                        ofFacet.set(patch);
                    }
                }
                List<List<Pass>> passes = passes(sight, facet, ofFacet);
                if (!passes.isEmpty()) {
                    assertThat(Showing.of(sight, patches, parts, new BitSet())
                                    .width()
                                    .ceilTicks())
                            .isEqualTo(shortest(passes));
                    divided += ofFacet.cardinality() < sight.patches(facet) ? 1 : 0;
                }
            }
        }
        assertThat(divided).isPositive();
    }
}
