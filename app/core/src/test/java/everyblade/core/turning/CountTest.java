package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.State;
import everyblade.spi.Ratio;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CountTest {

    /** 36 blades seen within ± 2°; blade 1 at the reference, then nine turns of 38° ± 1.9°. */
    private static Job nineTurns(double drift) {
        Job job = new Job(new Engines()
                .rotor("c1", 36)
                .view("v", "c1", 118, 2)
                .pad("pad", Ratio.ONE, 1.9, 0, drift)
                .built());
        job.enter("view v", "datum c1 1");
        Collections.nCopies(9, "turn on 38").forEach(job::enter);
        return job;
    }

    @Nested
    class WithPlayInTheTool {

        @Test
        void theLastBladesAreOnlyMaybeSeen() {
            Job job = nineTurns(0);
            assertThat(job.airfoils("c1", State.MAYBE)).containsExactly(3);
            assertThat(job.airfoils("c1", State.UNSEEN)).containsExactly(2);
            assertThat(job.airfoils("c1", State.SEEN)).hasSize(34);
        }

        @Test
        void anIdentificationAtTheEndMakesThemSure() {
            Job job = nineTurns(0).enter("here 3");
            assertThat(job.airfoils("c1", State.MAYBE)).isEmpty();
            assertThat(job.airfoils("c1", State.UNSEEN)).containsExactly(2);
            assertThat(job.coverage().lostCount()).isFalse();
        }

        @Test
        void anIdentificationBeyondTheErrorsTellsThatTheCountWasLost() {
            Job job = nineTurns(0).enter("here 7");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(job.warnings())
                    .anySatisfy(warning -> assertThat(warning)
                            .contains("the count was lost")
                            .contains("4 blades")
                            .contains("between entries 2 and 12"));
            assertThat(job.airfoils("c1", State.SEEN)).isSubsetOf(List.of(1, 7));
        }

        /** Half a pitch is 5°: from there on the next blade is as near as the one that was meant. */
        @Test
        void anErrorOfHalfAPitchIsALossAndALittleLessIsSharedOut() {
            Job half = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn on 45", "here 33");
            assertThat(half.coverage().lostCount()).isTrue();
            Job less = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn on 44.9", "here 33");
            assertThat(less.coverage().lostCount()).isFalse();
        }

        /** Counted on, every blade but 2 passed the window; counted back from the blade at the end, every one but 6. */
        @Test
        void aCountLostInASingleMoveLeavesThatMoveInDoubt() {
            Job job = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn on 340", "here 7");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(1, 7);
            assertThat(job.airfoils("c1", State.MAYBE)).hasSize(34);
        }

        @Test
        void aCountLostOnTheWayBackToTheSameBladeDoesSoToo() {
            Job job = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn on 340", "here 1");
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(1);
            assertThat(job.airfoils("c1", State.MAYBE)).hasSize(35);
            assertThat(job.enter("turn on 40").airfoils("c1", State.SEEN)).containsExactly(1, 33, 34, 35, 36);
        }

        /**
         * Blade 1 of c2 ties down, backwards, what was watched since the slip, but not over the loss between: only
         * blade 2, 10° before it, surely stood at the reference when the loss was found. The rotor was turned 40°
         * to there, or from there and slipped back.
         */
        @Test
        void aRowIsNotCountedBackOverALoss() {
            Job job = new Job(new Engines()
                            .rotor("c1", 36)
                            .rotor("c2", 36)
                            .view("v", "c1", 0, 2)
                            .view("w", "c2", 0, 2)
                            .built())
                    .enter("view w", "datum c2 1", "slip", "view v", "datum c1 1", "view w", "turn 40")
                    .enter("view v", "here 1", "view w", "skip 10", "here 1");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(job.airfoils("c2", State.SEEN)).containsExactly(2);
            assertThat(job.airfoils("c2", State.MAYBE)).containsExactly(1, 3, 4, 5, 6, 34, 35, 36);
        }

        @Test
        void aRotorThatRollsBackMayHaveLostMore() {
            assertThat(nineTurns(1).airfoils("c1", State.MAYBE)).containsExactly(3, 4);
        }
    }

    @Nested
    class ErrorsFoundSince {

        private Situation after(String... lines) {
            return new Job(Engines.of(36, 2))
                    .enter("view v", "datum c1 1", "turn on 40 ±9", "here 34 ±0", "turn on 40 ±9", "here 30 ±0")
                    .enter(lines)
                    .fold()
                    .situation();
        }

        private List<Integer> since(Situation before, Situation now) {
            return now.countErrorsSince(before).stream().map(CountError::entry).toList();
        }

        @Test
        void areThoseOfWhatWasEnteredAfter() {
            Job job = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn on 40 ±9");
            Situation none = job.fold().situation();
            Situation one = job.enter("here 34 ±0").fold().situation();
            Situation two = job.enter("turn on 40 ±9", "here 30 ±0").fold().situation();
            assertThat(since(none, two)).containsExactly(4, 6);
            assertThat(since(one, two)).containsExactly(6);
            assertThat(since(two, two)).isEmpty();
        }

        @Test
        void areThoseThatComeOfTakingAnEntryBack() {
            Situation struck = after("void 4 because it was another blade");
            assertThat(since(after(), struck)).as("found anew, over both moves").containsExactly(6);
            assertThat(since(struck, after())).containsExactly(4, 6);
            assertThat(since(after(), after("void 6 because it was another blade")))
                    .isEmpty();
        }
    }

    @Nested
    class AfterASlip {

        private final Job job = new Job(new Engines()
                .rotor("c1", 36)
                .rotor("c2", 20)
                .view("v", "c1", 0, 2)
                .view("w", "c2", 50, 3)
                .pad("pad", Ratio.ONE, 1, 0, 0)
                .built());

        @Test
        void nothingNewIsSureUntilABladeIsIdentified() {
            job.enter("view v", "datum c1 1", "slip", "turn on 20");
            assertThat(job.airfoils("c1", State.SEEN)).isEmpty();
            assertThat(job.airfoils("c1", State.MAYBE)).hasSize(36);
        }

        /** Nobody knows what the dial shows since, so it is no reading but a way to turn. */
        @Test
        void aMoveToAReadingIsCountedLikeAnyOther() {
            Job exact = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "slip", "here 1", "turn to 30");
            assertThat(exact.airfoils("c1", State.SEEN)).containsExactly(1, 34, 35, 36);
            assertThat(exact.airfoils("c1", State.MAYBE)).isEmpty();
        }

        @Test
        void anIdentificationAlsoAnchorsWhatWasWatchedSince() {
            job.enter("view v", "datum c1 1", "slip", "turn on 20", "here 10");
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(10, 11, 12);
            assertThat(job.airfoils("c1", State.MAYBE)).isEmpty();
            assertThat(job.coverage().lostCount()).isFalse();
        }

        @Test
        void aKnownRowTellsWhereTheOtherRowsOfTheShaftAre() {
            job.enter("view v", "datum c1 1", "view w", "datum c2 5", "slip", "view v", "here 19 ±0", "view w", "look");
            assertThat(job.airfoils("c2", State.SEEN)).containsExactly(15);
        }

        @Test
        void aDatumWithAReadingKeepsTheOtherRowsToo() {
            job.enter(
                    "view v",
                    "datum c1 1",
                    "view w",
                    "datum c2 5",
                    "slip",
                    "view v",
                    "datum c1 19 at 0",
                    "view w",
                    "look");
            assertThat(job.airfoils("c2", State.SEEN)).containsExactly(15);
        }

        @Test
        void aPauseBreaksTheCountUnlessTheRotorWasHeld() {
            job.enter("view v", "datum c1 1", "pause", "look");
            assertThat(job.airfoils("c1", State.SEEN)).isEmpty();
            Job held = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "pause held", "look");
            assertThat(held.airfoils("c1", State.SEEN)).containsExactly(1);
        }
    }

    @Nested
    class ReadingTheShaft {

        @Test
        void anAbsoluteReadingStartsAfreshWhateverWentBefore() {
            Job job = new Job(new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 0, 2)
                    .pad("pad", Ratio.ONE, 1.9, 0, 0)
                    .built());
            job.enter("view v", "datum c1 1 at 0");
            Collections.nCopies(9, "skip on 38").forEach(job::enter);
            job.enter("skip to 340", "look");
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(3);
            assertThat(job.airfoils("c1", State.MAYBE)).isEmpty();
        }

        @Test
        void aDatumSetsItAnewWhateverWasCorrectedBefore() {
            for (Job job : List.of(
                    nineTurns(0).enter("here 3", "datum c1 3 at 50"),
                    new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "slip", "here 10", "datum c1 10 at 50"))) {
                assertThat(reading(job)).isEqualTo(50);
                assertThat(reading(job.enter("turn to 90"))).isEqualTo(90);
                assertThat(reading(job.enter("slip"))).isEqualTo(90);
            }
        }

        private double reading(Job job) {
            return job.fold()
                    .situation()
                    .reading(job.coverage().row("c1").row())
                    .degrees();
        }

        @Test
        void theReadingFollowsWhatAnIdentificationFound() {
            Job job = nineTurns(0).enter("here 3");
            assertThat(reading(job)).isEqualTo(340);
        }
    }
}
