package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.sight.ToleranceCost.Way;
import everyblade.core.surface.Facets;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What stations before and behind a row of boxes show, and what their tolerances cost. */
class ReachTest {

    private final Station ahead = station("ahead", -30, 1, 0, 0);
    private final Station behind = station("behind", 40, -1, 0, 0);
    private final Station loose = station("loose", -30, 1, 2, 5);
    private final Station tilting = station("tilting", -30, 1, 0, 25);
    private final Station moving = station("moving", -30, 1, 2, 0);
    private final Blocks blocks = new Blocks()
            .row("own", RowKind.STATOR, 6, 0, 10, 3, 20, 30)
            .view("front", "own", ahead, loose, tilting, moving)
            .view("rear", "own", behind)
            .view("narrow", "own", "slim", loose);
    private final Row row = blocks.model().row("own").orElseThrow();
    private final Sights sights = sights(Criteria.USUAL);

    private static Station station(String id, double x, double axial, double mm, double deg) {
        return new Station(
                id, x, 26, 10, new Heading(axial, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(mm, deg));
    }

    private Sights sights(Criteria criteria) {
        return new Sights(blocks.scene(), "mark", criteria, SightStore.NONE, Progress.NONE);
    }

    private static Stance stance(String view, String station, String tip) {
        return new Stance(view, List.of(station), false, Optional.ofNullable(tip), Map.of(), Optional.empty());
    }

    @Nested
    class TheReachOfARow {

        private Reach reach(Sights of, List<Stance> used) {
            return Reach.of(of, row, Map.of(), Optional.empty(), used);
        }

        @Test
        void isWhatEveryStationOfItsViewsShows() {
            Reach reach = reach(sights, List.of());

            assertThat(reach.stations())
                    .extracting(from -> from.view() + "/" + from.station())
                    .containsExactly(
                            "front/ahead",
                            "front/loose",
                            "front/tilting",
                            "front/moving",
                            "rear/behind",
                            "narrow/loose");
            assertThat(reach.stations()).extracting(Reach.FromStation::travels).containsOnly(false);
            for (int facet = 0; facet < 6; facet++) {
                int at = facet;
                assertThat(reach.facets()[facet])
                        .isEqualTo(reach.stations().stream()
                                .anyMatch(from -> from.sight().reaches(at)));
            }
            // Front and rear face the scope tips, the outer end faces none.
            assertThat(reach.facets()[0]).isTrue();
            assertThat(reach.facets()[1]).isTrue();
            assertThat(reach.facets()[5]).isFalse();
        }

        @Test
        void saysOfEachFacetOutOfReachWhatTheStationSaysThatComesNearest() {
            Reach reach = reach(sights, List.of());
            for (int facet = 0; facet < 6; facet++) {
                int at = facet;
                Optional<Hindrance> last = reach.stations().stream()
                        .flatMap(from -> from.sight().why(at).stream())
                        .max(Comparator.naturalOrder());
                assertThat(reach.why().get(facet)).isEqualTo(reach.facets()[facet] ? Optional.empty() : last);
            }
            assertThat(reach.why().get(5)).isPresent();
        }

        /** The narrow scope tip cannot find 0.5 mm at 30 mm, the other can: only what neither shows is too coarse. */
        @Test
        void ofADetailItIsToldWithoutItToo() {
            Reach fine = reach(sights(Criteria.USUAL.withDetail(0.5)), List.of());

            assertThat(fine.facets()[0]).isTrue();
            Reach.FromStation narrow = fine.stations().get(5);
            assertThat(narrow.sight().why(0)).contains(Hindrance.TOO_COARSE);
            assertThat(narrow.anyDetail().why(0)).isEmpty();
            assertThat(reach(sights, List.of()).stations())
                    .allSatisfy(from -> assertThat(from.anyDetail()).isSameAs(from.sight()));
        }

        @Test
        void whereOnlyTheDetailHidesThatIsWhy() {
            Reach coarse = reach(sights(Criteria.USUAL.withDetail(0.001)), List.of());

            assertThat(coarse.facets()).containsOnly(false);
            assertThat(coarse.why().get(0)).contains(Hindrance.TOO_COARSE);
        }

        @Test
        void countsStancesThatAJobHasUsedAsWell() {
            Reach reach = reach(sights, List.of(stance("rear", "behind", "slim"), stance("rear", "behind", null)));

            assertThat(reach.stations()).hasSize(7);
            assertThat(reach.stations().get(6).view()).isEqualTo("rear");
        }

        @Test
        void isJudgedByTheDaysTestTarget() {
            Reach reach = Reach.of(
                    sights(Criteria.USUAL.withDetail(1)),
                    row,
                    Map.of(),
                    Optional.of(new Stance.Proof(1, 10)),
                    List.of());

            assertThat(reach.why().get(0)).contains(Hindrance.TOO_COARSE);
        }
    }

    @Nested
    class TheCostOfATolerance {

        private ToleranceCost cost(String station) {
            return sights.cost(stance("front", station, "tip"), station).orElseThrow();
        }

        /** A facet's share of the surface counts if all poses that are off in one way show it. */
        private Map<Way, Double> alone(Station station) {
            Facets facets = sights.scene(row).facets();
            Pose pose = Pose.of(station, blocks.model().scopeTip("tip").orElseThrow());
            Map<Way, Double> alone = new EnumMap<>(Way.class);
            PoseFamily.oneWay(pose, station.within()).forEach((way, poses) -> {
                List<SightArcs> sight = SightArcs.compute(sights.scene(row), poses, Criteria.USUAL, Progress.NONE);
                double share = IntStream.range(0, facets.count())
                        .filter(facet -> !nominal(station).arcs(facet).isEmpty()
                                && sight.stream()
                                        .noneMatch(one -> StationSight.counted(one.arcs(facet))
                                                .isEmpty()))
                        .mapToDouble(facets::area)
                        .sum();
                alone.put(way, share / facets.area());
            });
            return alone;
        }

        private SightArcs nominal(Station station) {
            Pose pose = Pose.of(station, blocks.model().scopeTip("tip").orElseThrow());
            return Plates.sight(sights.scene(row), pose, Criteria.USUAL);
        }

        @Test
        void isWhatIsShownFromTheStationAndFromAllPoses() {
            Facets facets = sights.scene(row).facets();
            StationSight shown =
                    sights.of(stance("front", "loose", "tip"), "loose").orElseThrow();
            double nominal = 0;
            double sure = 0;
            for (int facet = 0; facet < 6; facet++) {
                nominal += shown.arcs(0, facet).isEmpty() ? 0 : facets.area(facet);
                sure += shown.reaches(facet) ? facets.area(facet) : 0;
            }

            ToleranceCost cost = cost("loose");
            assertThat(cost.nominal())
                    .isCloseTo(nominal / facets.area(), within(1e-12))
                    .isPositive();
            assertThat(cost.sure())
                    .isCloseTo(sure / facets.area(), within(1e-12))
                    .isPositive();
            assertThat(cost.sure()).isLessThanOrEqualTo(cost.nominal());
        }

        @Test
        void isToldOfEachWayInWhichTheScopeTipMayBeOff() {
            for (Station station : List.of(loose, tilting, moving)) {
                Map<Way, Double> alone = alone(station);
                assertThat(cost(station.id()).alone()).containsExactlyInAnyOrderEntriesOf(alone);
            }
            assertThat(cost("tilting").alone()).containsOnlyKeys(Way.TILTED);
            assertThat(cost("moving").alone()).containsOnlyKeys(Way.AXIALLY, Way.ROUND, Way.OUTWARD);
            assertThat(cost("loose").alone()).hasSize(4);
        }

        @Test
        void isNothingAtAnExactStationOrWithoutAScopeTip() {
            assertThat(sights.cost(stance("front", "ahead", "tip"), "ahead")).isEmpty();
            assertThat(sights.cost(stance("front", "loose", null), "loose")).isEmpty();
        }

        @Test
        void theWayThatTakesMostIsNamedAndTheFirstOfSeveral() {
            Map<Way, Double> alone = Map.ofEntries(
                    entry(Way.AXIALLY, 0.5), entry(Way.ROUND, 0.2), entry(Way.OUTWARD, 0.3), entry(Way.TILTED, 0.2));

            assertThat(new ToleranceCost(0.5, 0.1, alone).most()).contains(Way.ROUND);
        }

        @Test
        void ifNoneTakesAnythingNoneTakesMost() {
            assertThat(new ToleranceCost(0.5, 0.5, Map.of(Way.AXIALLY, 0.5, Way.TILTED, 0.5)).most())
                    .isEmpty();
            assertThat(new ToleranceCost(0.5, 0.5, Map.of()).most()).isEmpty();
        }
    }
}
