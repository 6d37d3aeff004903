package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.spi.EngineModel;
import everyblade.spi.Ratio;
import everyblade.spi.ScopeTip;
import everyblade.spi.View;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class JudgingTest {

    private static Refusal refusal(Job job, String line) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> job.tryEnter(line));
        assertThat(refusal).as(line).isNotNull();
        return refusal;
    }

    @Nested
    class TheMetalIsHot {

        /** A scope tip that bears 66 °C, one that bears 90 °C, and one for which nothing is stated. */
        private Job job() {
            EngineModel cool = new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 0, 2)
                    .view("free", "c1", 0, 2)
                    .built()
                    .model();
            List<ScopeTip> tips = List.of(tip("soft", OptionalDouble.of(66)), tip("hard", OptionalDouble.of(90)));
            View v = cool.views().get(0);
            View withTip =
                    new View("v", v.port(), v.row(), Optional.of("soft"), 0, 0, v.window(), v.stations(), v.travels());
            return new Job(Engine.of(new EngineModel(
                    cool.id(),
                    cool.name(),
                    cool.notice(),
                    cool.spools(),
                    cool.walls(),
                    cool.rows(),
                    tips,
                    cool.ports(),
                    List.of(withTip, cool.views().get(1)))));
        }

        private static ScopeTip tip(String id, OptionalDouble hottest) {
            return new ScopeTip(id, 60, 0, 4, 60, 640, 3.9, hottest);
        }

        @Test
        void noViewStartsWithoutAReading() {
            assertThat(English.say(refusal(job(), "view v")))
                    .contains("no metal temperature", "66 °C", "heat NUMBER C");
        }

        @Test
        void noViewStartsWithAReadingThatIsTooHigh() {
            Job job = job().enter("heat 66.1 C");
            assertThat(English.say(refusal(job, "view v"))).contains("66.1 °C", "66 °C at most", "let it cool");
        }

        @Test
        void onlyANewReadingClearsIt() {
            Job job = job().enter("heat 70 C");
            refusal(job, "view v");
            job.enter("heat 66 C", "view v", "heat 80 C");
            refusal(job, "view v");
        }

        /** One engine maker's manual: 66 °C (150 °F). */
        @Test
        void fahrenheitIsUnderstood() {
            job().enter("heat 150 F", "view v");
            refusal(job().enter("heat 151 F"), "view v");
        }

        @Test
        void theScopeTipInUseDecides() {
            Job job = job().enter("heat 80 C", "view v with hard");
            refusal(job, "view v with soft");
        }

        @Test
        void aReadingTooHighForTheScopeTipThatIsInCallsItOut() {
            Job job = job().enter("heat 60 C", "view v", "heat 66 C", "heat 150 F");
            assertThat(job.warnings()).isEmpty();
            job.enter("heat 66.1 C");
            assertThat(job.warnings())
                    .containsExactly("the metal is hotter than the scope tip bears (66 °C): take it out");
            assertThat(job.enter("heat 151 F").warnings()).hasSize(2);
        }

        @Test
        void aHighReadingWithNoScopeTipInOrOneThatBearsItGoesWithoutAWord() {
            assertThat(job().enter("heat 80 C").warnings()).isEmpty();
            assertThat(job().enter("heat 60 C", "view v with hard", "heat 80 C").warnings())
                    .isEmpty();
            assertThat(job().enter("view free", "heat 400 C").warnings()).isEmpty();
        }

        @Test
        void aScopeTipWithoutALimitNeedsNoReading() {
            job().enter("view free");
        }
    }

    @Nested
    class WithoutAView {

        private final Job job = new Job(Engines.of(36, 2));

        @Test
        void nothingIsWatchedOrCounted() {
            for (String line : List.of("turn 10", "look", "watch all", "here 1", "datum c1 1", "round 1", "draw 10")) {
                assertThat(English.say(refusal(job, line))).contains("no view is in use", "view v");
            }
        }

        @Test
        void theShaftMayBeTurnedUnwatched() {
            job.enter("skip 10", "view v", "datum c1 1", "look");
            assertThat(job.warnings()).isEmpty();
        }

        @Test
        void aNameThatIsNotThereIsAnsweredWithThoseThatAre() {
            assertThat(English.say(refusal(job, "view w"))).contains("no view w", "there are v");
            assertThat(English.say(refusal(job.enter("view v"), "datum c2 1"))).contains("no row c2", "there are c1");
            assertThat(English.say(refusal(job, "here 37"))).contains("blades 1 to 36", "no 37");
        }
    }

    /** 28 blades at ± 2° a move: 2° √n passes half a pitch of 6.43° with the 11th move. */
    @Test
    void doubtfulNumbersAreForetold() {
        Job job = new Job(new Engines()
                .rotor("c1", 28)
                .view("v", "c1", 0, 2)
                .pad("pad", Ratio.ONE, 2, 0, 0)
                .built());
        job.enter("view v", "datum c1 1");
        Collections.nCopies(6, "turn on 10").forEach(job::enter);
        assertThat(job.warnings()).isEmpty();
        job.enter("turn on 10");
        assertThat(job.warnings()).singleElement().asString().contains("after 4 more moves", "find a landmark");
        Collections.nCopies(4, "turn on 10").forEach(job::enter);
        assertThat(job.warnings()).last().asString().contains("doubtful now", "say here N");
    }

    @Nested
    class Voiding {

        @Test
        void saysWhatWasStruckSinceANumberIsSoonMistakenForItsNeighbour() {
            job.enter("note one", "note two", "void 4 because mistyped");

            assertThat(English.say(job.fold().warnings()))
                    .containsExactly("what no longer counts is entry 4, note one");
        }

        private final Job job = new Job(Engines.of(36, 2)).enter("view v", "datum c1 1", "turn 40");

        @Test
        void isRefusedWhereALaterEntryNeedsTheOneStruckAndNamesIt() {
            assertThat(English.say(refusal(job, "void 1 because mistyped")))
                    .contains("without entry 1, entry 2 (datum c1 1) could not be", "void that one first");
            assertThat(job.fold().isVoid(1)).isFalse();
            assertThat(job.fold().entries()).hasSize(3);
        }

        @Test
        void canItselfBeVoided() {
            job.enter("void 3 because mistyped");
            assertThat(job.airfoils("c1", State.SEEN)).isEmpty();
            job.enter("void 4 because it was right");
            assertThat(job.fold().isVoid(3)).isFalse();
            assertThat(job.airfoils("c1", State.SEEN)).containsExactly(1, 33, 34, 35, 36);
        }

        @Test
        void strikesOnlyWhatIsThereAndOnlyOnce() {
            assertThat(English.say(refusal(job, "void 4 because mistyped"))).contains("entries 1 to 3 can be voided");
            job.enter("void 3 because mistyped");
            assertThat(English.say(refusal(job, "void 3 because mistyped"))).contains("void already");
        }
    }
}
