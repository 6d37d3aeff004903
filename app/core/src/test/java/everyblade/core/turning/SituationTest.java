package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Zoning;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Spool;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What anybody may ask of how things stand after some entries. */
class SituationTest {

    private static Situation after(Job job) {
        return job.fold().situation();
    }

    private static Row row(Situation now, String id) {
        return now.engine().rows().get(id);
    }

    @Nested
    class TheAirfoilAtTheReference {

        private Job of(Direction numbering) {
            return new Job(new Engines()
                            .row("c1", RowKind.ROTOR, 36, numbering, 1, List.of(), false, 0)
                            .view("v", "c1", 90, 2)
                            .built())
                    .enter("view v");
        }

        private void assertNearest(Job job, int airfoil, double off) {
            Situation now = after(job);
            Seat seat = now.seat().orElseThrow();
            assertThat(now.airfoilAtReference(seat)).hasValue(airfoil);
            assertThat(now.offReference(seat, airfoil)).isCloseTo(off, within(1e-6));
        }

        @Test
        void isTheNearestOne() {
            assertNearest(of(Direction.CW).enter("datum c1 1"), 1, 0);
            assertNearest(of(Direction.CW).enter("datum c1 1", "turn on 43"), 33, 3);
            assertNearest(of(Direction.CW).enter("datum c1 1", "turn on 47"), 32, 3);
            assertNearest(of(Direction.CW).enter("datum c1 5", "turn back 30"), 8, 0);
        }

        @Test
        void isCountedTheOtherWayWhereNumbersRiseTheOtherWay() {
            assertNearest(of(Direction.CCW).enter("datum c1 1", "turn on 43"), 5, 3);
        }

        @Test
        void isNotKnownBeforeOneWasIdentified() {
            Situation now = after(of(Direction.CW).enter("turn on 43"));
            assertThat(now.airfoilAtReference(now.seat().orElseThrow())).isEmpty();
        }
    }

    @Nested
    class RunsOfWatching {

        private final Job job = new Job(new Engines()
                        .rotor("c1", 36)
                        .stator("s1", 20)
                        .view("v", "c1", 0, 2)
                        .view("w", "s1", 0, 2)
                        .built())
                .enter("view v", "datum c1 1");

        private List<Integer> runs(String row) {
            Situation now = after(job);
            return now.legsOf(row(now, row)).stream().map(Leg::run).toList();
        }

        @Test
        void goOnAsLongAsNothingLiesBetween() {
            job.enter("turn on 10", "turn on 20", "turn back 5");
            assertThat(runs("c1")).containsExactly(1, 1, 1);
            assertThat(after(job).runs()).isEqualTo(1);
        }

        @Test
        void endWithAnUnwatchedMoveAndWithANewSeating() {
            job.enter("turn on 10", "skip on 20", "turn on 5", "view v", "turn on 5", "turn on 5");
            assertThat(runs("c1")).containsExactly(1, 2, 3, 3);
        }

        @Test
        void goOnAfterAPauseWithTheRotorHeldWhereNothingSaysExactlyWhereTheScopeTipStands() {
            job.enter("turn on 10", "pause held", "turn on 5");
            assertThat(runs("c1")).containsExactly(1, 1);
        }

        @Test
        void areNumberedThroughAllRows() {
            job.enter("turn on 10", "view w", "datum s1 1", "draw 40", "view v", "turn on 5");
            assertThat(runs("c1")).containsExactly(1, 3);
            assertThat(runs("s1")).containsExactly(2);
            assertThat(after(job).runs()).isEqualTo(3);
        }

        @Test
        void tellHowFarEachEntryMovedWhateverTheWay() {
            job.enter("turn on 10", "skip back 20", "view w", "draw 40 ±1", "feed -15");
            assertThat(after(job).moved())
                    .containsExactlyInAnyOrderEntriesOf(Map.of(3, 10.0, 4, 20.0, 6, 40.0, 7, 15.0));
        }

        @Test
        void standAtAStopThatEachEntryLeft() {
            job.enter("turn on 10", "note between", "turn on 10");
            Situation now = after(job);
            assertThat(Stream.of(1, 2, 3, 4, 5, 9).map(entry -> now.stopAfter(row(now, "c1"), entry)))
                    .containsExactly(0, 0, 1, 1, 2, 2);
        }
    }

    @Nested
    class RowsThatStandStill {

        @Test
        void keepTheirPlaceInTheEngineHoweverFarTheScopeTipWasDrawn() {
            Job job = new Job(new Engines()
                            .stator("s1", 20)
                            .stator("s2", 20)
                            .rotor("c1", 36)
                            .view("w", "s1", 30, 2)
                            .view("v", "c1", 0, 2)
                            .built())
                    .enter("view v", "datum c1 1", "view w", "datum s1 1 ±0.5", "draw 40 ±1");
            Map<String, SmoothedTrack.Place> places = after(job).places();
            assertThat(places).containsOnlyKeys("s1");
            assertThat(places.get("s1").best().wrapped().degrees()).isCloseTo(30, within(1e-6));
        }

