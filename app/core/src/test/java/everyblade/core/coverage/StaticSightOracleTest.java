package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.StationSight;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Of rows that stand still every patch against a slow oracle: past a row of another count, and by stations that hold in turn. */
class StaticSightOracleTest {

    /** A row seen through the only view of an engine, and the oracle of it. */
    private static final class Seen {
        final Coverage coverage;
        final View view;
        final Row row;
        final Map<String, StationSight> known = new HashMap<>();
        final SightOracle oracle;

        Seen(ShapedEngine engine, String... lines) {
            coverage = new Job(engine.built()).enter(lines).coverage();
            view = coverage.situation().engine().model().views().get(0);
            row = coverage.row(view.row()).row();
            oracle = new SightOracle(row, coverage.sights().grain(row).patches(), this::sight);
        }

        StationSight sight(Station station) {
            return known.computeIfAbsent(
                    station.id(),
                    id -> coverage.sights()
                            .of(
                                    new Stance(
                                            view.id(), List.of(id), false, view.scopeTip(), Map.of(), Optional.empty()),
                                    id)
                            .orElseThrow());
        }

        Station station(int number) {
            return view.stations().get(number);
        }

        /** Drawn between two angles, degrees from where it began; the vanes run back past the scope tip meanwhile. */
        void drawn(Station station, int low, int high, List<Integer> zones) {
            oracle.hold(station, -high * Circle.TICKS_PER_DEGREE, -low * Circle.TICKS_PER_DEGREE, zones);
        }

        List<Integer> zones(String name) {
            List<String> names = Zoning.of(row).names();
            return IntStream.range(0, names.size())
                    .filter(zone -> names.get(zone).startsWith(name))
                    .boxed()
                    .toList();
        }

        void assertAlike() {
            RowCoverage cells = coverage.row(row.id());
            int some = 0;
            for (int n = 1; n <= row.count(); n++) {
                assertThat(cells.surely(n)).as("airfoil %d", n).isEqualTo(oracle.surely(n));
                assertThat(cells.wholly(n)).as("airfoil %d", n).isEqualTo(oracle.wholly(n));
                some += oracle.surely(n).isEmpty() ? 0 : 1;
                for (int zone = 0; zone < cells.zoning().size(); zone++) {
                    assertThat(cells.state(n, zone))
                            .as("airfoil %d, zone %d", n, zone)
                            .isEqualTo(oracle.state(n, zone, oracle.reach(n, view.stations())));
                }
            }
            assertThat(some).isPositive();
        }
    }

    /** What hides a vane of 20 behind 12 is the same for every fifth of them only. */
    @Test
    void pastARowOfAnotherCountEachAirfoilIsSeenAsItsKindIs() {
        Seen seen = new Seen(
                new ShapedEngine()
                        .row("g", RowKind.STATOR, 12, 0, -40, OptionalDouble.of(15))
                        .row("s", RowKind.STATOR, 20, 10, 0)
                        .view("v", "s", ShapedEngine.station("far", -50, 130, new Heading(1, 0, -0.1), 0.5, 1)),
                "view v",
                "datum s 1 ± 0",
                "draw 75",
                "feed 30",
                "draw -200",
                "watch tip",
                "draw 360");
        assertThat(seen.sight(seen.station(0)).kinds()).isEqualTo(5);
        seen.drawn(seen.station(0), 0, 75, seen.zones(""));
        seen.drawn(seen.station(0), -95, 105, seen.zones(""));
        seen.drawn(seen.station(0), -95, 265, seen.zones("tip"));
        seen.assertAlike();
    }

    private static Station tilted(String id, double axial, double deg, double from, double to) {
        return ShapedEngine.holding(ShapedEngine.station(id, 30, 118, new Heading(axial, 0, 1), 1, deg), from, to);
    }

    /** A patch that one station does not show from some pose is seen if the other does from that pose. */
    @Test
    void ofStationsThatHoldInTurnOneShowsWhatTheOtherDoesNotFromTheSamePose() {
        Seen seen = new Seen(
                new ShapedEngine()
                        .liner("l", 12)
                        .view("v", "l", tilted("low", 0.4, 20, 270, 90), tilted("high", -0.4, 20, 90, 270)),
                "view v",
                "datum l 1 ± 0",
                "draw 300");
        seen.drawn(seen.station(0), 0, 90, seen.zones(""));
        seen.drawn(seen.station(1), 90, 270, seen.zones(""));
        seen.drawn(seen.station(0), 270, 300, seen.zones(""));
        seen.assertAlike();
    }

    /** The station that holds first is exact, but where within its tolerance the tip stands matters to the other. */
    @Test
    void anExactStationDoesNotMakeTheOthersExact() {
        Station exact = ShapedEngine.holding(ShapedEngine.station("low", 30, 118, new Heading(0, 0, 1), 0, 0), 270, 90);
        Seen seen = new Seen(
                new ShapedEngine().liner("l", 12).view("v", "l", exact, tilted("high", 0, 5, 90, 270)),
                "view v",
                "datum l 1 ± 0",
                "draw 180");
        seen.drawn(seen.station(0), 0, 90, seen.zones(""));
        seen.drawn(seen.station(1), 90, 180, seen.zones(""));
        seen.assertAlike();
    }
}
