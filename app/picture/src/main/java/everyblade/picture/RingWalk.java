package everyblade.picture;

import everyblade.core.turning.Engine;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import java.util.List;

/**
 * A walk over the cells of rings, one step a cell, as they lie on the sheet.
 *
 * @param rings about one axis, the innermost first
 */
record RingWalk(List<MapRing> rings) {

    /** The next cell; the same one beyond the outermost and the innermost ring. */
    Cell next(Cell from, MapStep step) {
        MapRing ring = rings.stream().filter(one -> one.has(from)).findFirst().orElseThrow();
        int sheetwards = ring.polar().mirrored() ? -1 : 1;
        return switch (step) {
            case RIGHT -> along(ring, from, sheetwards);
            case LEFT -> along(ring, from, -sheetwards);
            case UP -> across(ring, from, 1);
            case DOWN -> across(ring, from, -1);
            case NEXT -> new Cell(from.row(), numbered(ring, from.airfoil(), 1), from.zone());
            case PREVIOUS -> new Cell(from.row(), numbered(ring, from.airfoil(), -1), from.zone());
        };
    }

    private static int numbered(MapRing ring, int airfoil, int by) {
        return Math.floorMod(airfoil - 1 + by, ring.coverage().row().count()) + 1;
    }

    private static Cell along(MapRing ring, Cell from, int clockwise) {
        ZonePlan plan = ring.plan();
        ZonePlan.Place place = plan.places().get(from.zone());
        int column = place.column() + clockwise;
        int airfoils = Math.floorDiv(column, plan.columns());
        int airfoil = numbered(
                ring,
                from.airfoil(),
                airfoils * ring.coverage().row().numbering().sign());
        return new Cell(from.row(), airfoil, plan.zone(Math.floorMod(column, plan.columns()), place.band()));
    }

    private Cell across(MapRing ring, Cell from, int outwards) {
        ZonePlan plan = ring.plan();
        ZonePlan.Place place = plan.places().get(from.zone());
        int band = place.band() + outwards;
        if (band >= 0 && band < plan.bands()) {
            return new Cell(from.row(), from.airfoil(), plan.zone(place.column(), band));
        }
        int index = rings.indexOf(ring) + outwards;
        if (index < 0 || index >= rings.size()) {
            return from;
        }
        Patch patch = plan.patch(from.zone(), ring.patch(from.airfoil()));
        return entered(rings.get(index), (patch.from() + patch.to()) / 2, outwards);
    }

    /** The cell at which a ring is entered at a clock angle, from inside or from outside. */
    private static Cell entered(MapRing ring, double clock, int outwards) {
        ZonePlan plan = ring.plan();
        int airfoil = ring.nearest(clock);
        double pitches = CurvedText.wrapped(clock - ring.standing().clock(airfoil) + 180) - 180;
        int column = (int) Math.floor((pitches / Engine.pitch(ring.coverage().row()) + 0.5) * plan.columns());
        int within = Math.max(0, Math.min(plan.columns() - 1, column));
        return new Cell(ring.coverage().row().id(), airfoil, plan.zone(within, outwards > 0 ? 0 : plan.bands() - 1));
    }
}
