package everyblade.core.sight;

import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine.Standing;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** How far stations stand from what turns. */
public final class Clearances {

    private Clearances() {}

    /**
     * From the middle of the scope tip at each station to the nearest place that the rows of each spool sweep, mm. Rows
     * without a shape are left out.
     *
     * @throws UnusableShape if a shape of a rotor gives no surface
     */
    public static Map<Standing, Double> of(ViewScene engine) throws UnusableShape {
        Map<Standing, Double> clearances = new HashMap<>();
        for (Row row : engine.model().rows()) {
            Optional<Mesh> airfoil = row.kind() == RowKind.ROTOR ? engine.airfoil(row) : Optional.empty();
            if (airfoil.isPresent()) {
                add(clearances, engine, row, Meridian.of(airfoil.get()));
            }
        }
        return Map.copyOf(clearances);
    }

    private static void add(Map<Standing, Double> clearances, ViewScene engine, Row row, Meridian swept) {
        for (View view : engine.model().views()) {
            for (Station station : view.stations()) {
                clearances.merge(
                        new Standing(view.id(), station.id(), row.spool().orElseThrow()),
                        swept.distance(station.x(), station.r()),
                        Math::min);
            }
        }
    }
}
