package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.State;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What a lost count leaves sure: only what hangs on an identification by steps that the loss cannot lie in. */
class LostCountTest {

    /** Two rows of 60 blades on one shaft, 6° a blade, seen within ± 2°; nothing has an error unless it is said. */
    private final Job job = new Job(new Engines()
            .rotor("r", 60)
            .rotor("q", 60)
            .view("v", "r", 0, 2)
            .view("u", "q", 0, 2)
            .built());

    private static List<Integer> run(int... ends) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < ends.length; i += 2) {
            IntStream.rangeClosed(ends[i], ends[i + 1]).forEach(all::add);
        }
        return all;
    }

    private static double reading(Job of, String row) {
        Situation now = of.fold().situation();
        return now.reading(now.engine().rows().get(row)).degrees();
    }

    @Nested
    class WithTwoRowsOnAShaft {

        private Job lost() {
            return job.enter(
                    "view v", "datum r 1", "turn 60 ±0", "view u", "datum q 1", "turn 60 ±0", "view v", "here 43");
        }

        @Test
        void theFirstDatumOfAnotherRowChecksNothing() {
            assertThat(lost().airfoils("r", State.SEEN)).containsExactly(1);
            assertThat(job.airfoils("q", State.SEEN)).containsExactly(1);
            assertThat(job.warnings()).singleElement().asString().contains("about 2 blades", "between entries 2 and 8");
        }

        @Test
        void aSecondIdentificationOfThatRowClearsItsOwnStretch() {
            lost().enter("view u", "here 51");
            assertThat(job.airfoils("q", State.SEEN)).isEqualTo(run(1, 1, 51, 60));
            assertThat(job.airfoils("r", State.SEEN))
                    .as("where its own stretch began and ended")
                    .containsExactly(1, 53);
        }

        @Test
        void itDoesSoAFewMovesLaterToo() {
            lost().enter("view u", "turn 30 ±0", "here 46");
            assertThat(job.airfoils("q", State.SEEN)).isEqualTo(run(1, 1, 46, 60));
            assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 53);
        }

        @Test
        void whatHungOnTheDoubtedStretchIsDoubtfulUntilItIsIdentified() {
            lost().enter("view u", "turn 30 ±0");
            assertThat(job.airfoils("q", State.SEEN)).containsExactly(1);
            assertThat(job.enter("view v", "look").airfoils("r", State.SEEN)).containsExactly(1, 38);
        }

        /** Where q stood is known from one side only, and 12° were lost on the way to the other, or not. */
        @Test
        void aRowKnownFromOneSideOnlyStandsAtOneOfTwoPlaces() {
            lost();
            assertThat(elsewhere("q", 2)).isCloseTo(-12, within(1e-6));
            assertThat(elsewhere("q", 0)).isCloseTo(12, within(1e-6));
            job.enter("turn 60 ±0", "here 30");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(elsewhere("q", 2)).as("after another loss").isCloseTo(-12, within(1e-6));
        }

        private double elsewhere(String row, int stop) {
            Situation now = job.fold().situation();
            SmoothedTrack.Stand stand =
                    now.placing(now.engine().rows().get(row)).at(row, 0, stop);
            assertThat(stand.sure()).isFalse();
            return stand.otherwise()
                    .orElseThrow()
                    .best()
                    .minus(stand.place().orElseThrow().best())
                    .degrees();
        }

        /** Counted 60°, seen 54°: told from the last look at that row, with nothing but moves in doubt between. */
        @Test
        void aRowThatWasSeenInTheDoubtedStretchTellsOfALossOfItsOwn() {
            lost().enter("view u", "here 52 ±0");
            assertThat(job.fold().situation().countErrors())
                    .last()
                    .satisfies(error -> assertThat(error.degrees()).isCloseTo(6, within(1e-6)));
        }

        /** The rows were tied to each other before, so one tells where the other stands, and whether it was lost. */
        @Test
        void aRowTiedToItBeforeClearsAStretch() {
            job.enter("view v", "datum r 1", "view u", "datum q 1", "view v", "turn 60 ±0", "view u", "here 51");
            job.enter("view v", "turn 60 ±0", "here 43");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 43, 43, 51, 60));
        }

        /** Over the slip the rows are tied by where both stood before it, and the first move after it is cleared so. */
        @Test
        void aRowTiedToItBeforeASlipClearsAStretchAfterIt() {
            job.enter(
                    "view v", "datum r 1", "view u", "datum q 1", "slip", "here 1", "turn 60 ±0", "view v", "here 51");
            job.enter("turn 60 ±0", "view u", "here 43");
            assertThat(job.coverage().lostCount()).isTrue();
            assertThat(job.airfoils("q", State.SEEN)).isEqualTo(run(1, 1, 51, 60));
        }

        @Test
        void aRowTiedToItBeforeGoesOnBeyondTheLoss() {
            job.enter(
                    "view v",
                    "datum r 1",
                    "view u",
                    "datum q 1",
                    "view v",
                    "turn 60 ±0",
                    "here 53",
                    "view u",
                    "turn 60 ±0");
            assertThat(job.airfoils("q", State.SEEN)).isEqualTo(run(43, 53));
            assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 53);
        }
    }

    @Nested
    class BetweenReadings {

        private Job lost() {
            return job.enter("view v", "datum r 1 at 0", "turn to 60 ±0", "turn to 120 ±0", "here 43");
        }

        @Test
        void noReadingChecksWhereTheRotorStands() {
            assertThat(lost().airfoils("r", State.SEEN)).containsExactly(1, 43);
        }

        @Test
        void theDialGoesOnFromWhatItReadsWhenTheLossIsFound() {
            assertThat(reading(lost(), "r")).isCloseTo(120, within(1e-9));
            job.enter("turn to 180 ±0");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 33, 43));
        }

        /** The dial was set when the loss was found, so no reading after that can have made good what was lost before. */
        @Test
        void aReadingThatAgreesLaterLeavesWhatWasSeenSinceTheLossAsItWas() {
            job.enter("view v", "datum r 1 at 0", "turn 60 ±0", "here 53", "turn 30 ±0", "here 48", "turn 12 ±0");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 46, 53));
            job.enter("turn to 114 ±0", "here 44");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 44, 53));
        }

        @Test
        void rowsThatWereTiedGoOnTogetherWhereTheDialIsSetAnew() {
            job.enter("view v", "datum r 1 at 0", "view u", "datum q 1", "view v", "turn to 60 ±0", "turn to 120 ±0");
            job.enter("here 43", "view u", "look");
            assertThat(job.airfoils("q", State.SEEN)).containsExactly(43);
            job.enter("view v", "skip 30 ±0", "here 38", "view u", "look");
            assertThat(job.airfoils("q", State.SEEN)).containsExactly(38, 43);
        }

        /** What q has cleared before is not suspected along with the reading that was off. */
        @Test
        void aMoveThatAnotherRowHasClearedStaysClear() {
            job.enter("view v", "datum r 1 at 0", "view u", "datum q 1", "view v", "turn 60 ±0", "view u", "here 51");
            job.enter("view v", "turn to 120 ±0", "here 43");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 43, 43, 51, 60));
            assertThat(job.fold().situation().countErrors())
                    .last()
                    .satisfies(error -> assertThat(error.since()).isEqualTo(8));
        }

        /** Counted moves and the reading after them may have made each other good, so only both together are clear. */
        @Test
        void aReadingThatAgreesDoesNotClearTheMovesBeforeIt() {
            job.enter(
                    "view v",
                    "datum r 1 at 0",
                    "turn 60 ±0",
                    "view u",
                    "datum q 1",
                    "view v",
                    "turn to 120 ±0",
                    "here 41");
            assertThat(job.airfoils("r", State.SEEN)).isEqualTo(run(1, 1, 41, 60));
            job.enter("view u", "turn to 180 ±0", "here 43");
            assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 41);
        }
    }

    /**
     * Row q says that nothing was lost before it was seen, or that the moves made each other good; row r that 12° were. Both
     * are so only if the rotor was turned between the two.
     */
    @Test
    void whatTwoRowsSayAtOnePlaceIsNotMixed() {
        job.enter("view v", "datum r 1", "view u", "datum q 1", "view v", "turn 60 ±0", "turn to 120 ±0");
        job.enter("view u", "here 41", "view v", "here 39");
        assertThat(job.fold().situation().countErrors())
                .extracting(CountError::lost)
                .containsExactly(false, true);
        assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 41);
        job.enter("look", "view u", "look");
        assertThat(job.airfoils("r", State.SEEN)).containsExactly(1, 39, 41);
        assertThat(job.airfoils("q", State.SEEN)).containsExactly(39);
    }

    @Nested
    class IsCountedSince {

        private CountError last() {
            List<CountError> all = job.fold().situation().countErrors();
            return all.get(all.size() - 1);
        }

        @Test
        void theLastIdentificationWhereItsWayBeganThoughThatWayIsCleared() {
            job.enter("view v", "datum r 1", "view u", "datum q 1", "turn 60 ±0", "here 51", "view v", "here 51");
            assertThat(last().since()).isEqualTo(4);
            assertThat(last().outside()).isFalse();
        }

        /** Row r clears the move to 60°, but not the counted move and the reading after it. */
        @Test
        void theMoveThatLedToWhereWhatIsClearedEnds() {
            job.enter("view v", "datum r 1 at 0", "view u", "datum q 1", "view v");
            job.enter("turn to 60 ±0", "turn 60 ±0", "turn to 180 ±0", "here 31", "view u", "here 33");
            assertThat(last().lost()).isTrue();
            assertThat(last().since()).isEqualTo(6);
        }

        /** The move to there was 12° more than was said, and nothing was turned after it. */
        @Test
        void itselfWhereNoMoveCanHoldTheLoss() {
            job.enter("view v", "datum r 1", "turn 60 ±0", "here 51", "here 53");
            assertThat(last().unlogged()).isTrue();
            assertThat(last().since()).isEqualTo(4);
        }
    }

    /** Looking for the landmark at another view, everyone turns and says nothing of it. */
    @Nested
    class TurnedUnlogged {

        private final Job seam = new Job(new Engines()
                .row("t", RowKind.ROTOR, 60, Direction.CW, 2, List.of(), false, 0)
                .view("ex-t", "t", 0, 2)
                .view("ig-t", "t", 120, 2)
                .built());

        @Test
        void nothingIsLoweredThatAnIdentificationHasClosed() {
            seam.enter("view ex-t", "datum t 1", "watch tip", "turn on 360", "here 1", "view ig-t", "datum t 1");
            assertThat(IntStream.rangeClosed(1, 60))
                    .allSatisfy(n ->
                            assertThat(seam.coverage().row("t").state(n, 1)).isEqualTo(State.SEEN));
            assertThat(seam.coverage().lostCount()).isTrue();
            assertThat(seam.warnings())
                    .singleElement()
                    .asString()
                    .contains("turned unlogged", "stays as it is", "say skip on 120.0 first");
        }

        @Test
        void theOfferedEntryTurnsOnTheWayThatEngineTurns() {
            Job back = new Job(new Engines()
                            .rotor("t", 60)
                            .view("ex-t", "t", 0, 2)
                            .view("ig-t", "t", 240, 2)
                            .built())
                    .enter("view ex-t", "datum t 1", "view ig-t", "datum t 1");
            assertThat(back.warnings()).singleElement().asString().contains("say skip on 240.0 first");
        }

        @Test
        void theOfferedEntrySaysIt() {
            seam.enter(
                    "view ex-t",
                    "datum t 1",
                    "watch tip",
                    "turn on 360",
                    "here 1",
                    "view ig-t",
                    "skip on 120",
                    "datum t 1");
            assertThat(seam.coverage().lostCount()).isFalse();
        }

        @Test
        void theOtherRowsOfTheShaftGoAlong() {
            job.enter("view v", "datum r 1", "view u", "datum q 1", "view v", "here 11", "view u", "look");
            assertThat(job.airfoils("q", State.SEEN)).containsExactly(11);
        }
    }

    @Nested
    class SeenFromAScopeTipThatWasDrawnRound {

        private final Job drawn = new Job(new Engines()
                .rotor("r", 60)
                .stator("w", 40)
                .stator("s1", 40)
                .view("a", "w", 0, 2)
                .view("v", "r", 90, 2)
                .view("c", "s1", 90, 2)
                .built());

        @Test
        void anotherRowStandsWhereTheScopeTipLooksNow() {
            drawn.enter("view a", "datum w 1", "draw 90", "datum r 10", "view v", "look");
            assertThat(drawn.airfoils("r", State.SEEN)).containsExactly(10);
        }

        @Test
        void anotherStaticRowDoesTooAndNoCountIsLost() {
            drawn.enter("view a", "datum w 1", "draw 90", "datum s1 1", "view c", "datum s1 1", "look");
            assertThat(drawn.airfoils("s1", State.SEEN)).containsExactly(1);
            assertThat(drawn.coverage().lostCount()).isFalse();
        }

        /** Vane 5 of w at 90° puts vane 35 at the top, wherever the scope tip was drawn before. */
        @Test
        void aStaticRowStandsWhereItWasSeenFromAViewOfTheRotor() {
            drawn.enter("view a", "draw 45", "view v", "datum w 5", "view a", "look");
            assertThat(drawn.airfoils("w", State.SEEN)).containsExactly(35);
        }

        @Test
        void itIsAsGoodAsTheDrawAndTheSightTogether() {
            drawn.enter("view a", "datum w 1", "draw 90 ±3", "datum r 10 ±4");
            Situation now = drawn.fold().situation();
            Row row = now.engine().rows().get("r");
            SmoothedTrack.Place place =
                    now.placing(row).at("r", 0, now.stop(row)).place().orElseThrow();
            assertThat(place.high().minus(place.best()).degrees()).isCloseTo(5, within(1e-6));
        }
    }

    /** What a later datum of another row tells is that row's place, and nothing of those known before. */
    @Test
    void aFirstDatumOfAnotherRowMovesNoErrorOfWhatWasKnown() {
        job.enter("view v", "datum r 1 ±1", "turn 30 ±1", "turn 30 ±1", "turn 30 ±1");
        List<SmoothedTrack.Stand> before = stands();
        job.enter("view u", "datum q 1 ±1");
        assertThat(stands()).isEqualTo(before);
        job.enter("turn 30 ±1", "view v", "here 41 ±1");
        double closed = width(1);
        assertThat(closed)
                .isLessThan(before.get(1)
                        .place()
                        .orElseThrow()
                        .high()
                        .minus(before.get(1).place().orElseThrow().low())
                        .degrees());
    }

    private List<SmoothedTrack.Stand> stands() {
        Situation now = job.fold().situation();
        Row row = now.engine().rows().get("r");
        return IntStream.rangeClosed(0, 3)
                .mapToObj(stop -> now.placing(row).at("r", 0, stop))
                .toList();
    }

    private double width(int stop) {
        SmoothedTrack.Place place = stands().get(stop).place().orElseThrow();
        return place.high().minus(place.low()).degrees();
    }
}
