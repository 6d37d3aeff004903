package everyblade.spi;

import java.util.List;
import java.util.Optional;

/** Makes a view step by step; what is not said stays empty, the reference at 12 o'clock. */
public final class ViewBuilder {

    private final String id;
    private final String row;
    private Optional<String> port = Optional.empty();
    private Optional<String> scopeTip = Optional.empty();
    private double reference;
    private double aim;
    private Optional<Window> window = Optional.empty();
    private List<Station> stations = List.of();
    private boolean travels;

    ViewBuilder(String id, String row) {
        this.id = id;
        this.row = row;
    }

    /** The way in. */
    public ViewBuilder port(String portId) {
        port = Optional.of(portId);
        return this;
    }

    /** The scope tip used unless another is named. */
    public ViewBuilder scopeTip(String tipId) {
        scopeTip = Optional.of(tipId);
        return this;
    }

    /** Clock angle at which the view's middle meets the row, degrees. */
    public ViewBuilder reference(double degrees) {
        reference = degrees;
        return this;
    }

    /** How exactly an airfoil can be put to the reference, ± degrees; follows from the stations unless said. */
    public ViewBuilder aim(double degrees) {
        aim = degrees;
        return this;
    }

    /** What it shows, stated instead of computed. */
    public ViewBuilder window(Window stated) {
        window = Optional.of(stated);
        return this;
    }

    /** Poses of the scope tip, the one where the view starts first. */
    public ViewBuilder stations(List<Station> all) {
        stations = List.copyOf(all);
        return this;
    }

    /** The scope tip can be drawn round the annulus here. */
    public ViewBuilder travelling() {
        travels = true;
        return this;
    }

    public View build() {
        return new View(id, port, row, scopeTip, reference, aim, window, stations, travels);
    }
}
