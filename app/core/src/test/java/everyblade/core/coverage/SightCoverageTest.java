package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.gap.Gaps;
import everyblade.core.sight.Hindrance;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Optional;
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
