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
 * @param shut the entry that shut the port of the view since, if it was not opened again
 */
public record Seat(
        View view,
        Row row,
        Optional<ScopeTip> scopeTip,
        Optional<Station> station,
        int placement,
        boolean there,
        ZoneSet watching,
        boolean out,
        Optional<Integer> shut) {

    /** The clock angle at which the view's middle meets the row before the scope tip is drawn round. */
    public Clock reference() {
        return Clock.ofDegrees(view.reference());
    }

    Seat watching(ZoneSet zones) {
        return new Seat(view, row, scopeTip, station, placement, there, zones, false, shut);
    }

    Seat at(Station other, int newPlacement) {
        return new Seat(view, row, scopeTip, Optional.of(other), newPlacement, true, watching, false, shut);
    }

    Seat placed(int newPlacement, boolean isThere) {
        return new Seat(view, row, scopeTip, station, newPlacement, isThere, watching, false, shut);
    }

    Seat takenOut() {
        return new Seat(view, row, scopeTip, station, placement, there, watching, true, shut);
    }

    /** After a port, cover or panel was opened, or shut by an entry. */
    Seat after(String thing, Optional<Integer> shutBy) {
        return view.port().filter(thing::equals).isPresent()
                ? new Seat(view, row, scopeTip, station, placement, there, watching, out, shutBy)
                : this;
    }
}
