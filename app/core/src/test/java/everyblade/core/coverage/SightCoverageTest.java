package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Zoning;
import everyblade.core.gap.Gaps;
import everyblade.core.sight.Clearances;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What counts as seen where it is computed from shapes and stations. */
class SightCoverageTest {

    private static final int BLADES = 20;

    /** Ahead of the row, looking aft and inward. */
    private static Station ahead(double mm, double deg) {
        return ShapedEngine.station("ahead", -15, 135, new Heading(1, 0.3, -0.3), mm, deg);
    }

    private static ShapedEngine rotor() {
        return new ShapedEngine().row("r", RowKind.ROTOR, BLADES, 35, 0);
    }

    private static Job job(ShapedEngine engine, String... lines) {
        return new Job(engine.built()).enter(lines);
    }

    private static Tally tally(RowCoverage row) {
        return row.tally(row.zoning().all());
    }

    @Nested
    class ATurnThatIsHeld {

        @Test
        void showsWhatAnExactStationReachesAndNothingElse() {
            RowCoverage row = job(rotor().view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 360")
                    .coverage()
                    .row("r");
            Areas areas = row.areas(row.zoning().all());
            assertThat(areas.seen()).isEqualTo(areas.reach()).isBetween(0.1, 0.6);
            // Maybe is told of facets by their middles, surely of their patches.
            assertThat(areas.maybe()).isCloseTo(areas.seen(), within(0.03));
            assertThat(row.basis()).isEqualTo(Basis.COMPUTED);
        }

        /** One pose of a scope shows a fifth to a third of a blade, and where it stands within its tolerance is not known. */
        @Test
        void showsLessForSureTheLargerTheTolerance() {
            double before = 1;
            double beforeMaybe = 0;
            for (double mm : new double[] {0, 1, 3, 5}) {
                RowCoverage row = job(rotor().view("v", "r", ahead(mm, 2 * mm)), "view v", "datum r 1", "turn 360")
                        .coverage()
                        .row("r");
                Areas areas = row.areas(row.zoning().all());
                assertThat(areas.seen()).as("± %s mm", mm).isLessThan(before);
                assertThat(areas.maybe()).as("± %s mm", mm).isGreaterThan(beforeMaybe);
                before = areas.seen();
                beforeMaybe = areas.maybe();
            }
        }

        @Test
        void showsAllBladesAlike() {
            RowCoverage row = job(rotor().view("v", "r", ahead(1, 2)), "view v", "datum r 1", "turn 360")
                    .coverage()
                    .row("r");
            for (int n = 2; n <= BLADES; n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    assertThat(row.areas(n, zone)).isEqualTo(row.areas(1, zone));
                }
            }
        }
    }

    @Nested
    class ThePlaceOfTheScopeTip {

        private final ShapedEngine engine = rotor().view("v", "r", ahead(2, 5));

        /** Whatever the pose is, it is the same for both halves of the turn only if the scope tip was not moved between. */
        @Test
        void isOneAndTheSameAsLongAsItHolds() {
            Areas held = all(job(engine, "view v", "datum r 1", "turn 200", "turn 160"));
            Areas again = all(job(engine, "view v", "datum r 1", "turn 200", "view v", "turn 160"));
            assertThat(held).isEqualTo(all(job(engine, "view v", "datum r 1", "turn 360")));
            assertThat(again.seen()).isLessThan(held.seen());
            assertThat(again.maybe()).isCloseTo(held.maybe(), within(1e-12));
        }

        @Test
        void isWhyACellIsOnlyMaybeSeen() {
            RowCoverage row = job(
                            rotor().view(
                                            "v",
                                            "r",
                                            ahead(5, 10),
                                            ShapedEngine.station("exact", -15, 135, new Heading(1, 0.3, -0.3), 0, 0)),
                            "view v",
                            "datum r 1",
                            "turn 360")
                    .coverage()
                    .row("r");
            List<Why> reasons = IntStream.range(0, row.zoning().size())
                    .filter(zone -> row.state(1, zone) == State.MAYBE)
                    .mapToObj(zone -> row.why(1, zone).orElseThrow())
                    .toList();
            assertThat(reasons).isNotEmpty().containsOnly(Why.PLACEMENT);
        }

