package everyblade.core.sight;

import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;

/**
 * One airfoil of a row.
 *
 * @param airfoil standing at clock 0
 * @param meridian all that it sweeps
 */
record Swept(Mesh airfoil, Meridian meridian) {

    static Swept of(Mesh airfoil) {
        return new Swept(airfoil, Meridian.of(airfoil));
    }
}
