package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Mesh;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Where stations are computed, a gap sends to the one that shows most of what is unseen, and no further round than that asks. */
@TestInstance(Lifecycle.PER_CLASS)
class StationGapsTest {

    private static final int BLADES = 20;

    private final Station ahead = ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3);
    private final Station low = ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0.5, 2);
    private final Station behind = ShapedEngine.station("behind", 45, 130, new Heading(-1, -0.4, -0.1), 0, 0);

    private final Job job = new Job(new ShapedEngine()
                    .row("r", RowKind.ROTOR, BLADES, 35, 0)
                    .view("front", "r", ahead, low)
                    .view("rear", "r", behind)
                    .built())
            .enter("view front", "datum r 1", "turn 360", "view rear", "turn 100", "view front", "at low", "turn 60");
    private final Coverage partlySeen = job.coverage();

    /** What one station shows of a gap that nobody saw yet. */
    private static final class Unseen {

        final BitSet facets = new BitSet();
        double surface;
        long zones;

        Unseen(Coverage coverage, Gap gap, StationSight sight) {
            RowCoverage row = coverage.row("r");
            Mesh airfoil = coverage.sights().scene(row.row()).row().airfoil();
            for (int facet = 0; facet < airfoil.faceCount(); facet++) {
                for (int n : gap.airfoils()) {
                    double left = row.unseen(sight, n, facet);
                    if (gap.zones().contains(airfoil.zone(facet)) && left > 0) {
                        facets.set(facet);
                        surface += left;
                        zones |= 1L << airfoil.zone(facet);
                    }
                }
            }
        }
    }

    private List<Gap> reachable() {
        return Gaps.of(partlySeen).stream()
                .filter(gap -> gap.reach().isPresent())
                .toList();
    }

    private StationSight sight(String station) {
        return partlySeen.row("r").reach().orElseThrow().stations().stream()
                .filter(from -> from.station().equals(station))
                .findFirst()
                .orElseThrow()
                .sight();
    }

    @Test
    void whatWasSeenAlreadyIsNotTurnedPastOnceMore() {
        assertThat(reachable()).hasSizeGreaterThan(3).allSatisfy(gap -> {
            Gap.Reach reach = gap.reach().orElseThrow();
            StationSight sight = sight(reach.station().orElseThrow());
            Showing showing = Showing.of(sight, new Unseen(partlySeen, gap, sight).facets);
            double pitches = (gap.airfoils().size() - 1) * 360.0 / BLADES;
            assertThat(Math.abs(reach.sweep()))
                    .isCloseTo(Math.min(360, pitches + showing.width().degrees()), within(1e-6));
        });
    }

    @Test
    void onlyPartsOfWhichTheStationShowsMoreThanWasSeenAreNamed() {
        assertThat(reachable()).hasSizeGreaterThan(3).allSatisfy(gap -> {
            Gap.Reach reach = gap.reach().orElseThrow();
            Unseen unseen = new Unseen(partlySeen, gap, sight(reach.station().orElseThrow()));
            assertThat(reach.zones()).isEqualTo(new ZoneSet(unseen.zones));
        });
        assertThat(reachable())
                .as("gaps of which the station shows parts alone")
                .anySatisfy(gap -> assertThat(gap.reach().orElseThrow().zones()).isNotEqualTo(gap.zones()));
    }

    @Test
    void theStationThatShowsMostOfTheUnseenSurfaceIsTaken() {
        assertThat(reachable()).hasSizeGreaterThan(3).allSatisfy(gap -> {
            String taken = gap.reach().orElseThrow().station().orElseThrow();
            double surface = new Unseen(partlySeen, gap, sight(taken)).surface;
            assertThat(List.of("ahead", "low", "behind"))
                    .allSatisfy(other -> assertThat(new Unseen(partlySeen, gap, sight(other)).surface)
                            .isLessThanOrEqualTo(surface * (1 + 1e-9)));
        });
    }

    /** From behind, nothing of a leading edge is in sight; from ahead, of the tip's suction side it is. */
    @Test
    void aLandmarkIsNotLookedForFromWhereOnlyOtherPartsAreInSight() {
        Job begun = job.another().enter("view rear", "ask r tip/suction/leading");
        assertThat(Gaps.of(begun.coverage()))
                .filteredOn(gap -> !gap.why().outOfReach())
                .isNotEmpty()
                .allSatisfy(gap -> assertThat(gap.why()).isEqualTo(Why.SKIPPED))
                .allSatisfy(
                        gap -> assertThat(gap.first()).map(Gap.Landmark::view).contains("front"));
    }
}
