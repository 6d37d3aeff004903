package everyblade.window.author;

import everyblade.spi.EngineModel;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From where a row is looked at: a station of a view, or a view that has none.
 *
 * @param view its id
 * @param station its id; empty if the view has only a stated window
 */
public record Standpoint(String view, Optional<String> station) {

    /** Those of a model, in its order. */
    public static List<Standpoint> of(EngineModel model) {
        return model.views().stream().flatMap(Standpoint::of).toList();
    }

    private static Stream<Standpoint> of(View view) {
        return view.stations().isEmpty()
                ? Stream.of(new Standpoint(view.id(), Optional.empty()))
                : view.stations().stream().map(station -> new Standpoint(view.id(), Optional.of(station.id())));
    }

    View view(EngineModel model) {
        return model.view(view).orElseThrow();
    }

    Station station(EngineModel model) {
        return view(model).stations().stream()
                .filter(one -> station.equals(Optional.of(one.id())))
                .findFirst()
                .orElseThrow();
    }

    /** The key of the text that says why nothing can be computed from here; empty if something can. */
    Optional<String> why(EngineModel model) {
        View from = view(model);
        if (station.isEmpty()) {
            return Optional.of("author.sight.noStation");
        } else if (from.scopeTip().isEmpty()) {
            return Optional.of("author.sight.noScopeTip");
        }
        boolean shaped = model.row(from.row()).orElseThrow().shape().isPresent();
        return shaped ? Optional.empty() : Optional.of("author.sight.noShape");
    }

    /** As people name it. */
    @Override
    public String toString() {
        return view + station.map(id -> ", " + id).orElse("");
    }
}
