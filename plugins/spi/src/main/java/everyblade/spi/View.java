package everyblade.spi;

import java.util.List;
import java.util.Optional;

/**
 * Looking at one row through one port.
 *
 * @param id unique within the engine model
 * @param port the way in; empty if none is stated
 * @param row the row that is looked at
 * @param scopeTip the scope tip used unless another is named; empty if none is stated
 * @param reference clock angle at which the view's middle meets the row, degrees
 * @param aim how exactly a person can put an airfoil to the reference, ± degrees; 0 where that is not stated, it then
 *     follows from the tolerance of the station
 * @param window what it shows, where that is stated instead of computed
 * @param stations poses of the scope tip, the first one is where a view starts
 * @param travels whether the scope tip can be drawn round the annulus here
 */
public record View(
        String id,
        Optional<String> port,
        String row,
        Optional<String> scopeTip,
        double reference,
        double aim,
        Optional<Window> window,
        List<Station> stations,
        boolean travels) {

    public View {
        stations = List.copyOf(stations);
    }

    /** Begins a view of a row. */
    public static ViewBuilder of(String id, String row) {
        return new ViewBuilder(id, row);
    }
}
