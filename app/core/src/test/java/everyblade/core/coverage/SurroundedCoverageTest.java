package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Clearances;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What counts as seen past rows between, of what stands still, and with a scope tip among the blades. */
class SurroundedCoverageTest {

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
            for (String turning : List.of("turn 10", "round 1")) {
                assertThatThrownBy(() -> job.tryEnter(turning))
                        .as(turning)
                        .isInstanceOf(Refusal.class)
                        .extracting(English::why)
                        .asString()
                        .contains("the scope tip is among the blades", "say clear");
            }
            job.enter("clear", "skip 30");
            assertThatThrownBy(() -> job.tryEnter("look"))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .contains("at among");
            job.enter("at among", "look", "clear", "at ahead", "turn 10");
        }

        @Test
        void refusesTurningWhileTheScopeTipPassesIt() throws Exception {
            Job job = standing().enter("view v", "datum r 1", "clear", "at ahead");
            assertThatThrownBy(() -> job.tryEnter("turn 10 through ahead among"))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .contains("the margin is 2 mm");
        }
    }

    /** By hand: seen square on, everything within the cone counts; a plate that is only looked along does not. */
}