        @Test
        void areNotMovedBySeatingAScopeTipThatWasNotDrawn() {
            Job job = new Job(new Engines()
                            .stator("s1", 20)
                            .view("w", "s1", 30, 2)
                            .built())
                    .enter("view w", "datum s1 1", "view w");
            assertThat(after(job).stop(row(after(job), "s1"))).isZero();
            job.enter("draw 40", "view w");
            assertThat(after(job).stop(row(after(job), "s1"))).isEqualTo(2);
        }

        @Test
        void needNoDatumWhereTheMakerFixesTheirPlace() {
            Job job = new Job(new ShapedEngine()
                            .row("s", RowKind.STATOR, 20, 35, 60, OptionalDouble.of(15))
                            .row("t", RowKind.STATOR, 20, 35, 120)
                            .window("w", "s", 5)
                            .window("u", "t", 5)
                            .built())
                    .enter("view w", "view u");
            assertThat(after(job).places()).containsOnlyKeys("s");
            assertThat(after(job).places().get("s").best().degrees()).isCloseTo(15, within(1e-6));
            int known = after(job).sightings(row(after(job), "s"));
            job.enter("view w");
            assertThat(after(job).sightings(row(after(job), "s"))).isEqualTo(known);
        }
    }

    @Nested
    class MovedThroughStations {

        private final Job job = new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .view(
                                "front",
                                "r",
                                ShapedEngine.station("a", -15, 130, new Heading(1, 0.3, -0.4), 1, 3),
                                ShapedEngine.station("b", -15, 134, new Heading(1, 0.3, -0.4), 1, 3),
                                ShapedEngine.station("c", -15, 138, new Heading(1, 0.3, -0.4), 1, 3))
                        .built())
                .enter("view front", "datum r 1");

        private Leg last() {
            Situation now = after(job);
            return now.legsOf(row(now, "r")).get(now.legsOf(row(now, "r")).size() - 1);
        }

        @Test
        void theScopeTipPassesThoseBetweenAndStandsAtTheLastOneNewlyPlaced() {
            job.enter("look through a c");
            assertThat(last().stance().stations()).containsExactly("a", "b", "c");
            assertThat(last().stance().moved()).isTrue();
            assertThat(last().placement()).isEqualTo(2);
            Seat seat = after(job).seat().orElseThrow();
            assertThat(seat.station().orElseThrow().id()).isEqualTo("c");
            assertThat(seat.placement()).isEqualTo(3);
            assertThat(after(job).placements()).isEqualTo(3);
        }

        @Test
        void itPassesThoseBetweenTheTwoAndNoOthers() {
            job.enter("look through b c");
            assertThat(last().stance().stations()).containsExactly("b", "c");
        }

        @Test
        void itPassesThemBackwardsToo() {
            job.enter("turn on 10 through c a");
            assertThat(last().stance().stations()).containsExactly("c", "b", "a");
            assertThat(after(job).seat().orElseThrow().station().orElseThrow().id())
                    .isEqualTo("a");
        }

        @Test
        void eachSeatingIsAPlacementOfItsOwn() {
            job.enter("at b", "look", "at b", "look");
            Situation now = after(job);
            assertThat(now.legsOf(row(now, "r")).stream().map(Leg::placement)).containsExactly(2, 3);
        }

        @Test
        void afterAPauseNobodyKnowsThatTheScopeTipStayed() {
            job.enter("look", "pause held", "look");
            Situation now = after(job);
            assertThat(now.legsOf(row(now, "r")).stream().map(Leg::placement)).containsExactly(1, 2);
        }

        @Test
        void putInAmongTheBladesAndDrawnClearItIsPlacedAnewEachTime() {
            job.enter("look", "in", "clear", "look");
            Situation now = after(job);
            assertThat(now.legsOf(row(now, "r")).stream().map(Leg::placement)).containsExactly(1, 3);
        }