        private Areas all(Job job) {
            RowCoverage row = job.coverage().row("r");
            return row.areas(row.zoning().all());
        }
    }

    @Nested
    class APartCell {

        private final RowCoverage row = job(rotor().view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 360")
                .coverage()
                .row("r");

        @Test
        void isSeenAsFarAsAnyViewReaches() {
            assertThat(tally(row).part()).isPositive();
            assertThat(tally(row).doneShare()).isGreaterThan(tally(row).seenShare());
        }

        @Test
        void isNoGap() {
            Job whole = job(rotor().view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 360");
            assertThat(Gaps.of(whole.coverage())).allMatch(gap -> gap.why() == Why.NO_ACCESS);
        }
    }

    @Nested
    class WhatNoViewReaches {

        @Test
        void saysWhatKeepsItOutOfSight() {
            RowCoverage row = job(rotor().view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 360")
                    .coverage()
                    .row("r");
            List<Integer> out = IntStream.range(0, row.zoning().size())
                    .filter(zone -> row.why(1, zone).equals(Optional.of(Why.NO_ACCESS)))
                    .boxed()
                    .toList();
            assertThat(out).isNotEmpty().allMatch(zone -> row.hindrance(1, zone).isPresent());
        }

        @Test
        void isTooCoarseWhereItWouldShowWithFinerPixels() {
            ShapedEngine engine = rotor().view("v", "r", "coarse60", Optional.empty(), ahead(0, 0));
            String[] lines = {"view v", "datum r 1", "turn 360"};
            assertThat(tally(job(engine, lines).coverage().row("r")).coarse()).isZero();
            RowCoverage fine =
                    job(engine, lines).set("detail", "0.2").coverage().row("r");
            assertThat(tally(fine).coarse()).isPositive();
            assertThat(tally(fine).seen() + tally(fine).part()).isZero();
        }

        /** A line of 0.8 mm seen at 20 mm tells that nothing finer is found, whatever the pixels are. */
        @Test
        void isTooCoarseAlsoByTheDaysTestTarget() {
            ShapedEngine engine = rotor().view("v", "r", ahead(0, 0));
            RowCoverage sharp = job(engine, "view v", "datum r 1", "turn 360")
                    .set("detail", "0.5")
                    .coverage()
                    .row("r");
            RowCoverage blurred = job(engine, "proof 0.8 mm at 20 mm", "view v", "datum r 1", "turn 360")
                    .set("detail", "0.5")
                    .coverage()
                    .row("r");
            assertThat(areas(blurred).seen()).isLessThan(areas(sharp).seen());
        }

        private Areas areas(RowCoverage row) {
            return row.areas(row.zoning().all());
        }
    }

    @Nested
    class PlayOfThePad {

        @Test
        void makesTheEndsOfASweepMaybe() {
            Job exact = job(rotor().view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 90");
            Job loose = job(rotor().play(4).view("v", "r", ahead(0, 0)), "view v", "datum r 1", "turn 90");
            Tally sharp = tally(exact.coverage().row("r"));
            Tally blurred = tally(loose.coverage().row("r"));
            assertThat(blurred.maybe()).isGreaterThan(sharp.maybe());
            assertThat(blurred.part() + blurred.seen()).isLessThan(sharp.part() + sharp.seen());
            RowCoverage row = loose.coverage().row("r");
            assertThat(IntStream.rangeClosed(1, BLADES)
                            .boxed()
                            .flatMap(n -> IntStream.range(0, row.zoning().size())
                                    .filter(zone -> row.state(n, zone) == State.MAYBE)
                                    .mapToObj(zone -> row.why(n, zone).orElseThrow())))
                    .contains(Why.PLAY);
        }
    }

    @Nested
    class AWindowBesideStations {

        @Test
        void countsApart() {
            ShapedEngine engine = rotor().view("v", "r", ahead(0, 0)).window("w", "r", 10);
            RowCoverage row =
                    job(engine, "view w", "datum r 1", "turn 360").coverage().row("r");
            assertThat(row.basis()).isEqualTo(Basis.COMPUTED);
            assertThat(tally(row).seen() + tally(row).part()).isZero();
            assertThat(row.declaredCells()).isEqualTo(row.cells());
        }
    }

    @Nested
    class ALeastTimeInView {

        @Test
        void leavesOutWhatPassedTooFast() {
            ShapedEngine engine = rotor().view("v", "r", ahead(0, 0));
            Job slow = job(engine, "view v", "datum r 1", "turn 360 in 300s").leastView(0.3);
            Job quick = job(engine, "view v", "datum r 1", "turn 360 in 3s").leastView(0.3);
            assertThat(tally(slow.coverage().row("r")).part()).isPositive();
            assertThat(tally(quick.coverage().row("r")).part()).isZero();
            assertThat(tally(quick.coverage().row("r")).fast()).isPositive();
        }
    }

    @Nested
    class ALinerThatIsDrawnRound {

        private final Station low = ShapedEngine.station("low", 30, 115, new Heading(0, 0, 1), 0, 0);
        private final Station high = ShapedEngine.station("high", 30, 135, new Heading(0, 0, -1), 0, 0);

        @Test
        void isSeenAllRoundFromOneStation() {
            ShapedEngine engine = new ShapedEngine().liner("l", 12).view("v", "l", low);
            RowCoverage row =
                    job(engine, "view v", "datum l 1", "draw 360").coverage().row("l");
            for (int n = 2; n <= 12; n++) {
                assertThat(row.areas(n, 0).seen()).isEqualTo(row.areas(1, 0).seen());
            }
            assertThat(row.areas(1, 0).seen()).isPositive();
        }

        /** A flexible tip lies on the outer wall below and sags to the inner wall above. */
        @Test
        void isSeenFromTheStationThatHoldsInEachSector() {
            ShapedEngine engine = new ShapedEngine()
                    .liner("l", 12)
                    .view("v", "l", ShapedEngine.holding(low, 270, 90), ShapedEngine.holding(high, 90, 270));
            RowCoverage row =
                    job(engine, "view v", "datum l 1", "draw 360").coverage().row("l");
            int outer = row.zoning().names().indexOf("outer/forward");
            int inner = row.zoning().names().indexOf("inner/forward");
            assertThat(row.areas(1, outer).seen()).isPositive();
            assertThat(row.areas(1, inner).seen()).isZero();
            assertThat(row.areas(7, outer).seen()).isZero();
            assertThat(row.areas(7, inner).seen()).isPositive();
        }

        @Test
        void isSeenWhereItWasDrawnAndNotWhereItWasFed() {
            ShapedEngine engine = new ShapedEngine().liner("l", 12).view("v", "l", low);
            RowCoverage row = job(engine, "view v", "datum l 1", "draw 90", "feed 180", "draw 30")
                    .coverage()
                    .row("l");
            List<Integer> seen = IntStream.rangeClosed(1, 12)
                    .filter(n -> row.areas(n, 0).seen() > 0)
                    .boxed()
                    .toList();
            assertThat(seen).contains(1, 2, 3, 4, 10, 11).doesNotContain(6, 7);
        }
    }

    @Nested
    class RowsBetween {

        private final Station behindVanes = ShapedEngine.station("far", -50, 130, new Heading(1, 0, -0.1), 0, 0);

        private double seen(ShapedEngine engine) {
            RowCoverage row = job(engine.view("v", "r", behindVanes), "view v", "datum r 1", "turn 360")
                    .coverage()
                    .row("r");
            return row.areas(row.zoning().all()).seen();
        }

        @Test
        void hideByWhatTheySweepIfTheyTurn() {
            assertThat(seen(rotor())).isPositive();
            assertThat(seen(rotor().row("other", RowKind.ROTOR, 24, 20, -40))).isZero();
        }

        @Test
        void hideWhereverTheyMayStandIfNobodyKnowsThat() {
            double anywhere = seen(rotor().row("vanes", RowKind.STATOR, 12, 20, -40));
            for (double phase = 0; phase < 30; phase += 7.5) {
                assertThat(seen(rotor().row("vanes", RowKind.STATOR, 12, 20, -40, OptionalDouble.of(phase))))
                        .isGreaterThanOrEqualTo(anywhere);
            }
        }

        @Test
        void letThroughBetweenVanesWhoseClockIsFixed() {
            double open = seen(rotor());
            double through = seen(rotor().row("vanes", RowKind.STATOR, 12, 0, -40, OptionalDouble.of(15)));
            assertThat(through).isPositive().isLessThanOrEqualTo(open);
        }

        @Test
        void doNotHideAheadOfTheScopeTipOrBehindTheRow() {
            assertThat(seen(rotor().row("other", RowKind.ROTOR, 24, 20, 80))).isEqualTo(seen(rotor()));
        }
    }

    @Nested
    class MovableVanes {

        @Test
        void areSeenAtThePositionAtWhichTheyStand() {
            ShapedEngine engine =
                    new ShapedEngine().row("s", RowKind.STATOR, 20, 10, 0).view("v", "s", ahead(0, 0));
            Areas usual = vanes(job(engine, "view v", "datum s 1", "draw 360"));
            Areas open = vanes(job(engine, "vanes s open", "view v", "datum s 1", "draw 360"));
            assertThat(open.seen()).isPositive().isNotEqualTo(usual.seen());
        }

        private Areas vanes(Job job) {
            RowCoverage row = job.coverage().row("s");
            return row.areas(Zoning.of(row.row()).all());
        }
    }

    @Nested
    class AStationThatStandsInTheBlades {

        private final EngineModel model = rotor().view(
                        "v", "r", ShapedEngine.station("among", 1, 135, new Heading(0, 1, 0), 0.5, 0), ahead(0.5, 0))
                .model();

        private Job standing() throws Exception {
            return new Job(Engine.of(model).withClearances(Clearances.of(new ViewScene(model, Map.of(), Map.of())), 2));
        }

        @Test
        void refusesTurningUntilTheScopeTipIsClear() throws Exception {
            Job job = standing().enter("view v", "datum r 1", "look");
            assertThat(job.warnings()).anyMatch(warning -> warning.contains("station among"));
            assertThatThrownBy(() -> job.tryEnter("turn 10"))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("clear");
            job.enter("clear", "skip 30");
            assertThatThrownBy(() -> job.tryEnter("look"))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("at among");
            job.enter("at among", "look", "clear", "at ahead", "turn 10");
        }

        @Test
        void refusesTurningWhileTheScopeTipPassesIt() throws Exception {
            Job job = standing().enter("view v", "datum r 1", "clear", "at ahead");
            assertThatThrownBy(() -> job.tryEnter("turn 10 through ahead among"))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("the margin is 2 mm");
        }
    }

    /** By hand: seen square on, everything within the cone counts; a plate that is only looked along does not. */
    @Test
    void grazingIsWhyTheFlankOfAnAxialBladeIsNotReachedFromStraightAhead() {
        ShapedEngine engine = new ShapedEngine()
                .row("r", RowKind.ROTOR, BLADES, 0, 0)
                .view("v", "r", ShapedEngine.station("s", -30, 125, new Heading(1, 0, 0), 0, 0));
        RowCoverage row =
                job(engine, "view v", "datum r 1", "turn 360").coverage().row("r");
        int middle = row.zoning().names().indexOf("tip/pressure/middle");
        assertThat(row.why(1, middle)).contains(Why.NO_ACCESS);
        assertThat(row.hindrance(1, middle)).contains(Hindrance.GRAZING);
    }
}
