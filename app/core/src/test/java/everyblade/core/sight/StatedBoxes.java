package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Stations before a row of boxes, with vanes between that may stand anywhere, and a shelf that keeps what they show. */
abstract class StatedBoxes {

    /** Keeps all, and knows what it was asked for. */
    static final class Shelf implements SightStore {

        final Map<String, byte[]> kept = new TreeMap<>();
        final List<String> asked = new ArrayList<>();

        @Override
        public Optional<byte[]> find(String key) {
            asked.add(key);
            return Optional.ofNullable(kept.get(key));
        }

        @Override
        public void keep(String key, byte[] content) {
            kept.put(key, content);
        }
    }

    final Station front = station("front", -30, 0, 0);
    final Station loose = station("loose", -30, 1, 3);
    final Station rear =
            new Station("rear", 30, 26, 10, new Heading(-1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(0, 0));
    final Shelf shelf = new Shelf();

    static Station station(String id, double x, double mm, double deg) {
        return new Station(id, x, 26, 10, new Heading(1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(mm, deg));
    }

    static Place at(double clock) {
        return new Place(Turn.ofDegrees(clock), Turn.ofDegrees(clock), Turn.ofDegrees(clock));
    }

    Blocks blocks() {
        return new Blocks()
                .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                .row("far", RowKind.STATOR, 8, 100, 110, 1.5, 19, 31)
                .shapeless("counted", RowKind.ROTOR, 5)
                .view("v", "own", front, loose)
                .view("rear", "own", rear)
                .view("none", "own")
                .view("tipless", "own", "unheard-of", front)
                .view("c", "counted", front);
    }

    Sights sights(Blocks blocks, Criteria criteria) {
        return new Sights(blocks.scene(), "mark", criteria, shelf, Progress.NONE);
    }

    final Sights sights = sights(blocks(), Criteria.USUAL);

    static Row row(String id, Blocks blocks) {
        return blocks.model().row(id).orElseThrow();
    }

    static Stance stance(String view, String tip) {
        return new Stance(view, List.of("front"), false, Optional.ofNullable(tip), Map.of(), Optional.empty());
    }

    static Stance with(Stance stance, Stance.Proof proof) {
        return new Stance(stance.view(), stance.stations(), false, stance.scopeTip(), Map.of(), Optional.of(proof));
    }

    StationSight direct(ViewScene engine, Station station, Criteria criteria) throws Exception {
        Row row = engine.model().row("own").orElseThrow();
        Pose pose = Pose.of(station, engine.model().scopeTip("tip").orElseThrow());
        Setting setting = Setting.of(
                engine,
                engine.ring(row).orElseThrow(),
                row,
                pose,
                station.within().mm(),
                2);
        return StationSight.compute(
                setting,
                engine.grain(row).orElseThrow(),
                PoseFamily.of(pose, station.within()),
                criteria,
                Progress.NONE);
    }

    /** A station half-way between two of the vanes, of which one stands at clock 0. */
    static Station among(double mm) {
        return new Station(
                "front", -16, 25, 22.5, new Heading(1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(mm, 0));
    }

    Blocks amongVanes(double mm) {
        return new Blocks()
                .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                .row("vanes", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                .view("v", "own", among(mm));
    }
}
