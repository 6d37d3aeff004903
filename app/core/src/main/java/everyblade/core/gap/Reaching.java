package everyblade.core.gap;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Placing.Place;
import everyblade.core.turning.Situation;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How to see a run of airfoils: through which view, and by which turn in a direction that the pad allows. */
final class Reaching {

    private Reaching() {}

    static Optional<Gap.Reach> of(Situation now, Row row, List<Integer> airfoils, ZoneSet zones) {
        Optional<Place> place = now.counting(row)
                ? now.placing(row).at(row.id(), row.rock(), now.stop(row)).place()
                : Optional.empty();
        Optional<View> best = now.engine().model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .filter(view -> !shown(now, view).intersection(zones).isEmpty())
                .max(Comparator.comparingInt((View view) ->
                                shown(now, view).intersection(zones).size())
                        .thenComparing(view -> now.seat()
                                .filter(seat -> seat.view().id().equals(view.id()))
                                .isPresent()));
        if (place.isEmpty() || best.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(reach(now, row, airfoils, best.get(), place.get().best(), zones));
    }

    private static Gap.Reach reach(
            Situation now, Row row, List<Integer> airfoils, View view, Turn first, ZoneSet zones) {
        Optional<Spool> spool = now.engine().spool(row);
        // A scope tip drawn clockwise meets airfoils in the order in which a rotor turned counter-clockwise brings
        // them.
        boolean rising = spool.map(turned -> way(turned, now.padOf(turned)) == Direction.CCW)
                .orElse(true);
        boolean fromStart = rising == (row.numbering() == Direction.CW);
        int start = fromStart ? airfoils.get(0) : airfoils.get(airfoils.size() - 1);
        Turn ahead = Turn.ofDegrees(view.reference()).minus(first).minus(Engine.fromFirst(row, start));
        Turn run = Turn.ofFraction(airfoils.size() - 1L, row.count());
        Turn from = spool.isPresent()
                ? now.reading(row).plus(ahead)
                : Turn.ofDegrees(view.reference()).minus(now.reading(row)).minus(ahead);
        boolean clockwise = spool.isEmpty() || !rising;
        return new Gap.Reach(
                view.id(),
                view.stations().stream().findFirst().map(Station::id),
                from.wrapped().degrees(),
                clockwise ? run.degrees() : -run.degrees(),
                spool.isEmpty(),
                shown(now, view).intersection(zones));
    }

    private static Direction way(Spool spool, Pad pad) {
        return pad.directions().contains(spool.normal())
                ? spool.normal()
                : spool.normal().opposite();
    }

    private static ZoneSet shown(Situation now, View view) {
        return DeclaredWindow.of(view, now.engine().zonings().get(view.row()))
                .map(DeclaredWindow::zones)
                .orElse(ZoneSet.NONE);
    }
}
