package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Window;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TurningTest {

    private static double reading(Job job) {
        return job.fold()
                .situation()
                .reading(job.coverage().rows().get(0).row())
                .degrees();
    }

    private static void assertRefused(Job job, String line, String... words) {
        assertThatThrownBy(() -> job.tryEnter(line))
                .isInstanceOf(Refusal.class)
                .extracting(English::why)
                .asString()
                .contains(words)
                .doesNotContain("\n");
    }

    @Nested
    class AtAPadWithAGear {

        private final Job job = new Job(new Engines()
                .rotor("c1", 36)
                .view("v", "c1", 0, 2)
                .pad("pad", new Ratio(29, 77), 0, 0, 0)
                .pad("crank", new Ratio(-1, 2), 0, 0, 0, Direction.CW)
                .normal(Direction.CW)
                .built());

        @Test
        void seventySevenTurnsOfTheToolAreTwentyNineOfTheShaft() {
            job.enter("view v", "datum c1 1");
            IntStream.range(0, 77).forEach(i -> job.enter("skip 1 tool"));
            assertThat(reading(job)).isZero();
            job.enter("look");
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(1);
        }

        @Test
        void withoutOnOrBackTheSignCountsAndANegativeRatioTurnsItRound() {
            job.enter("view v", "pad crank", "skip -0,5 tool");
            assertThat(reading(job)).isEqualTo(90);
        }

        @Test
        void onIsTheNormalDirectionWhicheverWayTheToolGoes() {
            job.enter("view v", "pad crank", "skip on 0.5 tool");
            assertThat(reading(job)).isEqualTo(90);
        }

        @Test
        void aDirectionThatThePadForbidsIsRefused() {
            job.enter("view v", "pad crank");
            assertRefused(job, "turn -10", "at pad crank", "cw only", "ccw");
            assertRefused(job, "turn 1 tool", "cw only");
        }

        @Test
        void aReadingIsReachedTheShorterWayOfThoseAllowed() {
            assertThat(reading(job.enter("view v", "skip to 210", "skip to 20")))
                    .isEqualTo(20);
            job.enter("pad crank", "datum c1 1", "turn to 350");
            assertThat(job.airfoils("c1", State.SEEN)).hasSize(34);
        }

        @Test
        void exactlyOppositeIsRefusedUnlessForced() {
            job.enter("view v");
            assertRefused(job, "turn to 180", "exactly opposite", "on to 180", "back to 180");
            job.enter("turn on to 180", "turn back to 0");
        }
    }

    @Nested
    class Watching {

        private final Job job = new Job(new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                .view("v", "c1", 0, 2)
                .built());

        @Test
        void whatIsSkippedIsNotSeen() {
            job.enter("view v", "datum c1 1", "skip on 100", "look");
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(27);
        }

        @Test
        void onlyTheWatchedHalfIsSeen() {
            job.enter("view v", "datum c1 1", "watch root", "turn on 360");
            assertThat(job.coverage().row("c1").state(5, 0)).isEqualTo(State.SEEN);
            assertThat(job.coverage().row("c1").state(5, 1)).isEqualTo(State.UNSEEN);
        }

        @Test
        void aRowWithoutADatumGivesNothingAndSaysSo() {
            job.enter("view v", "turn on 90");
            assertThat(job.warnings()).singleElement().asString().contains("no datum yet", "datum c1 N");
            job.enter("datum c1 1");
            assertThat(job.airfoils("c1", State.SEEN)).isEmpty();
        }

        @Test
        void nothingTurnsWhileTheScopeTipIsAmongTheBlades() {
            job.enter("view v", "datum c1 1", "in");
            for (String line : List.of("turn 10", "skip 10", "round 1")) {
                assertRefused(job, line, "among the blades", "say clear");
            }
            job.enter("clear", "turn 10");
        }

        @Test
        void aWatchedMoveNeedsAView() {
            assertRefused(job, "turn 10", "no view is in use", "view v");
        }

        @Test
        void aRoundCountsAsItsTurn() {
            job.enter("view v", "round 7");
            assertThat(job.airfoils("c1", State.SEEN)).hasSize(36);
        }
    }

    /** It began and ended with blade 1 seen to so many degrees, and what passes there is in sight for 4°, less 2 × 0.1° of rock. */
    @Nested
    class ARoundThatMayFallShort {

        private Job job(double aim) {
            return new Job(new Engines()
                            .aim(aim)
                            .row("c1", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, 0.1)
                            .view("v", "c1", 0, 2)
                            .pad("pad", Ratio.ONE, 2, 0, 0.5)
                            .built())
                    .enter("view v");
        }

        /** √(2 · 3² + 2²) + 0.5 is 5.190, and 3.8 of it are in sight. */
        @Test
        void saysHowMuchFurtherToTurn() {
            assertThat(job(3).enter("round 1").fold().warnings())
                    .isEqualTo(List.of(new CountWarning.RoundTooShort(3, "1.4")));
        }

        /** √2 · 2.68 is 3.790, √2 · 2.69 is 3.804. */
        @Test
        void saysNothingWhereAllOfItsErrorIsInSight() {
            assertThat(job(2.68).enter("round 1").fold().warnings()).isEmpty();
            assertThat(job(2.69).enter("round 1").fold().warnings()).hasSize(1);
        }

        /** √2 · 2.35 is 3.323, and taken 1.128 times as wide in the twelfth run 3.750, 1.180 times in the next one 3.923. */
        @Test
        void saysSoLaterWhereItsErrorIsTakenWiderInALateRun() {
            Job job = job(2.35);
            for (int run = 1; run <= 12; run++) {
                assertThat(job.enter("view v", "round 1").fold().warnings())
                        .as("run %d", run)
                        .isEmpty();
            }
            // 1.1805 · (√(2 · 2.35² + 2²) + 0.5) is 5.169.
            assertThat(job.enter("view v", "round 1").fold().warnings())
                    .isEqualTo(List.of(new CountWarning.RoundTooShort(2.35, "1.4")));
        }

        @Test
        void saysNothingWhereWhatIsInSightIsComputed() {
            Station station = ShapedEngine.station("a", -15, 130, new Station.Heading(1, 0.3, -0.4), 1, 3);
            Job computed = new Job(new ShapedEngine()
                            .row("r", RowKind.ROTOR, 20, 35, 0)
                            .view("front", "r", station)
                            .view("both", "r", "fwd60", Optional.of(new Window(1, List.of("all"))), station)
                            .window("wide", "r", 1)
                            .built())
                    .enter("view front", "round 1 ±5");
            assertThat(computed.fold().warnings()).isEmpty();
            assertThat(computed.enter("view both", "round 1 ±5").fold().warnings())
                    .isEmpty();
            assertThat(computed.enter("view wide", "round 1 ±5").fold().warnings())
                    .hasSize(1);
        }
    }

    @Nested
    class RowsThatStandStill {

        private final Job job = new Job(new Engines()
                .stator("s1", 36)
                .rotor("c1", 20)
                .view("v", "s1", 100, 2)
                .built());

        @Test
        void areSeenByDrawingTheScopeTipRound() {
            job.enter("view v", "datum s1 1", "draw 50");
            assertThat(job.airfoils("s1", State.SEEN)).containsExactly(1, 2, 3, 4, 5, 6);
        }

        @Test
        void areNotSeenWhereItWasOnlyFed() {
            job.enter("view v", "datum s1 1", "feed to 200", "look");
            assertThat(job.airfoils("s1", State.SEEN)).containsExactly(11);
        }

        @Test
        void areAtTheViewsReferenceAgainAfterANewSeating() {
            job.enter("view v", "datum s1 1", "feed 90", "view v", "look");
            assertThat(job.airfoils("s1", State.SEEN)).containsExactly(1);
        }

        @Test
        void doNotTurnUnlessAPadIsNamed() {
            job.enter("view v", "datum s1 1");
            assertRefused(job, "turn 10", "stands still", "pad pad");
            job.enter("pad pad", "turn 10");
            assertThat(job.airfoils("s1", State.SEEN)).containsExactly(1);
        }
    }

    @Nested
    class TakingBack {

        private final Job job = new Job(Engines.of(36, 2));

        @Test
        void aVoidEntryIsAsIfItHadNeverBeen() {
            job.enter("view v", "datum c1 1", "turn on 90", "skip on 90", "void 3 because it was the other shaft");
            assertThat(job.airfoils("c1", State.SEEN)).isEmpty();
            assertThat(reading(job)).isEqualTo(90);
        }

        @Test
        void aVoidCanBeVoided() {
            job.enter("view v", "datum c1 1", "turn on 90", "void 3 because wrong", "void 4 because it was right");
            assertThat(job.airfoils("c1", State.SEEN)).hasSize(10);
        }

        @Test
        void whatALaterEntryNeedsCannotBeVoided() {
            job.enter("view v", "datum c1 1", "turn on 90");
            assertRefused(job, "void 1 because wrong", "without entry 1, entry 2 (datum c1 1) could not be");
            assertRefused(job, "void 9 because wrong", "entries 1 to 3 can be voided, no 9");
        }
    }

    @Nested
    class TheCountInAdvance {

        @Test
        void saysHowManyMovesAreLeftBeforeNumbersBecomeDoubtful() {
            Job job = new Job(new Engines()
                    .rotor("c1", 94)
                    .view("v", "c1", 0, 1)
                    .pad("pad", Ratio.ONE, 1, 0, 0)
                    .built());
            job.enter("view v", "datum c1 1", "turn on 20");
            assertThat(job.warnings())
                    .containsExactly("at this play blade numbers of row c1 become doubtful after 3 more moves: find a"
                            + " landmark");
            job.enter("turn on 3 blades", "skip on 5 blades");
            assertThat(job.warnings()).as("counted by eye, so no nearer").hasSize(1);
            job.enter("skip to 0");
            assertThat(job.warnings()).as("about to follow the advice").hasSize(1);
            job.enter("turn on 20", "turn on 20", "turn on 20");
            assertThat(job.warnings()).last().asString().contains("are doubtful now");
        }

        private List<String> warnedOfSkipping(Engines engine, String... lines) {
            Job job = new Job(engine.view("v", "c1", 0, 1)
                            .pad("pad", Ratio.ONE, 1, 0, 0)
                            .built())
                    .enter("view v", "datum c1 1", "skip on 20");
            int before = job.warnings().size();
            return job.enter(lines).warnings().subList(before, job.warnings().size());
        }

        @Test
        void isSilentWhereAnUnwatchedMoveBringsALandmarkToTheReference() {
            assertThat(warnedOfSkipping(new Engines().rotor("c1", 90), "skip back 20"))
                    .isEmpty();
            assertThat(warnedOfSkipping(new Engines().rotor("c1", 90), "skip back 16"))
                    .as("blade 2, no landmark")
                    .isNotEmpty();
            assertThat(warnedOfSkipping(new Engines().rotor("c1", 90), "skip back 19"))
                    .as("blade 1 a degree away")
                    .isNotEmpty();
            assertThat(warnedOfSkipping(new Engines().aim(1).rotor("c1", 90), "skip back 19"))
                    .as("as near to it as the view lets it be put")
                    .isEmpty();
            assertThat(warnedOfSkipping(new Engines().landmark(2).rotor("c1", 90), "skip back 24"))
                    .as("the marked blade 2")
                    .isEmpty();
            assertThat(warnedOfSkipping(new Engines().landmark(2).rotor("c1", 90), "skip back 20"))
                    .as("blade 1 bears no mark")
                    .isNotEmpty();
        }
    }
}
