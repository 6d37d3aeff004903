package everyblade.picture;

import everyblade.core.entry.Zoning;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the zones of one airfoil lie within its patch: each zone has one place, and together they fill it.
 *
 * @param columns along the row
 * @param bands across the row
 * @param places by zone
 */
record ZonePlan(int columns, int bands, List<Place> places) {

    /**
     * Place of a zone.
     *
     * @param column clockwise along the row, 0 first
     * @param band from the root, 0 first
     */
    record Place(int column, int band) {}

    ZonePlan {
        places = List.copyOf(places);
    }

    /**
     * On a ring with numbers rising clockwise or not: span bands across; along it the surface unwrapped from its leading edge, so that the pressure side ends
     * and the suction side begins there; the pressure side towards the airfoil with the lower number.
     */
    static ZonePlan unwrapped(Row row, Zoning zoning, Direction numbering) {
        int spans = Math.max(1, zoning.spans().size());
        int sides = Math.max(1, zoning.sides().size());
        int chords = Math.max(1, zoning.chords().size());
        int columns = sides * chords;
        List<Place> places = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            int chord = zone % chords;
            int side = zone / chords % sides;
            int span = zone / chords / sides;
            int column = sides == 1 ? chord : side == 0 ? chords - 1 - chord : chords + chord;
            places.add(new Place(numbering == Direction.CW ? column : columns - 1 - column, band(row, span, spans)));
        }
        return new ZonePlan(columns, spans, places);
    }

    /** In a strip: every zone a line of its own, those of the root lowest. */
    static ZonePlan stacked(Row row, Zoning zoning) {
        int spans = Math.max(1, zoning.spans().size());
        int within = zoning.size() / spans;
        List<Place> places = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            places.add(new Place(0, band(row, zone / within, spans) * within + within - 1 - zone % within));
        }
        return new ZonePlan(1, zoning.size(), places);
    }

    /** A liner's outer wall is named first, and lies outside. */
    private static int band(Row row, int span, int spans) {
        return row.kind() == RowKind.LINER ? spans - 1 - span : span;
    }

    /** The zone that has this place. */
    int zone(int column, int band) {
        return places.indexOf(new Place(column, band));
    }

    /** The patch of a zone within that of its airfoil. */
    Patch patch(int zone, Patch airfoil) {
        Place place = places.get(zone);
        return airfoil.part(
                (double) place.column() / columns,
                (place.column() + 1.0) / columns,
                (double) place.band() / bands,
                (place.band() + 1.0) / bands);
    }
}
