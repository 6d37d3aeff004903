package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SmoothedTrackTest {

    private static Track identified(Track track, double origin, double plusMinus) {
        return track.identified(
                new Sighting(1, track.here(), "c1", Turn.ofDegrees(origin).wrapped(), 1, plusMinus, 0, 40));
    }

    private static Track moved(Track track, double degrees, double plusMinus) {
        return track.moved(1, Turn.ofDegrees(degrees), Uncertainty.of(plusMinus));
    }

    /** Four moves of 90° ± 1° that end, as is seen, 4° short of a turn; then 10° ± 2° more. */
    private static Track shortOfATurn() {
        Track track = identified(Track.start("shaft").labelled(1, Turn.ofDegrees(300)), 0, 0);
        for (int i = 0; i < 4; i++) {
            track = moved(track, 90, 1);
        }
        return moved(identified(track, 356, 0), 10, 2);
    }

    private static List<Double> readings(SmoothedTrack placing, java.util.function.IntFunction<Turn> reading) {
        return IntStream.rangeClosed(0, 5)
                .mapToObj(stop -> Math.rint(reading.apply(stop).degrees() * 1e6) / 1e6)
                .toList();
    }

    @Nested
    class AReadingOfTheShaft {

        @Test
        void asCountedKnowsNothingOfWhatWasSeenLater() {
            SmoothedTrack placing = SmoothedTrack.of(shortOfATurn());
            assertThat(readings(placing, placing::counted)).containsExactly(300.0, 30.0, 120.0, 210.0, 300.0, 310.0);
        }

        @Test
        void adjustedHasTheMisclosureSharedOutAndStandsAfterTheLastIdentification() {
            SmoothedTrack placing = SmoothedTrack.of(shortOfATurn());
            assertThat(readings(placing, placing::adjusted)).containsExactly(300.0, 29.0, 118.0, 207.0, 296.0, 306.0);
        }

        @Test
        void isThatOfTheSettingInForceThen() {
            Track track = shortOfATurn().labelled(7, Turn.ofDegrees(50));
            for (int i = 0; i < 3; i++) {
                track = moved(track, 20, 1).labelled(8 + i, Turn.ofDegrees(100 * i));
            }
            SmoothedTrack placing = SmoothedTrack.of(moved(track, 5, 1));
            assertThat(IntStream.of(4, 5, 6, 7, 8, 9)
                            .mapToObj(stop -> Math.rint(placing.adjusted(stop).degrees() * 1e6) / 1e6))
                    .containsExactly(296.0, 50.0, 0.0, 100.0, 200.0, 205.0);
        }

        @Test
        void sharesNothingOverASlip() {
            Track track = moved(identified(Track.start("shaft"), 0, 0), 90, 1).slipped(3);
            track = identified(moved(track, 90, 1), 20, 0);
            SmoothedTrack placing = SmoothedTrack.of(track);
            assertThat(placing.adjusted(1).degrees()).isEqualTo(90);
        }
    }

    @Nested
    class ADialThatWasSet {

        private static Track q(Track track, double origin) {
            return track.identified(new Sighting(1, track.here(), "q", Turn.ofDegrees(origin), 1, 0, 0, 40));
        }

        /** Row c1 seen 2° short of 90°; the count is broken there, and row q seen, then again 1° short of 20° on. */
        private static Track brokenAt88() {
            Track track = identified(moved(identified(Track.start("shaft"), 0, 0), 90, 1), 88, 0);
            return q(moved(q(track.slipped(3), 0), 20, 1), 19);
        }

        private static List<Double> adjusted(Track track) {
            SmoothedTrack placing = SmoothedTrack.of(track);
            return IntStream.rangeClosed(0, track.here())
                    .mapToObj(stop -> Math.rint(placing.adjusted(stop).degrees() * 1e6) / 1e6)
                    .toList();
        }

        /** What was counted 2° too far lies half before the setting and half after it. */
        @Test
        void showsWhatItWasSetToHoweverTheWayThereIsToldLater() {
            Track track = moved(identified(Track.start("shaft"), 0, 0), 90, 1).labelled(2, Turn.ofDegrees(300));
            track = identified(moved(track, 90, 1), 178, 0);

            assertThat(adjusted(track)).containsExactly(0.0, 300.0, 29.0);
            SmoothedTrack placing = SmoothedTrack.of(track);
            assertThat(placing.counted(1).degrees()).isEqualTo(300);
            assertThat(placing.counted(2).degrees()).isEqualTo(30);
        }

        /** Row c1 is seen 100° from where it was counted to be, so that nothing ties row q, seen on the way, to what was before. */
        @Test
        void showsItWhereALossFoundLaterPartsItFromWhatItWasSetAfter() {
            Track track = identified(moved(identified(Track.start("shaft"), 0, 0), 90, 1), 88, 0);
            track = q(moved(track, 100, 1), 0).labelled(3, Turn.ofDegrees(50));
            track = identified(moved(track, 20, 1), 308, 0);

            assertThat(track.stops()).extracting(Stop::doubtful).containsExactly(false, false, true, true);
            assertThat(adjusted(track)).containsExactly(0.0, 88.0, 50.0, 70.0);
        }

        @Test
        void goesOnFromWhatItShowedWhereNothingTellsHowFarTheRotorSlipped() {
            assertThat(adjusted(brokenAt88())).containsExactly(0.0, 88.0, 88.0, 107.0);
            assertThat(brokenAt88().readingNow().degrees()).isCloseTo(107, within(1e-6));
        }

        @Test
        void wasTurnedWithTheRotorWhereARowTellsHowFarThatSlipped() {
            Track track = identified(brokenAt88().slipped(4), 200, 0);

            assertThat(adjusted(track)).containsExactly(0.0, 88.0, 88.0, 107.0, 200.0);
            assertThat(track.readingNow().degrees()).isCloseTo(200, within(1e-6));
        }

        /** It showed 29° where row c1 stood at 178°, and that slipped by 22° more. */
        @Test
        void wasTurnedWithASlipFromWhereItIsKnownToHaveBeenByThen() {
            Track track = moved(identified(Track.start("shaft"), 0, 0), 90, 1).labelled(2, Turn.ofDegrees(300));
            track = identified(identified(moved(track, 90, 1), 178, 0).slipped(3), 200, 0);

            assertThat(adjusted(track)).containsExactly(0.0, 300.0, 29.0, 51.0);
            assertThat(track.readingNow().degrees()).isCloseTo(51, within(1e-6));
        }

        /** Two moves that fell short by half of what they may, as far as anybody knows; what is seen after tells no more. */
        @Test
        void isCorrectedByWhatIsKnownOfTheMovesThoughNothingWasSeenWhereItWasSet() {
            Track track = Track.start("shaft");
            track = track.moved(1, Turn.ofDegrees(90), new Uncertainty(0, 2, 0));
            track = identified(track.moved(2, Turn.ofDegrees(90), new Uncertainty(0, 2, 0)), 0, 0);
            assertThat(adjusted(track)).containsExactly(0.0, 89.0, 178.0);

            track = identified(q(track.slipped(3), 0).slipped(4), 12, 0);
            assertThat(adjusted(track)).as("as row c1 tells").containsExactly(0.0, 89.0, 178.0, 178.0, 190.0);
        }

        /** It was set to 50° by row q, of which row c1 tells nothing. */
        @Test
        void goesOnFromWhatItShowedWhereOnlyWhatWasSeenBeforeItWasSetIsSeenAgain() {
            Track track =
                    identified(brokenAt88().labelled(4, Turn.ofDegrees(50)).slipped(5), 200, 0);
            track = identified(moved(track, 20, 1), 219, 0);

            assertThat(adjusted(track)).containsExactly(0.0, 88.0, 88.0, 50.0, 50.0, 69.0);
            assertThat(track.readingNow().degrees()).isCloseTo(69, within(1e-6));
        }
    }

    @Nested
    class TheWayFromOneStopToAnother {

        @Test
        void isGoodToWhatItsMovesAreWhicheverOfThemIsFirst() {
            SmoothedTrack placing = SmoothedTrack.of(shortOfATurn());
            assertThat(placing.apart(0, 4, 1)).hasValueCloseTo(2.0, within(1e-9));
            assertThat(placing.apart(4, 0, 1)).hasValueCloseTo(2.0, within(1e-9));
            assertThat(placing.apart(3, 3, 1)).hasValue(0);
        }

        @Test
        void isWiderInALateRun() {
            SmoothedTrack placing = SmoothedTrack.of(shortOfATurn());
            assertThat(placing.apart(0, 4, 40)).hasValueCloseTo(2 * SmoothedTrack.widening(40), within(1e-9));
        }

        @Test
        void isNotKnownOverASlip() {
            SmoothedTrack placing = SmoothedTrack.of(moved(shortOfATurn().slipped(9), 10, 1));
            assertThat(placing.apart(4, 7, 1)).isEmpty();
            assertThat(placing.apart(6, 7, 1)).hasValueCloseTo(1.0, within(1e-9));
        }
    }

    /** Two moves that may each fall short by up to 2°, closed by exact sightings 180° apart: in the middle ± 1°. */
    @Nested
    class BetweenTwoIdentifications {

        private SmoothedTrack.Place inTheMiddle(double rock) {
            Track track = identified(Track.start("shaft"), 0, 0);
            track = track.moved(1, Turn.ofDegrees(90), new Uncertainty(0, 2, 0));
            track = track.moved(1, Turn.ofDegrees(90), new Uncertainty(0, 2, 0));
            return SmoothedTrack.of(identified(track, 178, 0))
                    .at("c1", rock, 1)
                    .place()
                    .orElseThrow();
        }

        @Test
        void oneSidedErrorsOfTheWayAreSharedFromBothEnds() {
            assertThat(inTheMiddle(0).best().degrees()).isCloseTo(89, within(1e-6));
            assertThat(inTheMiddle(0).low().degrees()).isCloseTo(88, within(1e-6));
            assertThat(inTheMiddle(0).high().degrees()).isCloseTo(90, within(1e-6));
        }

        /**
         * Row q was seen after a move from row r that may have fallen short by 2°, so that seen from r it may lie 2° beyond;
         * half of that is left half-way to where q itself is seen again, and of two moves of ± 1° half of each.
         */
        @Test
        void oneSidedErrorsOfWhereItBeganAreLeftInPart() {
            Track track = identified(Track.start("shaft"), 0, 0);
            track = track.moved(1, Turn.ofDegrees(90), new Uncertainty(0, 2, 0));
            track = track.identified(new Sighting(1, 1, "q", Turn.ZERO, 1, 0, 0, 40));
            track = identified(track.slipped(2), 0, 0);
            track = moved(moved(track, 45, 1), 45, 1);
            track = track.identified(new Sighting(1, 4, "q", Turn.ZERO, 1, 0, 0, 40));
            SmoothedTrack.Place middle =
                    SmoothedTrack.of(track).at("q", 0, 3).place().orElseThrow();
            assertThat(middle.best().minus(middle.low()).degrees()).isCloseTo(Math.sqrt(0.5), within(1e-6));
            assertThat(middle.high().minus(middle.best()).degrees()).isCloseTo(1 + Math.sqrt(0.5), within(1e-6));
        }

        /** Moves of ± 1°, three of them on the one side and one on the other: √(9/16 + 3/16). */
        @Test
        void aRowThatIsSeenFirstOnTheWayTellsNothing() {
            Track track = moved(moved(identified(Track.start("shaft"), 0, 0), 90, 1), 90, 1);
            track = track.identified(new Sighting(1, 2, "q", Turn.ZERO, 1, 0, 0, 40));
            SmoothedTrack placing = SmoothedTrack.of(identified(moved(moved(track, 90, 1), 90, 1), 0, 0));
            for (int stop : new int[] {1, 3}) {
                SmoothedTrack.Place place = placing.at("c1", 0, stop).place().orElseThrow();
                assertThat(place.high().minus(place.best()).degrees()).isCloseTo(Math.sqrt(0.75), within(1e-6));
            }
        }

        /** Row q is tied to row r by a move that may have fallen short, or gone too far, by 2°; r is seen at both ends. */
        private static SmoothedTrack.Place seenByAnotherRow(Uncertainty tie) {
            Track track = identified(Track.start("shaft"), 0, 0).moved(1, Turn.ofDegrees(90), tie);
            track = track.identified(new Sighting(1, 1, "q", Turn.ZERO, 1, 0, 0, 40));
            track = identified(track.slipped(2), 0, 0);
            track = identified(moved(moved(track, 30, 1), 60, Math.sqrt(2)), 90, 0);
            return SmoothedTrack.of(track).at("q", 0, 3).place().orElseThrow();
        }

        /** A third of the way on, of moves of ± 1° and ± 1.4°, so that ± √(4/9 + 2/9) is left of those. */
        @Test
        void oneSidedErrorsThatBothEndsHaveAreLeftWhole() {
            SmoothedTrack.Place shortfall = seenByAnotherRow(new Uncertainty(0, 2, 0));
            assertThat(shortfall.best().minus(shortfall.low()).degrees()).isCloseTo(Math.sqrt(2.0 / 3), within(1e-6));
            assertThat(shortfall.high().minus(shortfall.best()).degrees())
                    .isCloseTo(2 + Math.sqrt(2.0 / 3), within(1e-6));
            SmoothedTrack.Place tooFar = seenByAnotherRow(new Uncertainty(0, 0, 2));
            assertThat(tooFar.best().minus(tooFar.low()).degrees()).isCloseTo(2 + Math.sqrt(2.0 / 3), within(1e-6));
            assertThat(tooFar.high().minus(tooFar.best()).degrees()).isCloseTo(Math.sqrt(2.0 / 3), within(1e-6));
        }

        @Test
        void nothingIsSharedWhereNothingWasTurned() {
            Track track = identified(Track.start("shaft"), 10, 1);
            track = identified(moved(moved(track, 0, 0), 0, 0), 10, 1);
            SmoothedTrack.Place middle =
                    SmoothedTrack.of(track).at("c1", 0, 1).place().orElseThrow();
            assertThat(middle.best().degrees()).isCloseTo(10, within(1e-6));
        }

        @Test
        void looseBladesLeanOnTop() {
            assertThat(inTheMiddle(1.5).low().degrees()).isCloseTo(86.5, within(1e-6));
            assertThat(inTheMiddle(1.5).high().degrees()).isCloseTo(91.5, within(1e-6));
        }
    }

    @Nested
    class ManyRuns {

        @Test
        void claimTheStatedErrorTenTimesAndThenAWiderOne() {
            assertThat(SmoothedTrack.widening(1)).isEqualTo(1);
            assertThat(SmoothedTrack.widening(10)).isEqualTo(1);
            // √(1 + 1.5 ln 2) and √(1 + 1.5 ln 10), by hand.
            assertThat(SmoothedTrack.widening(20)).isCloseTo(1.428188, within(1e-6));
            assertThat(SmoothedTrack.widening(100)).isCloseTo(2.110421, within(1e-6));
        }

        /** Where a row stood at one of two places it does so in a late run too, and either is wider. */
        @Test
        void leaveWhatIsDoubtfulDoubtful() {
            Track track = moved(moved(identified(Track.start("shaft"), 0, 1), 40, 1), 50, 1);
            SmoothedTrack.Stand stand =
                    SmoothedTrack.of(identified(track, 150, 1)).at("c1", 0, 1);
            SmoothedTrack.Stand late = stand.widened(20);

            assertThat(stand.sure()).isFalse();
            assertThat(late.sure()).isFalse();
            assertThat(late.place()).isEqualTo(stand.place().map(place -> place.widened(SmoothedTrack.widening(20))));
            assertThat(late.otherwise())
                    .isNotEmpty()
                    .isEqualTo(stand.otherwise().map(place -> place.widened(SmoothedTrack.widening(20))));
        }

        @Test
        void widenAPlaceToBothSidesOfItsBest() {
            SmoothedTrack placing = SmoothedTrack.of(shortOfATurn());
            SmoothedTrack.Place early =
                    placing.course("c1", 0, 5, 5, 10).get(0).place().orElseThrow();
            SmoothedTrack.Place late =
                    placing.course("c1", 0, 5, 5, 20).get(0).place().orElseThrow();
            assertThat(late.best()).isEqualTo(early.best());
            assertThat(early.high().minus(early.low()).degrees()).isCloseTo(4, within(1e-6));
            assertThat(late.best().minus(late.low()).degrees()).isCloseTo(2 * 1.428188, within(1e-6));
            assertThat(late.high().minus(late.best()).degrees()).isCloseTo(2 * 1.428188, within(1e-6));
        }
    }

    /** After the slip nothing but row c1 itself connects what was seen: row q, seen there before it, was not known. */
    @Test
    void aCourseGoesOnOverATurnThatNothingConnects() {
        assertThat(overASlip(350, 10)).containsExactly(350.0, 370.0);
        assertThat(overASlip(10, 350)).containsExactly(10.0, -10.0);
        assertThat(overASlip(10, 30)).containsExactly(10.0, 30.0);
    }

    private static List<Double> overASlip(double before, double after) {
        Track track = identified(Track.start("shaft"), before, 0).slipped(1);
        track = identified(track.identified(new Sighting(1, 1, "q", Turn.ZERO, 1, 0, 0, 40)), after, 0);
        return SmoothedTrack.of(track).course("c1", 0, 0, 1, 1).stream()
                .map(stand -> Math.rint(stand.place().orElseThrow().best().degrees()))
                .toList();
    }

    /** Without a place for a row at one stop, the next is taken as it stands. */
    @Test
    void aCourseGoesOnAlongTheCountedMovesThoughOnlyTheRowConnectsItsStops() {
        Track track = identified(Track.start("shaft"), 10, 0);
        for (int i = 0; i < 5; i++) {
            track = moved(track, 100, 1);
        }
        List<SmoothedTrack.Stand> course = SmoothedTrack.of(track).course("c1", 0, 0, 5, 1);
        assertThat(course.stream()
                        .map(stand ->
                                Math.rint(stand.place().orElseThrow().best().degrees())))
                .containsExactly(10.0, 110.0, 210.0, 310.0, 410.0, 510.0);
        assertThat(SmoothedTrack.of(track).course("other", 0, 0, 1, 1))
                .allSatisfy(stand -> assertThat(stand.place()).isEmpty());
    }
}
