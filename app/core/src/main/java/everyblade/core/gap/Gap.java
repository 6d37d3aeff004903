package everyblade.core.gap;

import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;

/**
 * A run of airfoils with the same zones in the same state for the same reason, neither seen nor seen in part.
 *
 * @param row of the airfoils
 * @param airfoils their numbers in the order of the row; a run over the seam goes on with 1
 * @param zones the same of each
 * @param state maybe or unseen
 * @param why they are not seen
 * @param reach how to see them; empty if no view shows them, or it is not known where the row stands
 * @param first what must be brought to a reference first; empty if it is known where the row stands, or no view shows them
 */
public record Gap(
        Row row,
        List<Integer> airfoils,
        ZoneSet zones,
        State state,
        Why why,
        Optional<Reach> reach,
        Optional<Landmark> first) {

    public Gap {
        airfoils = List.copyOf(airfoils);
    }

    /**
     * A view and a turn after which the gap's airfoils have passed the view's reference, from the first to the last.
     *
     * @param view through which
     * @param station at which the scope tip stands, if the view has any
     * @param from reading of the shaft at which the first one stands at the reference, degrees; for a row that stands
     *     still the clock angle of the scope tip
     * @param sweep how far to turn, or to draw the scope tip, from there; degrees, positive clockwise
     * @param drawn whether the scope tip is drawn round instead of the shaft being turned
     * @param zones those of the gap that the view shows
     */
    public record Reach(
            String view, Optional<String> station, double from, double sweep, boolean drawn, ZoneSet zones) {}

    /**
     * An airfoil that is known, and a view that shows it and something of the gap.
     *
     * @param airfoil its number
     * @param what it is known by; empty if the model describes none, and any may be marked
     * @param view in which it is brought to the reference
     * @param reference of the view, degrees
     */
    public record Landmark(int airfoil, Optional<String> what, String view, double reference) {}

    /** The view through which it is closed, if there is one. */
    public Optional<String> view() {
        return reach.map(Reach::view).or(() -> first.map(Landmark::view));
    }
}
