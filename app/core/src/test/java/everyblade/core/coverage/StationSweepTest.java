package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Sector;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Which station holds on which part of the way, told by how far the scope tip has been drawn, degrees. */
class StationSweepTest {

    /** A station whose pose was taken at a clock angle, holding in a sector if one is given. */
    private static Station at(double clock, String id, double... sector) {
        Station plain = ShapedEngine.station(id, 30, 115, new Heading(0, 0, 1), 0, 0);
        return new Station(
                id,
                plain.x(),
                plain.r(),
                clock,
                plain.forward(),
                plain.up(),
                plain.within(),
                sector.length == 0 ? Optional.empty() : Optional.of(new Sector(sector[0], sector[1])));
    }

    private static List<StationSweep> sweeps(ShapedEngine engine, String... lines) {
        Situation situation = new Job(engine.built()).enter(lines).fold().situation();
        View view = situation.engine().model().views().get(0);
        Row row = situation.engine().model().row(view.row()).orElseThrow();
        List<StationSweep> all = new ArrayList<>();
        List<Pass> open = List.of();
        for (Leg leg : situation.legsOf(row)) {
            Pass.Sorted sorted = Pass.Sorted.after(open, leg);
            sorted.ended().forEach(pass -> all.addAll(StationSweep.of(situation.placing(row), row, view, pass)));
            open = sorted.open();
        }
        open.forEach(pass -> all.addAll(StationSweep.of(situation.placing(row), row, view, pass)));
        return all;
    }

    private static ShapedEngine liner(Station... stations) {
        return new ShapedEngine().liner("l", 12).view("v", "l", stations);
    }

    /** The stations along the way, each with the part of it on which it holds; vane 1 stands where the tip begins. */
    private static List<String> held(ShapedEngine engine, String... lines) {
        List<String> all = new ArrayList<>(List.of("view v", "datum l 1 ± 0"));
        all.addAll(List.of(lines));
        return sweeps(engine, all.toArray(String[]::new)).stream()
                .map(StationSweepTest::told)
                .toList();
    }

    /** What stands still runs back past a scope tip that is drawn on. */
    private static String told(StationSweep part) {
        assertThat(part.sweeps()).hasSize(1);
        Sweep sweep = part.sweeps().get(0);
        assertThat(sweep.sure()).isTrue();
        assertThat(sweep.sureFrom()).isEqualTo(sweep.maybeFrom());
        assertThat(sweep.sureTo()).isEqualTo(sweep.maybeTo());
        return part.station() + " " + Math.round(-sweep.maybeTo().degrees()) + ".."
                + Math.round(-sweep.maybeFrom().degrees());
    }

    /** One below, one above. */
    private static ShapedEngine halves() {
        return liner(at(0, "low", 270, 90), at(0, "high", 90, 270));
    }

    @Nested
    class ASector {

        @Test
        void endsWhereTheNextBeginsHoweverFarTheTipIsDrawn() {
            assertThat(held(halves(), "draw 360")).containsExactly("low 0..90", "high 90..270", "low 270..360");
            assertThat(held(halves(), "draw 720"))
                    .containsExactly("low 0..90", "high 90..270", "low 270..450", "high 450..630", "low 630..720");
            assertThat(held(halves(), "draw 90")).containsExactly("low 0..90");
            assertThat(held(halves(), "draw 60")).containsExactly("low 0..60");
        }

        @Test
        void isPassedTheOtherWayRoundToo() {
            assertThat(held(halves(), "draw -360")).containsExactly("low -90..0", "high -270..-90", "low -360..-270");
            assertThat(held(halves(), "draw -450")).containsExactly("low -90..0", "high -270..-90", "low -450..-270");
        }

        @Test
        void isMetByWhereTheTipWasFedBefore() {
            assertThat(held(halves(), "feed 80", "draw 100")).containsExactly("low 80..90", "high 90..180");
            assertThat(held(halves(), "feed 100", "draw -30")).containsExactly("high 90..100", "low 70..90");
            assertThat(held(liner(at(0, "low", 0, 100), at(0, "high", 150, 310)), "feed 50", "draw 290"))
                    .as("with a gap between")
                    .containsExactly("low 50..100", "high 150..310");
            assertThat(held(halves(), "feed 300", "draw 360"))
                    .as("over the seam")
                    .containsExactly("low 300..450", "high 450..630", "low 630..660");
        }

