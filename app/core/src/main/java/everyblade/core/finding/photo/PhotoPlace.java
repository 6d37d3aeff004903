package everyblade.core.finding.photo;

import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the scope tip and the rotor were when a picture was taken.
 *
 * @param entry after which it was taken, 0 if before all
 * @param view in use; empty if none was
 * @param row in view
 * @param shaftAngle reading of the shaft, degrees from 0 to less than 360; of a row that stands still the angle of the
 *     scope tip's way round
 * @param plusMinus what that may be off, degrees
 * @param airfoil most likely at the view's reference; empty if the row was not being counted
 * @param airfoilsOff by how many airfoils it may be off
 * @param moving whether the shaft was being turned, so that the angle rests on an even turn
 * @param lost whether the count was lost about then, so that it may be any other
 */
public record PhotoPlace(
        int entry,
        Optional<View> view,
        Optional<Row> row,
        OptionalDouble shaftAngle,
        double plusMinus,
        Optional<Integer> airfoil,
        int airfoilsOff,
        boolean moving,
        boolean lost) {

    /** Nothing is known. */
    static PhotoPlace unknown(int entry, Optional<View> view, Optional<Row> row) {
        return new PhotoPlace(entry, view, row, OptionalDouble.empty(), 0, Optional.empty(), 0, false, false);
    }

    /** The airfoil with what it may be off. */
    public Likely likely() {
        return row.isEmpty() || airfoil.isEmpty()
                ? Likely.Nothing.COUNTED
                : new Likely.About(row.get().kind(), airfoil.get(), airfoilsOff, lost);
    }

    /** Whether a person's word for the airfoil agrees with this. */
    boolean agreesWith(int stated) {
        if (airfoil.isEmpty() || lost) {
            return true;
        }
        int count = row.orElseThrow().count();
        int apart = Math.floorMod(stated - airfoil.get(), count);
        return Math.min(apart, count - apart) <= airfoilsOff;
    }
}
