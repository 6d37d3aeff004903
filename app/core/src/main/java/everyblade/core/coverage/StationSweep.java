package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.turning.Leg;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Sector;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;

/**
 * A station at which the scope tip stood during a pass, or during a part of it, and what was swept meanwhile.
 *
 * @param station its id
 * @param slot number of the station among those through which the scope tip was moved; 0 if it held
 * @param inTurn whether other stations may hold on the same way, each where the scope tip has been drawn to
 * @param sweeps of the row, as the scope tip sees it
 */
record StationSweep(String station, int slot, boolean inTurn, List<Sweep> sweeps) {

    private static final double TURN = 360;

    /** All of one pass. */
    static List<StationSweep> of(SmoothedTrack placing, Row row, View view, Pass pass) {
        Stance stance = pass.legs().get(0).stance();
        boolean sectors = row.kind() != RowKind.ROTOR
                && view.stations().stream()
                        .anyMatch(station -> station.forClock().isPresent());
        List<StationSweep> all = new ArrayList<>();
        if (sectors && !stance.moved()) {
            pass.legs().forEach(leg -> bySector(all, placing, row, view, leg));
            return all;
        }
        List<Sweep> sweeps = Sweep.of(placing, row, pass.from(), pass.to(), pass.run());
        for (int slot = 0; slot < stance.stations().size(); slot++) {
            all.add(new StationSweep(stance.stations().get(slot), slot, sectors, sweeps));
        }
        return all;
    }

    /**
     * The way of a leg, cut where another station begins to hold; it is cut at the counted angle of the scope tip, since
     * sectors are coarse.
     */
    private static void bySector(List<StationSweep> all, SmoothedTrack placing, Row row, View view, Leg leg) {
        double start = -placing.adjusted(leg.from()).degrees();
        double way = -placing.counted(leg.from(), leg.to()).degrees();
        List<Double> cuts = new ArrayList<>(List.of(0.0, way));
        for (Station station : view.stations()) {
            station.forClock().ifPresent(sector -> {
                addCuts(cuts, sector.from() - station.clock() - start, way);
                addCuts(cuts, sector.to() - station.clock() - start, way);
            });
        }
        cuts.sort(way < 0 ? java.util.Comparator.reverseOrder() : java.util.Comparator.naturalOrder());
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = cuts.get(i);
            if (from != to || way == 0) {
                String own = leg.stance().stations().get(0);
                Sweep sweep = Sweep.part(placing, row, leg, Turn.ofDegrees(-from), Turn.ofDegrees(-to));
                holder(view, own, start + (from + to) / 2)
                        .ifPresent(station -> all.add(new StationSweep(station, 0, true, List.of(sweep))));
            }
        }
    }

    /** Where on the way, in degrees from its start, the scope tip passes a clock angle that many degrees from there. */
    private static void addCuts(List<Double> cuts, double angle, double way) {
        double low = Math.min(0, way);
        double high = Math.max(0, way);
        for (double at = angle + TURN * Math.ceil((low - angle) / TURN); at < high; at += TURN) {
            if (at > low) {
                cuts.add(at);
            }
        }
    }

    /** The station that holds where the scope tip was drawn so many degrees: the one that was taken if it does, else the first. */
    private static java.util.Optional<String> holder(View view, String own, double drawn) {
        return view.stations().stream()
                .filter(station -> station.forClock()
                        .map(sector -> holds(sector, station.clock() + drawn))
                        .orElse(station.id().equals(own)))
                .map(Station::id)
                .min(java.util.Comparator.comparing(id -> !id.equals(own)));
    }

    private static boolean holds(Sector sector, double clock) {
        double width = turns(sector.to() - sector.from());
        return width == 0 || turns(clock - sector.from()) <= width;
    }

    private static double turns(double degrees) {
        return degrees - TURN * Math.floor(degrees / TURN);
    }
}
