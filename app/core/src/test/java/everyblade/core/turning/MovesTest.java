package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class MovesTest {

    private static Engines blades36() {
        return new Engines().rotor("c1", 36).view("v", "c1", 0, 2);
    }

    private static Job counting(Engines engines) {
        return new Job(engines.built()).enter("view v", "datum c1 1");
    }

    private static double reading(Job job) {
        Situation now = job.fold().situation();
        return now.reading(now.engine().rows().get("c1")).degrees();
    }

    private static Refusal refusal(Job job, String line) {
        int kept = job.fold().entries().size();
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> job.tryEnter(line));
        assertThat(refusal).as(line).isNotNull();
        assertThat(job.fold().entries()).hasSize(kept);
        return refusal;
    }

    @Nested
    class WhichWay {

        @Test
        void onIsTheNormalDirectionOfTheSpoolAndBackTheOther() {
            Job job = counting(blades36().normal(Direction.CCW));
            assertThat(reading(job.enter("turn on 30"))).isEqualTo(330);
            assertThat(reading(job.enter("skip back 40"))).isEqualTo(10);
        }

        @Test
        void withoutAWordTheSignCountsWhateverTheNormalDirection() {
            Job job = counting(blades36().normal(Direction.CCW));
            assertThat(reading(job.enter("turn 30"))).isEqualTo(30);
            assertThat(reading(job.enter("turn -40"))).isEqualTo(350);
        }

        @Test
        void aPadForOneDirectionRefusesTheOther() {
            Job job = counting(blades36().pad("nose", Ratio.ONE, 0, 0, 0, Direction.CW));
            for (String line : List.of("turn -10", "skip back 10", "turn back to 350", "turn -1 blades")) {
                assertThat(English.say(refusal(job, line))).contains("pad nose", "cw only", "this move is ccw");
            }
            assertThat(reading(job)).isZero();
        }

        @Test
        void aRoundNeedsTheNormalDirection() {
            Job job = counting(blades36().normal(Direction.CW).pad("aft", Ratio.ONE, 0, 0, 0, Direction.CCW));
            assertThat(English.say(refusal(job, "round 1"))).contains("pad aft", "may not be turned cw");
        }

        @Test
        void aRoundGoesOnceRoundInTheNormalDirection() {
            Job job = counting(blades36().normal(Direction.CCW)).enter("round 1");
            Situation now = job.fold().situation();
            assertThat(now.placing(now.engine().rows().get("c1")).counted(0, 1)).isEqualTo(Turn.FULL.negated());
        }
    }

    @Nested
    class ToAReading {

        @Test
        void theShorterWayIsTaken() {
            Job job = counting(blades36());
            job.enter("turn to 210");
            assertThat(reading(job)).isEqualTo(210);
            Situation now = job.fold().situation();
            assertThat(now.placing(now.engine().rows().get("c1")).counted(0, now.stop(row(now))))
                    .isEqualTo(Turn.ofDegrees(-150));
        }

        @Test
        void onAndBackForceOneWay() {
            Job job = counting(blades36()).enter("turn on to 210");
            Situation now = job.fold().situation();
            assertThat(now.placing(row(now)).counted(0, now.stop(row(now)))).isEqualTo(Turn.ofDegrees(210));
            job.enter("turn back to 200", "turn back to 210");
            now = job.fold().situation();
            assertThat(now.placing(row(now)).counted(0, now.stop(row(now)))).isEqualTo(Turn.ofDegrees(-150));
        }

        @Test
        void aPadForOneDirectionGoesTheLongWayRound() {
            Job job = counting(blades36().pad("nose", Ratio.ONE, 0, 0, 0, Direction.CW))
                    .enter("skip to 350");
            Situation now = job.fold().situation();
            assertThat(now.placing(row(now)).counted(0, now.stop(row(now)))).isEqualTo(Turn.ofDegrees(350));
        }

        @Test
        void exactlyOppositeIsRefusedUnlessAWayIsSaid() {
            Job job = counting(blades36());
            assertThat(English.say(refusal(job, "turn to 180")))
                    .contains("exactly opposite", "on to 180", "back to 180");
            assertThat(reading(job)).isZero();
            assertThat(reading(job.enter("turn back to 180"))).isEqualTo(180);
        }

        @Test
        void atAPadForOneDirectionOppositeIsNoQuestion() {
            Job job = counting(blades36().pad("nose", Ratio.ONE, 0, 0, 0, Direction.CCW))
                    .enter("turn to 180");
            Situation now = job.fold().situation();
            assertThat(now.placing(row(now)).counted(0, now.stop(row(now)))).isEqualTo(Turn.ofDegrees(-180));
        }

        @Test
        void aDatumSetsTheReading() {
            Job job = counting(blades36()).enter("turn 20", "datum c1 35 at 90", "turn to 100");
            assertThat(reading(job)).isEqualTo(100);
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(1, 34, 35, 36);
        }

        private Row row(Situation now) {
            return now.engine().rows().get("c1");
        }
    }

    @Nested
    class HowFar {

        private final Ratio gears = new Ratio(29, 77);

        private Turn turned(Job job) {
            Situation now = job.fold().situation();
            Row row = now.engine().rows().get("c1");
            return now.placing(row).counted(0, now.stop(row));
        }

        @Test
        void seventySevenTurnsOfTheToolAreTwentyNineOfTheShaft() {
            Job job = counting(blades36().pad("pad", gears, 0, 0, 0));
            Collections.nCopies(77, "skip 1 tool").forEach(job::enter);
            assertThat(turned(job)).isEqualTo(Turn.FULL.times(29, 1));
        }

        @Test
        void aGearThatTurnsTheShaftAgainstTheToolTurnsTheSign() {
            Job job = counting(blades36().pad("pad", new Ratio(-1, 4), 0, 0, 0)).enter("turn 1 tool");
            assertThat(reading(job)).isEqualTo(270);
        }

        @Test
        void withOnTheShaftGoesOnWhicheverWayTheToolTurns() {
            Job job = counting(blades36().pad("pad", new Ratio(-1, 4), 0, 0, 0)).enter("turn on 1 tool");
            assertThat(reading(job)).isEqualTo(90);
        }

        @Test
        void theRatioIsThatOfThePadNamedLast() {
            Job job = counting(blades36().pad("slow", new Ratio(1, 36), 0, 0, 0).pad("fast", new Ratio(1, 4), 0, 0, 0));
            assertThat(reading(job.enter("turn 1 tool"))).isEqualTo(10);
            assertThat(reading(job.enter("pad fast", "turn 1 tool", "turn 1 tool")))
                    .isEqualTo(190);
            assertThat(English.say(refusal(job, "pad none"))).contains("no pad none", "slow, fast");
        }

        @Test
        void aPadThatSeveralShaftsHaveIsThatOfTheRowInView() {
            Job job = new Job(blades36()
                    .onSpool("hp")
                    .rotor("h1", 20)
                    .stator("s1", 20)
                    .view("w", "h1", 0, 2)
                    .view("u", "s1", 0, 2)
                    .pad("slow", new Ratio(1, 36), 0, 0, 0)
                    .pad("fast", new Ratio(1, 4), 0, 0, 0)
                    .built());
            assertThat(refusal(job, "pad fast").why()).isEqualTo(new SeatProblem.SeveralSpools("fast"));
            assertThat(refusal(job.enter("view u"), "pad fast").why()).isEqualTo(new SeatProblem.SeveralSpools("fast"));
            job.enter("view w", "pad fast", "turn 1 tool");
            Situation now = job.fold().situation();
            assertThat(now.reading(now.engine().rows().get("h1")).degrees()).isEqualTo(90);
            assertThat(reading(job.enter("view v", "turn 1 tool"))).isEqualTo(10);
        }

        @Test
        void bladesArePitchesOfTheRowInView() {
            Job job = counting(blades36().rotor("c2", 20).view("w", "c2", 0, 2));
            assertThat(reading(job.enter("turn 1 blades"))).isEqualTo(10);
            assertThat(reading(job.enter("view w", "skip 1 blades"))).isEqualTo(28);
        }

        @Test
        void sevenSeventhsOfATurnAreATurn() {
            Job job = counting(new Engines().rotor("c1", 7).view("v", "c1", 0, 2));
            Collections.nCopies(7, "turn 1 blades").forEach(job::enter);
            assertThat(turned(job)).isEqualTo(Turn.FULL);
        }

        @Test
        void aDecimalCommaIsAPoint() {
            assertThat(reading(counting(blades36()).enter("turn 12,5"))).isEqualTo(12.5);
            assertThat(reading(counting(blades36()).enter("turn 0.25 rev"))).isEqualTo(90);
        }

        @Test
        void withoutARowInViewNobodyKnowsWhatABladeIs() {
            Refusal refusal = refusal(new Job(blades36().built()), "skip 2 blades");
            assertThat(refusal.why()).isEqualTo(MoveProblem.Flaw.NO_ROW);
            assertThat(refusal.column()).isEqualTo(6);
        }

        @Test
        void aThousandTurnsAreNotYet() {
            assertThat(reading(counting(blades36()).enter("skip 1000 rev"))).isZero();
            assertThat(reading(counting(blades36()).enter("skip -1000 rev"))).isZero();
            assertThat(refusal(counting(blades36()), "skip -1001 rev").why()).isEqualTo(MoveProblem.Flaw.TOO_FAR);
        }

        @Test
        void moreThanAThousandTurnsAreTakenForAMistake() {
            assertThat(English.say(refusal(counting(blades36()), "skip 1001 rev")))
                    .contains("check the number");
        }
    }
}