        @Test
        void aStationOfAnotherViewIsRefused() {
            assertThatThrownBy(() -> job.tryEnter("look through a d"))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .contains("d", "a", "b", "c");
        }
    }

    /** The tip has a radius of 2 mm and may stand 1 mm off; 2 mm must be left to what turns. */
    @Nested
    class CloseToWhatTurns {

        private Job standing(double a, double c) {
            Engine engine = new ShapedEngine()
                    .row("r", RowKind.ROTOR, 20, 35, 0)
                    .view(
                            "front",
                            "r",
                            ShapedEngine.station("a", -15, 130, new Heading(1, 0.3, -0.4), 1, 3),
                            ShapedEngine.station("b", -15, 134, new Heading(1, 0.3, -0.4), 1, 3),
                            ShapedEngine.station("c", -15, 138, new Heading(1, 0.3, -0.4), 1, 3))
                    .built();
            return new Job(engine.withClearances(
                            Map.of(
                                    new Engine.Standing("front", "a", "shaft"), a,
                                    new Engine.Standing("front", "c", "shaft"), c),
                            2))
                    .enter("view front", "datum r 1");
        }

        private void assertRefused(Job job, String line, String... words) {
            assertThatThrownBy(() -> job.tryEnter(line))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .contains(words);
        }

        @Test
        void nothingIsTurnedPastAScopeTipThatIsCloserThanTheMargin() {
            Job near = standing(4.9, 9);
            assertRefused(near, "turn on 10", "among the blades");
            assertRefused(near, "round 1", "among the blades");
            near.enter("look", "clear", "at b", "turn on 10", "at c", "turn on 10");
        }

        @Test
        void atTheMarginItIs() {
            standing(5, 9).enter("turn on 10", "round 1");
        }

        @Test
        void aScopeTipThatWasDrawnClearOfItIsNotWhereItsStationSays() {
            Job near = standing(4.9, 9).enter("clear");
            assertRefused(near, "look", "a");
            near.enter("at b", "look");
            Job far = standing(9, 9).enter("in", "look");
            assertThat(far.warnings()).singleElement().asString().contains("station a");
            assertThat(after(far).legsOf(row(after(far), "r"))).isEmpty();
            far.enter("clear", "look");
            assertThat(after(far).legsOf(row(after(far), "r"))).hasSize(1);
        }

        @Test
        void norWhileItPassesAPlaceThatIs() {
            Job near = standing(9, 4.9);
            assertRefused(near, "turn on 10 through a c", "c");
            near.enter("turn on 10 through a b");
        }
    }

    @Nested
    class ThePortOfTheView {

        private final Job job = new Job(new Engines()
                        .rotor("c1", 36)
                        .port("p1")
                        .port("p2")
                        .viewThrough("p1", "v", "c1")
                        .built())
                .enter("open p1", "view v");

        private Seat seat() {
            return after(job).seat().orElseThrow();
        }

        @Test
        void isShutByTheEntryThatSaysSoUntilItIsOpenedAgain() {
            assertThat(seat().shut()).isEmpty();
            job.enter("shut p1 torqued");
            assertThat(seat().shut()).hasValue(3);
            assertThat(seat().view().id()).isEqualTo("v");
            job.enter("open p1");
            assertThat(seat().shut()).isEmpty();
        }

        @Test
        void staysOpenWhateverElseIsShut() {
            job.enter("open p2", "shut p2 torqued");
            assertThat(seat().shut()).isEmpty();
        }
    }

    /** As the view says, else as the tolerance of the station lets a person, else exactly. */
    @Nested
    class HowExactlyAnAirfoilIsPutToTheReference {

        private final Engine engine = new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .view(
                        "front",
                        "r",
                        ShapedEngine.station("a", -15, 130, new Heading(1, 0.3, -0.4), 1, 3),
                        ShapedEngine.station("b", -15, 134, new Heading(1, 0.3, -0.4), 1, 3))
                .window("wide", "r", 5)
                .built()
                .withAims((view, station) -> station.id().equals("a") ? 0.7 : 0.2);

        private double plusMinus(String... lines) {
            Situation now = after(new Job(engine).enter(lines));
            SmoothedTrack.Place place =
                    now.placing(row(now, "r")).at("r", 0, 0).place().orElseThrow();
            return place.high().minus(place.best()).degrees();
        }

        @Test
        void isForTheStationToSay() {
            assertThat(plusMinus("view front", "datum r 1")).isCloseTo(0.7, within(1e-6));
            assertThat(plusMinus("view front", "at b", "datum r 1")).isCloseTo(0.2, within(1e-6));
            assertThat(plusMinus("view wide", "datum r 1")).isZero();
        }

        @Test
        void isForTheViewToSayWhereItDoes() {
            Seat seat = after(new Job(engine).enter("view front")).seat().orElseThrow();
            View view = seat.view();
            View aimed = new View(
                    view.id(),
                    view.port(),
                    view.row(),
                    view.scopeTip(),
                    view.reference(),
                    0.4,
                    view.window(),
                    view.stations(),
                    view.travels());
            assertThat(engine.aim(new Seat(
                            aimed,
                            seat.row(),
                            seat.scopeTip(),
                            seat.station(),
                            1,
                            true,
                            seat.watching(),
                            false,
                            seat.shut())))
                    .isEqualTo(0.4);
            assertThat(engine.aim(seat)).isEqualTo(0.7);
        }

        @Test
        void isAsNothingIsKnownOfItUnlessItIsAdded() {
            assertThat(Engine.of(engine.model())
                            .aim(after(new Job(engine).enter("view front"))
                                    .seat()
                                    .orElseThrow()))
                    .isZero();
        }

        @Test
        void isKeptBesideWhatIsKnownOfClearances() {
            Engine both = engine.withClearances(Map.of(new Engine.Standing("front", "a", "shaft"), 4.9), 2);
            Seat seat = after(new Job(both).enter("view front")).seat().orElseThrow();
            assertThat(both.aim(seat)).isEqualTo(0.7);
            assertThat(both.withAims(Engine.Aims.UNKNOWN).tooClose(seat)).hasValueCloseTo(1.9, within(1e-9));
        }
    }

    @Nested
    class TheLedger {

        private final Job job = new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .row("s", RowKind.STATOR, 20, 35, 60)
                        .window("v", "r", 5)
                        .built())
                .enter("view v", "datum r 1");

        @Test
        void keepsWhatTheTaskAsksFor() {
            assertThat(after(job).ledger().asked()).isEmpty();
            job.enter("ask r root");
            assertThat(after(job).ledger().asked()).containsOnlyKeys("r");
            assertThat(after(job).ledger().asked().get("r"))
                    .isEqualTo(Zoning.of(row(after(job), "r")).span(0));
        }

        @Test
        void keepsWhatTheTaskAsksForWhereOtherRemarksStandInsteadOfThose() {
            job.enter("ask r root", "nick 3 tip 1", "nick 4 tip 1");
            Situation now = after(job);
            List<Remark> second = List.of(now.ledger().remarks().get(1));
            assertThat(now.remarked(second).ledger().remarks()).isEqualTo(second);
            assertThat(now.remarked(List.of()).ledger().remarks()).isEmpty();
            assertThat(now.remarked(second).ledger().asked())
                    .isEqualTo(now.ledger().asked());
            assertThat(now.ledger().remarks()).hasSize(2);
        }

        @Test
        void keepsWhatIsMissingUntilItIsThereAgain() {
            job.enter("recheck 4 root", "lost nut", "lost lamp");
            assertThat(after(job).ledger().missing()).containsExactly("nut", "lamp");
            job.enter("tool in lamp");
            assertThat(after(job).ledger().missing()).containsExactly("nut");
        }

        @Test
        void keepsAQuestionUntilItIsSettled() {
            job.enter("recheck 4 root", "lost nut");
            assertThat(after(job).ledger().questions()).containsOnlyKeys(3, 4);
            job.enter("settle 3 because looked at again");
            assertThat(after(job).ledger().questions()).containsOnlyKeys(4);
        }

        @Test
        void keepsHowVanesStandAndTheFinestLineSeen() {
            job.enter("vanes s open", "proof 0.1 mm at 20 mm");
            assertThat(after(job).ledger().vanes()).containsExactly(Map.entry("s", "open"));
            assertThat(after(job).ledger().proof()).isPresent();
        }

        @Test
        void knowsAFindingAsUndecidedUntilSomebodySaysWhatComesOfIt() {
            job.enter("nick 3 tip 1", "recheck 4 root", "note no finding");
            assertThat(Stream.of(3, 4, 5).map(after(job).ledger()::isUndecided)).containsExactly(true, false, false);
            job.enter("settle 3 because within the manual's table");
            assertThat(after(job).ledger().isUndecided(3)).isFalse();
            assertThat(after(job).ledger().outcomes()).containsExactly(Map.entry(3, 6));
        }
    }

    @Test
    void aPadThatTurnsOneWayOnlySaysSo() {
        Situation now = after(new Job(new Engines()
                .rotor("c1", 12)
                .view("v", "c1", 0, 2)
                .pad("crank", Ratio.ONE, 0, 0, 0, Direction.CW)
                .built()));
        Spool shaft = now.engine().model().spools().get(0);
        assertThat(now.oneWay(shaft, Direction.CW)).isEmpty();
        assertThat(now.oneWay(shaft, Direction.CCW)).isPresent();
    }

    @Test
    void everyIdentificationTiesDownTheTrackOnceMore() {
        Job job = new Job(Engines.of(12, 2)).enter("view v");
        Situation none = after(job);
        Situation two = after(job.enter("datum c1 1", "turn on 30", "here 12"));
        assertThat(two.sightings(row(two, "c1")) - none.sightings(row(none, "c1")))
                .isEqualTo(2);
    }

    @Test
    void anEntryThatWasTakenBackIsVoidAndNoOther() {
        Job job = new Job(Engines.of(12, 2)).enter("view v", "note a", "void 2 because wrong");
        assertThat(Stream.of(1, 2, 3).map(job.fold()::isVoid)).containsExactly(false, true, false);
    }
}
