package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.entry.Refusal;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CoverageTest {

    /** 36 blades, one every 10°. */
    private static Job blades36(double halfWidth) {
        return new Job(Engines.of(36, halfWidth)).enter("view v", "datum c1 1");
    }

    private static List<Integer> seen(Job job) {
        return job.airfoils("c1", State.SEEN);
    }

    @Nested
    class InSight {

        @Test
        void whileTheClockIsWithinHalfWidthOfTheReferenceEndsIncluded() {
            assertThat(seen(blades36(10).enter("look"))).containsExactly(1, 2, 36);
            assertThat(seen(blades36(9.99999).enter("look"))).containsExactly(1);
        }

        @Test
        void atEveryPositionFromStartToEndEndsIncluded() {
            assertThat(seen(blades36(0).enter("turn 10"))).containsExactly(1, 36);
            assertThat(seen(blades36(0).enter("turn 9.99999"))).containsExactly(1);
            assertThat(seen(blades36(0).enter("turn -20"))).containsExactly(1, 2, 3);
        }

        @Test
        void overTheSeamAndMoreThanOnceRound() {
            assertThat(seen(blades36(2).enter("skip 355", "turn 10"))).containsExactly(1);
            assertThat(seen(blades36(2).enter("turn 725"))).hasSize(36);
        }

        @Test
        void theOtherWayRoundWhereNumbersRiseCounterClockwise() {
            Job job = new Job(new Engines()
                    .row("c1", RowKind.ROTOR, 36, Direction.CCW, 1, List.of(), false, 0)
                    .view("v", "c1", 0, 2)
                    .built());
            assertThat(seen(job.enter("view v", "datum c1 1", "turn 20"))).containsExactly(1, 2, 3);
        }

        @Test
        void throughAnotherViewWhatStandsAtItsReference() {
            Job job = new Job(new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 118, 2)
                    .view("w", "c1", 298, 2)
                    .built());
            assertThat(seen(job.enter("view v", "datum c1 1", "view w", "look")))
                    .containsExactly(19);
        }
    }

    @Nested
    class Watched {

        @Test
        void skippingAndIdentifyingGiveNothing() {
            assertThat(seen(blades36(2).enter("skip 360", "here 1", "slip", "here 7")))
                    .isEmpty();
        }

        @Test
        void aSecondRowsDatumLeavesTheShaftAsItReads() {
            Job job = new Job(new Engines()
                    .rotor("c1", 36)
                    .rotor("c2", 20)
                    .view("v", "c1", 0, 2)
                    .view("w", "c2", 50, 2)
                    .built());
            job.enter("view v", "datum c1 1 at 30", "view w", "datum c2 5", "turn to 12");
            assertThat(job.airfoils("c2", State.SEEN)).containsExactly(5, 6);
        }
    }

    @Nested
    class ByZones {

        private Job job() {
            return new Job(new Engines()
                            .row(
                                    "c1",
                                    RowKind.ROTOR,
                                    36,
                                    Direction.CW,
                                    2,
                                    List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                                    true,
                                    0)
                            .view("v", "c1", 0, 2)
                            .view("roots", "c1", 0, 2, "root")
                            .built())
                    .enter("view v", "datum c1 1");
        }

        private List<String> seenOfBlade1(Job job) {
            RowCoverage row = job.coverage().row("c1");
            return IntStream.range(0, row.zoning().size())
                    .filter(zone -> row.state(1, zone) == State.SEEN)
                    .mapToObj(row.zoning().names()::get)
                    .toList();
        }

        @Test
        void onlyWhatIsBeingWatchedCounts() {
            assertThat(seenOfBlade1(job().enter("watch root", "look")))
                    .hasSize(6)
                    .allMatch(zone -> zone.startsWith("root/"));
        }

        @Test
        void partsOfDifferentKindsIntersectAndOfOneKindUnite() {
            assertThat(seenOfBlade1(job().enter("watch tip pressure leading trailing", "look")))
                    .containsExactly("tip/pressure/leading", "tip/pressure/trailing");
        }

        @Test
        void whatWasWatchedOneAfterTheOtherAddsUp() {
            assertThat(seenOfBlade1(job().enter("watch root", "look", "watch tip", "look")))
                    .hasSize(12);
        }

        @Test
        void aNewViewWatchesAllAgain() {
            assertThat(seenOfBlade1(job().enter("watch root", "view v", "look")))
                    .hasSize(12);
        }

        @Test
        void aViewGivesOnlyWhatItShows() {
            assertThat(seenOfBlade1(job().enter("view roots", "watch pressure", "look")))
                    .containsExactly("root/pressure/leading", "root/pressure/middle", "root/pressure/trailing");
        }
    }

    /** 24 vanes, one every 15°; the scope tip goes round. */
    @Nested
    class RowsThatStandStill {

        private Job job() {
            return new Job(new Engines()
                            .rotor("c1", 36)
                            .stator("s1", 24)
                            .view("v", "s1", 0, 2)
                            .built())
                    .enter("view v", "datum s1 1");
        }

        private List<Integer> vanes(Job job) {
            return job.airfoils("s1", State.SEEN);
        }

        @Test
        void areSeenWhereTheScopeTipIsDrawn() {
            assertThat(vanes(job().enter("draw 45"))).containsExactly(1, 2, 3, 4);
            assertThat(vanes(job().enter("draw -1 blades"))).containsExactly(1, 24);
            assertThat(vanes(job().enter("draw on 30"))).containsExactly(1, 2, 3);
            assertThat(vanes(job().enter("draw back 30"))).containsExactly(1, 23, 24);
        }

        @Test
        void areReachedByTheClockOfTheScopeTipTheShorterWay() {
            assertThat(vanes(job().enter("draw to 330"))).containsExactly(1, 23, 24);
            assertThat(vanes(job().enter("feed to 90", "draw on to 120"))).containsExactly(7, 8, 9);
        }

        @Test
        void areNotTurnedButAShaftMayBeWhereItsPadIsNamed() {
            Job job = job();
            assertThatThrownBy(() -> job.tryEnter("turn 10"))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .contains("stands still", "name its pad first");
            assertThatThrownBy(() -> job.tryEnter("round 1")).isInstanceOf(Refusal.class);
            job.enter("pad pad", "turn 10");
            assertThat(vanes(job)).containsExactly(1);
        }

        @Test
        void rotorsAreNotDrawnRound() {
            Job rotor = blades36(2);
            for (String line : List.of("draw 10", "feed to 10")) {
                assertThatThrownBy(() -> rotor.tryEnter(line))
                        .isInstanceOf(Refusal.class)
                        .extracting(English::why)
                        .asString()
                        .contains("say turn or skip");
            }
        }
    }

    /** After 38° good to ± 3° surely 35° were turned, at most 41°. */
    @Nested
    class InSpiteOfPlay {

        private Job job() {
            return new Job(new Engines()
                            .rotor("c1", 36)
                            .view("v", "c1", 0, 2)
                            .pad("pad", Ratio.ONE, 3, 0, 0)
                            .built())
                    .enter("view v", "datum c1 1", "turn on 38");
        }

        @Test
        void onlyWhatWasPassedForSureIsSeen() {
            assertThat(seen(job())).containsExactly(1, 34, 35, 36);
            assertThat(job().airfoils("c1", State.MAYBE)).containsExactly(33);
            assertThat(job().coverage().row("c1").why(33, 0)).contains(Why.PLAY);
        }

        @Test
        void watchingOnMakesItSure() {
            assertThat(seen(job().enter("turn on 10"))).contains(33, 34, 35, 36, 1);
        }

        /** With nothing unwatched between, nothing between the stops can have been missed. */
        @Test
        void movesThatFollowEachOtherLeaveNoSeam() {
            Job job = job().enter("turn on 38", "turn on 38", "turn on 38");
            // 152° less 2 · 3°, reaching 2° further: 34 − 11 … down to the blade at 360° − 146° − 2°.
            assertThat(seen(job))
                    .containsExactlyElementsOf(IntStream.rangeClosed(1, 36)
                            .filter(n -> n == 1 || n >= 23)
                            .boxed()
                            .toList());
        }
    }

    @Nested
    class Counted {

        @Test
        void statesAddUpToAllCells() {
            Job job = new Job(new Engines()
                            .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                            .view("roots", "c1", 0, 2, "root")
                            .pad("pad", Ratio.ONE, 3, 0, 0)
                            .built())
                    .enter("view roots", "datum c1 1", "turn on 38", "saw root 10-12 photo a.jpg", "nick 14 root");
            Tally tally = job.coverage()
                    .row("c1")
                    .tally(job.coverage().row("c1").zoning().all());
            assertThat(tally).isEqualTo(new Tally(4, 0, 1, 67, 36, 0, 0, 3, 1, 0));
            assertThat(tally.cells()).isEqualTo(72);
            assertThat(tally.seenShare()).isCloseTo(4 / 72.0, within(1e-15));
            assertThat(job.coverage().tally()).isEqualTo(tally);
        }

        /** A blade crosses ± 2° in 4/360 of the time. */
        @Test
        void tooFastIsNotSeenWhereALeastTimeIsAsked() {
            assertThat(seen(blades36(2).leastView(0.5).enter("turn 360 in 46s")))
                    .hasSize(36);
            Job hasty = blades36(2).leastView(0.5).enter("turn 360 in 44s");
            assertThat(hasty.coverage().row("c1").why(10, 0)).contains(Why.FAST);
            assertThat(hasty.coverage().tally().fast()).isGreaterThanOrEqualTo(35);
        }

        @Test
        void withoutOneSpeedIsNotJudged() {
            assertThat(seen(blades36(2).enter("turn 360 in 1s"))).hasSize(36);
        }
    }
}
