package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one entry watches: from where the scope tip stands, or while it is moved between two stations of the view. Moved, it
 * is a placement by itself, and stands at the second station afterwards, newly placed.
 *
 * @param row that is watched
 * @param stance from where, and with what
 * @param placement number of the seating
 * @param there whether the scope tip is where its stations say
 * @param zones that are being watched
 * @param after where the scope tip is seated afterwards
 */
record Watch(Row row, Stance stance, int placement, boolean there, ZoneSet zones, Seat after) {

    /**
     * @throws Refusal if a station is none of the view, or the scope tip was drawn clear of one that stands among what turns
     */
    static Watch of(Situation now, Seat seat, Optional<Entry.Through> through) throws Refusal {
        if (through.isEmpty()) {
            if (!seat.there() && !now.among()) {
                String station = seat.station().map(Station::id).orElseThrow();
                throw new Refusal(1, new SeatProblem.DrawnClear(station));
            }
            return new Watch(seat.row(), now.stance(seat), seat.placement(), seat.there(), seat.watching(), seat);
        }
        int from = station(seat, through.get().from());
        int to = station(seat, through.get().to());
        List<Station> stations = seat.view().stations();
        List<String> passed = java.util.stream.IntStream.rangeClosed(0, Math.abs(to - from))
                .mapToObj(
                        step -> stations.get(from + (from <= to ? step : -step)).id())
                .toList();
        int placement = now.placements() + 1;
        return new Watch(
                seat.row(),
                now.stance(seat, passed, true),
                placement,
                true,
                seat.watching(),
                seat.at(stations.get(to), placement + 1));
    }

    private static int station(Seat seat, Said<String> said) throws Refusal {
        List<String> ids = seat.view().stations().stream().map(Station::id).toList();
        ViewEntries.named(
                said,
                SeatProblem.Named.STATION,
                ids.stream().filter(said.value()::equals).findFirst(),
                ids);
        return ids.indexOf(said.value());
    }

    /** The situation with the scope tip where it is afterwards. */
    Situation begun(Situation now) {
        return stance.moved() ? now.seated(after, after.placement()) : now;
    }

    /** Refuses turning while the scope tip passes closer to what turns than the margin. */
    void refuseClose(Situation now, Seat seat, Spool spool) throws Refusal {
        for (String id : stance.stations()) {
            Seat there = seat.at(
                    seat.view().stations().stream()
                            .filter(station -> station.id().equals(id))
                            .findFirst()
                            .orElseThrow(),
                    placement);
            OptionalDouble clearance = now.engine().clearance(there, spool.id());
            if (clearance.isPresent() && clearance.getAsDouble() < now.engine().margin()) {
                throw new Refusal(
                        1,
                        new SeatProblem.TooClose(
                                id, clearance.getAsDouble(), now.engine().margin()));
            }
        }
    }
}
