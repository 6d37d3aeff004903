package everyblade.core.check;

import everyblade.core.sight.StationAims;
import everyblade.core.sight.ViewScene;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Finds views that state an aim which the tolerance of one of their stations does not allow, and stations whose tolerance is
 * so large that the aim which follows from it takes an airfoil for its neighbour.
 */
record AimCheck(EngineModel model, Map<String, byte[]> files, List<CheckedSurface> surfaces, List<Flaw> flaws) {

    /** Aims are written to a tenth, degrees. */
    private static final double ROUNDING = 0.05;

    void run() {
        StationAims aims = new StationAims(new ViewScene(model, files, Map.of()));
        Map<String, Integer> counts =
                surfaces.stream().map(CheckedSurface::row).collect(Collectors.toMap(Row::id, Row::count));
        for (int v = 0; v < model.views().size(); v++) {
            View view = model.views().get(v);
            if (!counts.containsKey(view.row())) {
                continue;
            }
            if (view.aim() > 0) {
                stated(v, view, aims);
            } else {
                derived(v, view, aims, 180.0 / counts.get(view.row()));
            }
        }
    }

    private void stated(int index, View view, StationAims aims) {
        view.stations().stream()
                .max(Comparator.comparingDouble(station -> aims.at(view, station)))
                .filter(station -> aims.at(view, station) > view.aim() + ROUNDING)
                .ifPresent(station -> flaws.add(new Flaw(
                        Flaw.Kind.AIM_WITHIN_TOLERANCE,
                        new CheckedPart.AimOf(index),
                        new Wrong.AimWithinTolerance(view.id(), view.aim(), station.id(), aims.at(view, station)),
                        Wrong.Because.FARTHER_THAN_COUNTED,
                        Wrong.Mend.DELETE_AIM)));
    }

    private void derived(int index, View view, StationAims aims, double halfPitch) {
        for (int s = 0; s < view.stations().size(); s++) {
            Station station = view.stations().get(s);
            double aim = aims.at(view, station);
            if (aim >= halfPitch) {
                flaws.add(new Flaw(
                        Flaw.Kind.TOLERANCE_OF_HALF_A_PITCH,
                        new CheckedPart.StationAt(index, s),
                        new Wrong.HalfAPitch(station.id(), view.id(), aim, view.row(), halfPitch),
                        Wrong.Because.NEIGHBOUR_TAKEN,
                        Wrong.Mend.LOOK_SQUARELY));
            }
        }
    }
}
