package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.Why;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which view a gap sends to, and to which airfoil first where nobody knows how the row stands. */
class FirstToDoTest {

    private static Engines alike() {
        return new Engines().rotor("a", 12).view("v", "a", 0, 2).view("w", "a", 90, 2);
    }

    private static Gap first(Job job) {
        return Gaps.of(job.coverage()).get(0);
    }

    @Test
    void ofViewsThatShowAsMuchTheOneInUseIsTaken() {
        Job job = new Job(alike().built()).enter("view w", "datum a 1");
        assertThat(first(job).reach()).map(Gap.Reach::view).contains("w");
        assertThat(first(job.enter("view v")).reach()).map(Gap.Reach::view).contains("v");
    }

    @Test
    void aLandmarkIsLookedForInTheViewInUse() {
        Job job = new Job(alike().built());
        assertThat(first(job).first()).contains(new Gap.Landmark(1, Optional.empty(), "v", 0));
        assertThat(first(job.enter("view w")).first()).contains(new Gap.Landmark(1, Optional.empty(), "w", 90));
        assertThat(first(job.enter("datum a 1")).first()).isEmpty();
    }

    @Test
    void theLandmarkOfTheModelIsTheOneToLookFor() {
        Job job = new Job(Engine.of(EngineModel.of("e", "engine")
                .rows(List.of(
                        Row.of("a", RowKind.STATOR, 12)
                                .landmarks(List.of(new Landmark(7, "notch")))
                                .build(),
                        Row.of("b", RowKind.STATOR, 12).build()))
                .views(List.of(window("other", "b", 0), window("v", "a", 30)))
                .build()));
        assertThat(first(job).first()).contains(new Gap.Landmark(7, Optional.of("notch"), "v", 30));
    }

    private static View window(String id, String row, double reference) {
        return View.of(id, row)
                .reference(reference)
                .window(new Window(2, List.of("all")))
                .build();
    }

    @Test
    void aViewThatShowsNothingOfTheGapIsNotTheOneToLookIn() {
        Job job = new Job(new Engines()
                        .row("a", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                        .view("roots", "a", 0, 2, "root")
                        .view("tips", "a", 90, 2, "tip")
                        .built())
                .enter("ask a tip", "view roots");
        assertThat(first(job).first()).map(Gap.Landmark::view).contains("tips");
    }

    @Test
    void norIsAStationThatLooksAway() {
        Job job = new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .view("away", "r", ShapedEngine.station("off", -25, 138, new Heading(-1, 0, 0), 0, 0))
                        .view("front", "r", ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3))
                        .built())
                .enter("view away");
        assertThat(Gaps.of(job.coverage()))
                .filteredOn(gap -> gap.why() == Why.SKIPPED)
                .isNotEmpty()
                .allSatisfy(
                        gap -> assertThat(gap.first()).map(Gap.Landmark::view).contains("front"));
    }

    /** Roots of 2 to 4 were never watched though in sight, 8 to 11 never passed at all: told in the order of the airfoils. */
    @Test
    void gapsAreToldByTheirFirstAirfoilWhateverTheirReason() {
        Job job = new Job(new Engines()
                        .normal(Direction.CCW)
                        .row("a", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                        .view("v", "a", 0, 2)
                        .built())
                .enter("view v", "datum a 1", "watch tip", "turn on 120", "watch all", "turn on 60", "skip on 60");
        List<Gap> gaps = Gaps.of(job.coverage());
        assertThat(gaps).hasSizeGreaterThan(1);
        assertThat(gaps).extracting(gap -> gap.airfoils().get(0)).isSorted();
        assertThat(gaps)
                .extracting(Gap::why)
                .isNotEqualTo(gaps.stream().map(Gap::why).sorted().toList());
    }
}
