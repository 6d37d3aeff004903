package everyblade.core.turning;

import everyblade.core.angle.Clock;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.Optional;

/**
 * The scope tip seated at a view.
 *
 * @param view in use
 * @param row that is in view
 * @param scopeTip in use, where one is stated
 * @param station where the scope tip is, if the view has stations
 * @param placement number of this seating
 * @param there whether the scope tip is where the station says; not after it was put in among the blades, or drawn out
 * @param watching the zones being watched
 * @param out whether the scope was taken out since
 */
public record Seat(
        View view,
        Row row,
        Optional<ScopeTip> scopeTip,
        Optional<Station> station,
        int placement,
        boolean there,
        ZoneSet watching,
        boolean out) {

    /** The clock angle at which the view's middle meets the row before the scope tip is drawn round. */
    public Clock reference() {
        return Clock.ofDegrees(view.reference());
    }

    Seat watching(ZoneSet zones) {
        return new Seat(view, row, scopeTip, station, placement, there, zones, false);
    }

    Seat at(Station other, int newPlacement) {
        return new Seat(view, row, scopeTip, Optional.of(other), newPlacement, true, watching, false);
    }

    Seat placed(int newPlacement, boolean isThere) {
        return new Seat(view, row, scopeTip, station, newPlacement, isThere, watching, false);
    }

    Seat takenOut() {
        return new Seat(view, row, scopeTip, station, placement, there, watching, true);
    }
}
