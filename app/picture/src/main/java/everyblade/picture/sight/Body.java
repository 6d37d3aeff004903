package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import java.util.List;

/**
 * Equal surfaces round the axis, as they stand at one moment.
 *
 * @param name what they are, for people
 * @param role why they are in the picture
 * @param mesh one of them, standing at clock 0
 * @param clocks where each stands, one by one
 */
record Body(String name, Role role, Mesh mesh, List<Turn> clocks) {

    /** Why something is in the picture. */
    enum Role {
        /** The row that is looked at. */
        ROW,
        /** Another row in the same ring. */
        MATE,
        WALL,
        /** A row that stands still in a known place. */
        FIXED,
        /** All that a row sweeps whose place is not known: it counts as hiding whatever is behind. */
        SWEPT,
        /** A row that cannot stand between, drawn with airfoil 1 at 12 o'clock for want of its true place. */
        BACKGROUND
    }

    Body {
        clocks = List.copyOf(clocks);
    }
}