        @Test
        void isOfClockAnglesOfTheEngineWhereverThePoseWasTaken() {
            assertThat(held(liner(at(30, "low", 270, 90), at(30, "high", 90, 270)), "draw 360"))
                    .containsExactly("low 0..60", "high 60..240", "low 240..360");
            assertThat(held(liner(at(10, "low", 270, 90), at(40, "high", 100, 270)), "draw 270"))
                    .as("each by its own pose")
                    .containsExactly("low 0..60", "low 60..80", "high 80..230", "low 260..270");
        }

        @Test
        void isCutInEachOfTurnsThatFollowEachOther() {
            assertThat(held(halves(), "draw 50", "draw 60")).containsExactly("low 0..50", "low 50..90", "high 90..110");
        }

        @Test
        void holdsWhereTheTipIsAtRest() {
            assertThat(held(halves(), "look")).containsExactly("low 0..0");
            assertThat(held(halves(), "feed 100", "look")).containsExactly("high 100..100");
            assertThat(held(halves(), "feed 90", "look"))
                    .as("at the border of two the one that was taken")
                    .containsExactly("low 90..90");
        }
    }

    @Nested
    class WhereSeveralHold {

        private ShapedEngine overlapping() {
            return liner(at(0, "low", 0, 200), at(0, "high", 100, 300));
        }

        @Test
        void theOneThatWasTakenCounts() {
            assertThat(held(overlapping(), "draw 360")).containsExactly("low 0..100", "low 100..200", "high 200..300");
            assertThat(held(overlapping(), "at high", "draw 360"))
                    .containsExactly("low 0..100", "high 100..200", "high 200..300");
        }

        @Test
        void theFirstCountsIfAnotherWasTaken() {
            ShapedEngine engine = liner(at(0, "first", 0, 100), at(0, "second", 0, 100), at(0, "own", 200, 300));
            assertThat(held(engine, "at own", "draw 250")).containsExactly("first 0..100", "own 200..250");
        }
    }

    @Nested
    class AStationWithoutASector {

        @Test
        void holdsAllTheWayWhereItWasTakenAndNowhereElse() {
            ShapedEngine engine = liner(at(0, "free"), at(0, "low", 0, 90));
            assertThat(held(engine, "draw 120")).containsExactly("free 0..90", "free 90..120");
            assertThat(held(engine, "at low", "draw 120")).containsExactly("low 0..90");
        }

        @Test
        void holdsOnOnePieceWhereNoneHasASector() {
            assertThat(held(liner(at(0, "free"), at(0, "other")), "draw 120")).containsExactly("free 0..120");
        }
    }

    @Test
    void aSectorThatEndsWhereItBeginsIsAllOfTheCircle() {
        assertThat(held(liner(at(0, "all", 50, 50)), "draw 90")).containsExactly("all 0..50", "all 50..90");
        assertThat(held(liner(at(0, "all", 0, 360)), "draw 90")).containsExactly("all 0..90");
    }

    @Test
    void stationsTakeOverOnlyWhereTheyHoldInSectors() {
        assertThat(sweeps(halves(), "view v", "datum l 1", "draw 100")).allMatch(StationSweep::inTurn);
        assertThat(sweeps(liner(at(0, "free")), "view v", "datum l 1", "draw 100"))
                .noneMatch(StationSweep::inTurn);
    }

    @Test
    void aRotorComesToTheScopeTipSoThatSectorsDoNotMatter() {
        ShapedEngine rotor = new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .view("v", "r", at(0, "low", 270, 90), at(0, "high", 90, 270));
        assertThat(sweeps(rotor, "view v", "datum r 1", "turn 360"))
                .extracting(StationSweep::station, StationSweep::inTurn)
                .containsExactly(tuple("low", false));
    }

    @Test
    void aScopeTipThatIsMovedStandsAtEachStationOfItsWay() {
        List<StationSweep> parts = sweeps(halves(), "view v", "datum l 1", "look through low high");
        assertThat(parts).extracting(StationSweep::station).containsExactly("low", "high");
        assertThat(parts).extracting(StationSweep::slot).containsExactly(0, 1);
        assertThat(parts).allMatch(StationSweep::inTurn);
    }

    /** Three vanes were counted, and the fifth from there stood at the reference. */
    @Test
    void aWayOnWhichTheCountWasLostIsNotSure() {
        List<StationSweep> parts = sweeps(halves(), "view v", "datum l 1 ± 0", "draw 90", "here 6 ± 0", "draw 30");
        assertThat(parts).extracting(part -> part.sweeps().get(0).sure()).containsExactly(false, true);
        assertThat(parts).noneMatch(part -> part.sweeps().get(0).anywhere());
    }
}
