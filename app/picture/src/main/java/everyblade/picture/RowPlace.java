package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Point;
import java.util.Optional;

/** Where a row's airfoils lie on a sheet: what is painted and what is hit come from the same places. */
sealed interface RowPlace permits MapRing, RowStrip {

    /** Of the row. */
    RowCoverage coverage();

    /** The patch of an airfoil. */
    Patch patch(int airfoil);

    /** Where the zones of each airfoil lie. */
    ZonePlan plan();

    /** The cell that a place on the sheet lies in; empty outside the row and between airfoils. */
    Optional<Cell> cellAt(Point place);

    /** Whether each cell lies in the same place in both. */
    boolean liesLike(RowPlace other);

    /** Whether a cell is of this row. */
    default boolean has(Cell cell) {
        return coverage().row().id().equals(cell.row())
                && cell.airfoil() >= 1
                && cell.airfoil() <= coverage().row().count()
                && cell.zone() >= 0
                && cell.zone() < coverage().zoning().size();
    }

    /** The place of a cell of this row. */
    default Patch patch(Cell cell) {
        return plan().patch(cell.zone(), patch(cell.airfoil()));
    }

    /** Its airfoils without words; those that look as before are the same groups as before. */
    default DrawnAirfoils drawn(DrawnAirfoils before, Remarked stated, double fine) {
        return DrawnAirfoils.of(before, new AirfoilDrawing(coverage(), plan()), stated, this::patch, fine);
    }
}
