package everyblade.core.gap;

import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.sight.Reach;
import everyblade.core.surface.Mesh;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** How to see a run of airfoils: through which view, and by which turn in a direction that the pad allows. */
final class Reaching {

    private Reaching() {}

    /**
     * A way of looking.
     *
     * @param view through which
     * @param station where the scope tip stands, if the view has stations
     * @param showing clock angles that an airfoil must pass
     * @param zones that are seen there, as far as they can be
     * @param worth how much of what is wanted it shows
     */
    private record Way(View view, Optional<String> station, Supplier<Showing> showing, ZoneSet zones, double worth) {

        boolean inUse(Situation now) {
            Optional<Seat> seat = now.seat().filter(in -> in.view().id().equals(view.id()));
            return seat.isPresent() && seat.get().station().map(Station::id).equals(station);
        }
    }

    static Optional<Gap.Reach> of(Coverage coverage, RowCoverage of, List<Integer> airfoils, ZoneSet zones) {
        Situation now = coverage.situation();
        Row row = of.row();
        Optional<Place> place = place(now, row);
        if (place.isEmpty()) {
            return Optional.empty();
        }
        List<Way> ways = of.reach()
                .map(reach -> stations(coverage, of, reach, airfoils, zones))
                .orElseGet(() -> windows(now, row, zones));
        return ways.stream()
                .filter(way -> !way.zones().isEmpty())
                .max(Comparator.comparingDouble(Way::worth).thenComparing(way -> way.inUse(now)))
                .map(way -> reach(now, row, airfoils, way, place.get().best()));
    }

    /** What must be brought to which reference before anybody knows where a row stands; empty if it is known. */
    static Optional<Gap.Landmark> first(Coverage coverage, RowCoverage of, ZoneSet zones) {
        Situation now = coverage.situation();
        Row row = of.row();
        if (place(now, row).isPresent()) {
            return Optional.empty();
        }
        Optional<String> inUse = now.seat().map(Seat::view).map(View::id);
        return now.engine().model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .filter(view -> of.reach()
                        .map(reach -> shows(coverage, of, reach, view, zones))
                        .orElseGet(() -> DeclaredWindow.of(
                                        view, now.engine().zonings().get(view.row()))
                                .filter(window ->
                                        !window.zones().intersection(zones).isEmpty())
                                .isPresent()))
                .min(Comparator.comparing(view -> !inUse.equals(Optional.of(view.id()))))
                .map(view -> row.landmarks().stream()
                        .findFirst()
                        .map(known -> new Gap.Landmark(
                                known.airfoil(), Optional.of(known.what()), view.id(), view.reference()))
                        .orElseGet(() -> new Gap.Landmark(1, Optional.empty(), view.id(), view.reference())));
    }

    private static boolean shows(Coverage coverage, RowCoverage of, Reach reach, View view, ZoneSet zones) {
        Mesh airfoil = coverage.sights().scene(of.row()).row().airfoil();
        return reach.stations().stream()
                .filter(from -> from.view().equals(view.id()))
                .anyMatch(from -> IntStream.range(0, airfoil.faceCount())
                        .anyMatch(facet -> zones.contains(airfoil.zone(facet))
                                && from.sight().reaches(facet)));
    }

    private static Optional<Place> place(Situation now, Row row) {
        return now.counting(row)
                ? now.placing(row).at(row.id(), row.rock(), now.stop(row)).place()
                : Optional.empty();
    }

    private static List<Way> windows(Situation now, Row row, ZoneSet zones) {
        return now.engine().model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .map(view -> {
                    ZoneSet shown = DeclaredWindow.of(
                                    view, now.engine().zonings().get(view.row()))
                            .map(DeclaredWindow::zones)
                            .orElse(ZoneSet.NONE)
                            .intersection(zones);
                    Optional<String> station =
                            view.stations().stream().findFirst().map(Station::id);
                    return new Way(view, station, () -> Showing.at(view.reference()), shown, shown.size());
                })
                .toList();
    }

    /** Stations by how much they show that is still unseen. */
    private static List<Way> stations(
            Coverage coverage, RowCoverage of, Reach reach, List<Integer> airfoils, ZoneSet zones) {
        Mesh airfoil = coverage.sights().scene(of.row()).row().airfoil();
        List<Way> ways = new ArrayList<>();
        for (Reach.FromStation from : reach.stations()) {
            BitSet wanted = new BitSet();
            double worth = 0;
            long shown = 0;
            for (int facet = 0; facet < airfoil.faceCount(); facet++) {
                if (zones.contains(airfoil.zone(facet))) {
                    int at = facet;
                    double unseen = airfoils.stream()
                            .mapToDouble(n -> of.unseen(from.sight(), n, at))
                            .sum();
                    wanted.set(facet, unseen > 0);
                    worth += unseen;
                    shown |= unseen > 0 ? 1L << airfoil.zone(facet) : 0;
                }
            }
            View view = coverage.situation().engine().model().view(from.view()).orElseThrow();
            ways.add(new Way(
                    view,
                    Optional.of(from.station()),
                    () -> Showing.of(from.sight(), wanted),
                    new ZoneSet(shown),
                    worth));
        }
        return ways;
    }

    private static Gap.Reach reach(Situation now, Row row, List<Integer> airfoils, Way way, Turn first) {
        Showing showing = way.showing().get();
        Optional<Spool> spool = now.engine().spool(row);
        // A scope tip drawn clockwise meets airfoils in the order in which a rotor turned counter-clockwise brings
        // them.
        boolean rising = spool.map(turned -> way(turned, now.padOf(turned)) == Direction.CCW)
                .orElse(true);
        boolean fromStart = rising == (row.numbering() == Direction.CW);
        int start = fromStart ? airfoils.get(0) : airfoils.get(airfoils.size() - 1);
        Turn begin = rising ? showing.from().plus(showing.width()) : showing.from();
        Turn ahead = begin.minus(first).minus(Engine.fromFirst(row, start));
        Turn run = Turn.ofFraction(airfoils.size() - 1L, row.count()).plus(showing.width());
        Turn from = spool.isPresent()
                ? now.reading(row).plus(ahead)
                : Turn.ofDegrees(way.view().reference()).minus(now.reading(row)).minus(ahead);
        double sweep = Math.min(360, run.degrees());
        boolean clockwise = spool.isEmpty() || !rising;
        return new Gap.Reach(
                way.view().id(),
                way.station(),
                from.wrapped().degrees(),
                clockwise ? sweep : -sweep,
                spool.isEmpty(),
                way.zones());
    }

    private static Direction way(Spool spool, Pad pad) {
        return pad.directions().contains(spool.normal())
                ? spool.normal()
                : spool.normal().opposite();
    }
}
