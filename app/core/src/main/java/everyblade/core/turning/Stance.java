package everyblade.core.turning;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From where, and with what, a row was watched.
 *
 * @param view through which
 * @param stations ids of the stations: the one where the scope tip stood, or in order all through which it was moved; none
 *     if the view has none
 * @param moved whether the scope tip was moved through the stations
 * @param scopeTip id of the one in use, where one is stated
 * @param vanes positions of movable vanes by row, where they are known
 * @param proof the finest line seen on the day's test target, if any was
 */
public record Stance(
        String view,
        List<String> stations,
        boolean moved,
        Optional<String> scopeTip,
        Map<String, String> vanes,
        Optional<Proof> proof) {

    /**
     * The finest line that was seen through the scope.
     *
     * @param size its width, mm
     * @param distance from the scope tip, mm
     */
    public record Proof(double size, double distance) {}

    public Stance {
        stations = List.copyOf(stations);
        vanes = Map.copyOf(vanes);
    }
}
