package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;

/**
 * Equal airfoils at equal pitches round the axis.
 *
 * @param airfoil one of them, standing at clock 0
 * @param count how many, at least one
 * @param offset clock angle at which the first stands
 */
public record Ring(Mesh airfoil, int count, Turn offset) {

    public Ring {
        if (count < 1) {
            throw new IllegalArgumentException("a ring has at least one airfoil");
        }
    }

    /** The ring whose first airfoil stands at clock 0. */
    public Ring(Mesh airfoil, int count) {
        this(airfoil, count, Turn.ZERO);
    }
}
