package everyblade.core.check;

import everyblade.core.sight.StationAims;
import everyblade.core.sight.ViewScene;
import everyblade.spi.EngineModel;
import everyblade.spi.View;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds views that state an aim which the tolerance of one of their stations does not allow. */
record AimCheck(EngineModel model, Map<String, byte[]> files, List<CheckedSurface> surfaces, List<Flaw> flaws) {

    /** Aims are written to a tenth, degrees. */
    private static final double ROUNDING = 0.05;

    void run() {
        StationAims aims = new StationAims(new ViewScene(model, files, Map.of()));
        Set<String> shaped =
                surfaces.stream().map(surface -> surface.row().id()).collect(Collectors.toSet());
        for (int v = 0; v < model.views().size(); v++) {
            View view = model.views().get(v);
            CheckedPart part = new CheckedPart.AimOf(v);
            if (view.aim() == 0 || !shaped.contains(view.row())) {
                continue;
            }
            view.stations().stream()
                    .max(Comparator.comparingDouble(station -> aims.at(view, station)))
                    .filter(station -> aims.at(view, station) > view.aim() + ROUNDING)
                    .ifPresent(station -> flaws.add(new Flaw(
                            Flaw.Kind.AIM_WITHIN_TOLERANCE,
                            part,
                            String.format(
                                    Locale.ROOT,
                                    "the view %s states an aim of %s°, but the tolerance of its station %s moves the middle"
                                            + " of the picture by %.1f°",
                                    view.id(),
                                    number(view.aim()),
                                    station.id(),
                                    aims.at(view, station)),
                            "a blade said to be at the reference stands farther from it than the program counts with",
                            "delete \"aim\", so that it follows from each station, unless something else than the"
                                    + " picture's middle tells")));
        }
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }
}
